import { boundsOf, extentsOf, type Bounds, type TriangleMesh } from './triangleMesh';

/** What makes a table: a level, upward face in the lowest part, wide against the whole footprint. Chosen here. */
const LEVEL_COSINE = 0.985;
const FOOTPRINT_SHARE = 0.25;
/** Height is gathered in bins of 0.5 %; the lowest 15 % are looked at. */
const BINS = 200;
const LOWEST_BINS = 30;

export interface Floor {
  /** Height of the table's top, mm, on the placed mesh's own zero. */
  topMm: number;
  areaMm2: number;
}

/**
 * Looks for a table top under the sculpt: level area that faces up, gathered by height in bins of 0.5 % of the size.
 * A proposal only: the wide flat step of a plinth looks the same, so nothing is cut unasked.
 */
export function findFloor(mesh: TriangleMesh, bounds: Bounds = boundsOf(mesh)): Floor | undefined {
  const [width, depth, height] = extentsOf(bounds);
  if (!(height > 0)) return undefined;
  const binMm = height / BINS;
  const areaMm2 = new Float64Array(LOWEST_BINS + 1);
  const moment = new Float64Array(LOWEST_BINS + 1);
  eachLevelTriangle(mesh, bounds.min[2] + LOWEST_BINS * binMm, (areaOfOne, zMm) => {
    const bin = Math.floor((zMm - bounds.min[2]) / binMm);
    areaMm2[bin]! += areaOfOne;
    moment[bin]! += areaOfOne * zMm;
  });
  let best = 0;
  const pairOf = (bin: number): number => areaMm2[bin]! + areaMm2[bin + 1]!;
  for (let bin = 1; bin < LOWEST_BINS; bin++) if (pairOf(bin) > pairOf(best)) best = bin;
  if (pairOf(best) < FOOTPRINT_SHARE * width * depth) return undefined;
  return { topMm: (moment[best]! + moment[best + 1]!) / pairOf(best), areaMm2: pairOf(best) };
}

/** Every level, upward triangle whose first corner and middle lie below a height. */
function eachLevelTriangle(
  mesh: TriangleMesh,
  belowMm: number,
  each: (areaMm2: number, zMm: number) => void,
): void {
  const { positions: p, triangles } = mesh;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t]!;
    if (p[a + 2]! > belowMm) continue;
    const b = 3 * triangles[t + 1]!;
    const c = 3 * triangles[t + 2]!;
    const ux = p[b]! - p[a]!;
    const uy = p[b + 1]! - p[a + 1]!;
    const uz = p[b + 2]! - p[a + 2]!;
    const vx = p[c]! - p[a]!;
    const vy = p[c + 1]! - p[a + 1]!;
    const vz = p[c + 2]! - p[a + 2]!;
    const nz = ux * vy - uy * vx;
    if (!(nz > 0)) continue;
    const twice = Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, nz);
    const zMm = p[a + 2]! + (uz + vz) / 3;
    if (nz > LEVEL_COSINE * twice && zMm < belowMm) each(twice / 2, zMm);
  }
}
