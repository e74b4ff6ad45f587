import type { TriangleMesh } from '../triangleMesh';
import type { Loop } from './loops';
import { loopCentroid } from './closeCycle';
import { dot } from '../vector';

/**
 * How far the true surface may bulge past a flat cap, as a share of the rim's radius: a dome of height a/10 over a disc of
 * radius a holds pi a^2 h/2 = 0.05 A a. Chosen here: it covers a hole on a ball up to a fifth of the ball's radius wide,
 * and a base that rocked on its board by a tenth of its radius.
 */
export const DOME_SHARE = 0.05;

/** A rim is a seam, not a hole, when its mean width is below this share of its edges: area over the sum of squared edges. */
const SEAM_SHARE = 0.05;

/**
 * A surface that runs up to its rim at a slope below this may run on as a cap of a ball; a steeper one is a wall, and what it
 * stands on is a base. Chosen here: a ball that lost less than a sixth of its volume is a ball.
 */
const STEEPEST_DOME = Math.PI / 3;

/** One rim and what closing it otherwise could change. Lengths in the mesh's unit: mm once placed. */
export interface Rim {
  lengthMm: number;
  /** Area seen along the rim's own normal. */
  areaMm2: number;
  /** Largest distance of a rim vertex from the rim's mean plane. */
  flatnessMm: number;
  centerMm: [number, number, number];
  /** Unit normal of the cap, out of the body. */
  normal: [number, number, number];
  /** Volume that the cap would add if it were flat through the mean plane instead of a cone. Signed. */
  flatPlaneMm3: number;
  /** The same if the surface ran on to the outermost rim point and was closed flat there, as by a board. Signed. */
  dropToBaseMm3: number;
  /** A dome either way: the shallow one, or the cap of a ball that goes on where the surface stopped. */
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
export function measureRim(mesh: TriangleMesh, loop: Loop, kind?: 'cut' | 'loose facet'): Rim {
  const p = mesh.positions;
  const c = loopCentroid(p, loop.vertices);
  const { normal, areaMm2, coneAreaMm2, lengthMm, squaresMm2 } = vectorArea(p, loop.vertices, c);
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
  const isSeam = Math.max(areaMm2, coneAreaMm2) < SEAM_SHARE * squaresMm2;
  const radiusMm = Math.sqrt(coneAreaMm2 / Math.PI);
  return {
    lengthMm,
    areaMm2,
    flatnessMm,
    centerMm: c,
    normal,
    flatPlaneMm3: -underCone,
    dropToBaseMm3: outermost * areaMm2 - underCone,
    domeMm3: coneAreaMm2 * radiusMm * Math.max(DOME_SHARE, domeShareOf(meanSlope(mesh, loop, normal))),
    kind: kind ?? (isSeam ? 'seam' : 'hole'),
  };
}

/**
 * Volume of a ball's cap over a disc, as a share of area x radius, from the slope at its rim: height a tan(slope/2), volume
 * A h/2 (1 + h2/(3 a2)). Zero for walls.
 */
function domeShareOf(slope: number): number {
  if (Math.abs(slope) > STEEPEST_DOME) return 0;
  const rise = Math.tan(Math.abs(slope) / 2);
  return (rise / 2) * (1 + (rise * rise) / 3);
}

/** Angle at which the surface would run on over the hole, against the rim's plane, averaged over the rim by length. */
function meanSlope({ positions: p, triangles }: TriangleMesh, loop: Loop, n: Vector): number {
  let weighted = 0;
  let total = 0;
  for (let i = 0; i < loop.vertices.length; i++) {
    const [from, to] = [loop.vertices[i]!, loop.vertices[(i + 1) % loop.vertices.length]!];
    const t = 3 * loop.triangles[i]!;
    const third = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!].find((v) => v !== from && v !== to);
    if (third === undefined) continue;
    const e: Vector = [0, 1, 2].map((k) => p[3 * to + k]! - p[3 * from + k]!) as Vector;
    const length = Math.hypot(...e);
    // From the facet's far corner to the edge, square to the edge: the way the surface runs on.
    const back: Vector = [0, 1, 2].map((k) => p[3 * from + k]! - p[3 * third + k]!) as Vector;
    const along = dot(back, e) / (length * length || 1);
    const on: Vector = [back[0] - along * e[0], back[1] - along * e[1], back[2] - along * e[2]];
    const inward: Vector = [n[1] * e[2] - n[2] * e[1], n[2] * e[0] - n[0] * e[2], n[0] * e[1] - n[1] * e[0]];
    weighted += length * Math.atan2(dot(on, n), dot(on, inward) / (length || 1));
    total += length;
  }
  return total === 0 ? 0 : weighted / total;
}

type Vector = [number, number, number];

function vectorArea(
  p: Float64Array,
  vertices: readonly number[],
  c: Vector,
): { normal: Vector; areaMm2: number; coneAreaMm2: number; lengthMm: number; squaresMm2: number } {
  let x = 0,
    y = 0,
    z = 0,
    coneAreaMm2 = 0,
    lengthMm = 0,
    squaresMm2 = 0;
  forEachFan(p, vertices, c, (ux, uy, uz, vx, vy, vz) => {
    const nx = uy * vz - uz * vy,
      ny = uz * vx - ux * vz,
      nz = ux * vy - uy * vx;
    x += nx / 2;
    y += ny / 2;
    z += nz / 2;
    coneAreaMm2 += Math.hypot(nx, ny, nz) / 2;
    const edge = Math.hypot(vx - ux, vy - uy, vz - uz);
    lengthMm += edge;
    squaresMm2 += edge * edge;
  });
  const areaMm2 = Math.hypot(x, y, z);
  const normal: Vector = areaMm2 > 0 ? [x / areaMm2, y / areaMm2, z / areaMm2] : [0, 0, 1];
  return { normal, areaMm2, coneAreaMm2, lengthMm, squaresMm2 };
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

/** Calls back with the two spokes from the center to each edge's ends. */
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
