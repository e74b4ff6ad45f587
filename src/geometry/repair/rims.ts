import type { Loop } from './loops';
import { loopCentroid } from './closeCycle';

/**
 * How far the true surface may bulge past a flat cap, as a share of the rim's radius: a dome of height a/10 over a disc of
 * radius a holds pi a^2 h/2 = 0.05 A a. Chosen here: it covers a hole on a ball up to a fifth of the ball's radius wide,
 * and a base that rocked on its board by a tenth of its radius.
 */
export const DOME_SHARE = 0.05;

/** A rim is a seam, not a hole, when it encloses less than this share of what a circle of its length would. */
const SEAM_SHARE = 0.02;

/** One rim and what closing it otherwise could change. Lengths in the mesh's unit: mm once placed. */
export interface Rim {
  lengthMm: number;
  /** Area seen along the rim's own normal. */
  areaMm2: number;
  /** Largest distance of a rim vertex from the rim's mean plane. */
  flatnessMm: number;
  centreMm: [number, number, number];
  /** Volume that the cap would add if it were flat through the mean plane instead of a cone. Signed. */
  flatPlaneMm3: number;
  /** The same if the surface ran on to the outermost rim point and was closed flat there, as by a board. Signed. */
  dropToBaseMm3: number;
  /** A shallow dome either way. */
  domeMm3: number;
  kind: 'hole' | 'seam' | 'cut' | 'loose facet';
}

/** Half-width of what the cap may be wrong by, in mm3. */
export const rimDoubtMm3 = (rim: Rim): number =>
  rim.kind === 'cut' ? 0 : Math.max(Math.abs(rim.flatPlaneMm3), Math.abs(rim.dropToBaseMm3)) + rim.domeMm3;

/**
 * Measures a rim and compares its cone with two other honest caps. Heights are taken along the rim's vector area, which
 * points out of the body; a fan triangle of plan area a and corner heights h1, h2, 0 stands for a (h1 + h2)/3.
 */
export function measureRim(p: Float64Array, loop: Loop, kind?: 'cut' | 'loose facet'): Rim {
  const c = loopCentroid(p, loop.vertices);
  const { normal, areaMm2, coneAreaMm2, lengthMm } = vectorArea(p, loop.vertices, c);
  const heights = loop.vertices.map(
    (v) =>
      (p[3 * v]! - c[0]) * normal[0] +
      (p[3 * v + 1]! - c[1]) * normal[1] +
      (p[3 * v + 2]! - c[2]) * normal[2],
  );
  const underCone = volumeUnderCone(p, loop.vertices, { c, normal, heights });
  let outermost = -Infinity;
  let flatnessMm = 0;
  for (const h of heights) {
    outermost = Math.max(outermost, h);
    flatnessMm = Math.max(flatnessMm, Math.abs(h));
  }
  const isSeam =
    4 * Math.PI * areaMm2 < SEAM_SHARE * lengthMm ** 2 &&
    4 * Math.PI * coneAreaMm2 < SEAM_SHARE * lengthMm ** 2;
  return {
    lengthMm,
    areaMm2,
    flatnessMm,
    centreMm: c,
    flatPlaneMm3: -underCone,
    dropToBaseMm3: outermost * areaMm2 - underCone,
    domeMm3: DOME_SHARE * coneAreaMm2 * Math.sqrt(coneAreaMm2 / Math.PI),
    kind: kind ?? (isSeam ? 'seam' : 'hole'),
  };
}

type Vector = [number, number, number];

function vectorArea(
  p: Float64Array,
  vertices: readonly number[],
  c: Vector,
): { normal: Vector; areaMm2: number; coneAreaMm2: number; lengthMm: number } {
  let x = 0,
    y = 0,
    z = 0,
    coneAreaMm2 = 0,
    lengthMm = 0;
  forEachFan(p, vertices, c, (ux, uy, uz, vx, vy, vz) => {
    const nx = uy * vz - uz * vy,
      ny = uz * vx - ux * vz,
      nz = ux * vy - uy * vx;
    x += nx / 2;
    y += ny / 2;
    z += nz / 2;
    coneAreaMm2 += Math.hypot(nx, ny, nz) / 2;
    lengthMm += Math.hypot(vx - ux, vy - uy, vz - uz);
  });
  const areaMm2 = Math.hypot(x, y, z);
  const normal: Vector = areaMm2 > 0 ? [x / areaMm2, y / areaMm2, z / areaMm2] : [0, 0, 1];
  return { normal, areaMm2, coneAreaMm2, lengthMm };
}

function volumeUnderCone(
  p: Float64Array,
  vertices: readonly number[],
  view: { c: Vector; normal: Vector; heights: number[] },
): number {
  const { c, normal, heights } = view;
  let sum = 0;
  forEachFan(p, vertices, c, (ux, uy, uz, vx, vy, vz, i) => {
    const planArea =
      0.5 *
      (normal[0] * (uy * vz - uz * vy) + normal[1] * (uz * vx - ux * vz) + normal[2] * (ux * vy - uy * vx));
    sum += (planArea * (heights[i]! + heights[(i + 1) % heights.length]!)) / 3;
  });
  return sum;
}

/** Calls back with the two spokes from the centre to each edge's ends. */
function forEachFan(
  p: Float64Array,
  vertices: readonly number[],
  c: Vector,
  each: (ux: number, uy: number, uz: number, vx: number, vy: number, vz: number, i: number) => void,
): void {
  for (let i = 0; i < vertices.length; i++) {
    const a = 3 * vertices[i]!,
      b = 3 * vertices[(i + 1) % vertices.length]!;
    each(
      p[a]! - c[0],
      p[a + 1]! - c[1],
      p[a + 2]! - c[2],
      p[b]! - c[0],
      p[b + 1]! - c[1],
      p[b + 2]! - c[2],
      i,
    );
  }
}
