import type { TriangleMesh } from '../triangleMesh';
import { coordinatesAlong, ON_PLANE_SHARE, planeFrame, rangeOf, type Vector } from './planeFrame';
import { measureRegion } from './windingRegion';

/** Sections at even steps. Heights count along the direction from the origin of the mesh, mm. */
export interface SectionsAlong {
  stepMm: number;
  heightsMm: Float64Array;
  /** As `sectionOf` measures them: unions, where shells overlap. */
  areasMm2: Float64Array;
  perimetersMm: Float64Array;
}

export interface SectionRange {
  /** Any length above 0. */
  direction: Vector;
  count: number;
  /** Whole body, if not given. */
  between?: { low: number; high: number };
}

/**
 * Sections in the middle of `count` layers of equal height, in one pass over the triangles of a closed chain that faces outward
 * (mm). No level of the whole body lies on its first or last vertex. Areas times the step sum to the volume, by the midpoint rule.
 */
export function sectionsAlong(
  mesh: TriangleMesh,
  { direction, count, between }: SectionRange,
): SectionsAlong {
  const { u, v, n } = planeFrame(direction);
  const heights = coordinatesAlong(mesh.positions, n, ORIGIN);
  const body = rangeOf(heights, mesh.triangles);
  const { low, high } = between ?? body;
  const stepMm = high > low ? (high - low) / count : 0;
  const heightsMm = Float64Array.from({ length: count }, (_, i) => low + (i + 0.5) * stepMm);
  if (stepMm === 0)
    return { stepMm, heightsMm, areasMm2: new Float64Array(count), perimetersMm: new Float64Array(count) };
  const first = firstVertex(mesh);
  const us = coordinatesAlong(mesh.positions, u, first);
  const vs = coordinatesAlong(mesh.positions, v, first);
  const levels = { heightsMm, stepMm, tolerance: ON_PLANE_SHARE * (body.high - body.low) };
  const found = crossLevels(mesh.triangles, { heights, us, vs }, levels);
  const regions = byLevel(found, count).map(measureRegion);
  return {
    stepMm,
    heightsMm,
    areasMm2: Float64Array.from(regions, (region) => region.areaMm2),
    perimetersMm: Float64Array.from(regions, (region) => region.perimeterMm),
  };
}

export interface LargestSection {
  areaMm2: number;
  heightMm: number;
  /** Distance to the next heights tried. */
  stepMm: number;
}

/**
 * Levels of the first look (a flange thinner than 1/96 of the body can be missed) and of each of the two closer ones. Chosen
 * here.
 */
const [FIRST_LOOK, CLOSER_LOOK, CLOSER_LOOKS] = [96, 24, 2];

/** The largest section across a direction and where it is: the best of even levels, looked at closer twice. */
export function largestSection(mesh: TriangleMesh, direction: Vector): LargestSection {
  let sections = sectionsAlong(mesh, { direction, count: FIRST_LOOK });
  let best = largestOf(sections);
  for (let look = 0; look < CLOSER_LOOKS && sections.stepMm > 0; look++) {
    const between = { low: best.heightMm - sections.stepMm, high: best.heightMm + sections.stepMm };
    sections = sectionsAlong(mesh, { direction, count: CLOSER_LOOK, between });
    const closer = largestOf(sections);
    best = { ...(closer.areaMm2 > best.areaMm2 ? closer : best), stepMm: sections.stepMm };
  }
  return best;
}

function largestOf({ areasMm2, heightsMm, stepMm }: SectionsAlong): LargestSection {
  const at = areasMm2.reduce((best, area, i) => (area > areasMm2[best]! ? i : best), 0);
  return { areaMm2: areasMm2[at]!, heightMm: heightsMm[at]!, stepMm };
}

const ORIGIN: Vector = [0, 0, 0];

/** Sections are measured near a vertex of the mesh: far from it digits would cancel. */
function firstVertex({ positions: p, triangles }: TriangleMesh): Vector {
  const v = 3 * triangles[0]!;
  return [p[v]!, p[v + 1]!, p[v + 2]!];
}

interface Coordinates {
  heights: Float64Array;
  us: Float64Array;
  vs: Float64Array;
}

interface Levels {
  heightsMm: Float64Array;
  stepMm: number;
  /** A vertex this near to a level lies on it, which counts as above. */
  tolerance: number;
}

interface Found {
  level: Int32Array;
  /** u0, v0, u1, v1 each, solid on the left. */
  ends: Float64Array;
  count: number;
}

function crossLevels(triangles: Int32Array, at: Coordinates, levels: Levels): Found {
  const { heights } = at;
  const { heightsMm, stepMm, tolerance } = levels;
  const found: Found = { level: new Int32Array(1 << 12), ends: new Float64Array(1 << 14), count: 0 };
  for (let t = 0; t < triangles.length; t += 3) {
    const a = heights[triangles[t]!]!;
    const b = heights[triangles[t + 1]!]!;
    const c = heights[triangles[t + 2]!]!;
    const low = a < b ? (a < c ? a : c) : b < c ? b : c;
    const high = a > b ? (a > c ? a : c) : b > c ? b : c;
    const first = Math.max(0, Math.ceil((low - tolerance - heightsMm[0]!) / stepMm));
    const last = Math.min(heightsMm.length - 1, Math.floor((high + tolerance - heightsMm[0]!) / stepMm));
    for (let level = first; level <= last; level++) crossLevel(triangles, t, at, levels, level, found);
  }
  return found;
}

/** The step of a triangle across one level, from its falling edge to its rising edge, each from the lower-numbered vertex. */
function crossLevel(
  triangles: Int32Array,
  t: number,
  { heights, us, vs }: Coordinates,
  { heightsMm, tolerance }: Levels,
  level: number,
  found: Found,
): void {
  const height = heightsMm[level]!;
  if (found.count === found.level.length) grow(found);
  let crossed = false;
  for (let e = 0; e < 3; e++) {
    const a = triangles[t + e]!;
    const b = triangles[t + (e === 2 ? 0 : e + 1)]!;
    const over = snapped(heights[a]! - height, tolerance);
    const overNext = snapped(heights[b]! - height, tolerance);
    if (over >= 0 === overNext >= 0) continue;
    crossed = true;
    const [low, high] = a < b ? [a, b] : [b, a];
    const share = (a < b ? over : overNext) / (a < b ? over - overNext : overNext - over);
    const end = 4 * found.count + (over >= 0 ? 0 : 2);
    found.ends[end] = us[low]! + share * (us[high]! - us[low]!);
    found.ends[end + 1] = vs[low]! + share * (vs[high]! - vs[low]!);
  }
  if (crossed) found.level[found.count++] = level;
}

const snapped = (height: number, tolerance: number): number => (Math.abs(height) <= tolerance ? 0 : height);

function grow(found: Found): void {
  const level = new Int32Array(2 * found.level.length);
  const ends = new Float64Array(2 * found.ends.length);
  level.set(found.level);
  ends.set(found.ends);
  Object.assign(found, { level, ends });
}

/** Segments of each level, by a counting sort. */
function byLevel({ level, ends, count }: Found, levels: number): Float64Array[] {
  const start = new Int32Array(levels + 1);
  for (let i = 0; i < count; i++) start[level[i]! + 1]!++;
  for (let l = 1; l <= levels; l++) start[l]! += start[l - 1]!;
  const fill = start.slice();
  const sorted = new Float64Array(4 * count);
  for (let i = 0; i < count; i++) {
    const to = 4 * fill[level[i]!]!++;
    for (let k = 0; k < 4; k++) sorted[to + k] = ends[4 * i + k]!;
  }
  return Array.from({ length: levels }, (_, l) => sorted.subarray(4 * start[l]!, 4 * start[l + 1]!));
}
