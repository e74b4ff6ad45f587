import { boundsOf, extentsOf, type Bounds, type TriangleMesh } from './triangleMesh';

/** What makes a table: a level, upward face in the lowest part, wide against the whole footprint. Chosen here. */
const LEVEL_COSINE = 0.985;
const FOOTPRINT_SHARE = 0.25;
/** Height is gathered in bins of 0.5 %; the lowest 15 % are looked at. */
const BINS = 200;
const LOWEST_BINS = 30;

export interface Floor {
  /**
   * Height on the placed mesh's own zero, mm, just above the table's top: its mean and three standard deviations of its roughness,
   * so that a cut there leaves no skin of it.
   */
  topMm: number;
  areaMm2: number;
}

/**
 * Looks for a table top under the sculpt: level area that faces up, gathered by height in bins of 0.5 % of the size.
 * `isInsideOut` says that the file's facets face inward. A proposal only: the wide flat step of a plinth looks the same, so nothing is cut unasked.
 */
export function findFloor(
  mesh: TriangleMesh,
  known: { bounds?: Bounds; isInsideOut?: boolean } = {},
): Floor | undefined {
  const bounds = known.bounds ?? boundsOf(mesh);
  const facing = known.isInsideOut === true ? -1 : 1;
  const [width, depth, height] = extentsOf(bounds);
  if (!(height > 0)) return undefined;
  const lowestMm = bounds.min[2];
  const binMm = height / BINS;
  const bins = Array.from({ length: LOWEST_BINS + 1 }, () => ({ areaMm2: 0, first: 0, second: 0 }));
  eachLevelTriangle(mesh, { facing, belowMm: lowestMm + LOWEST_BINS * binMm }, (areaMm2, zMm) => {
    const above = zMm - lowestMm;
    const bin = bins[Math.floor(above / binMm)]!;
    bin.areaMm2 += areaMm2;
    bin.first += areaMm2 * above;
    bin.second += areaMm2 * above * above;
  });
  let best = 0;
  const pairOf = (at: number): number => bins[at]!.areaMm2 + bins[at + 1]!.areaMm2;
  for (let at = 1; at < LOWEST_BINS; at++) if (pairOf(at) > pairOf(best)) best = at;
  const areaMm2 = pairOf(best);
  if (areaMm2 < FOOTPRINT_SHARE * width * depth) return undefined;
  const mean = (bins[best]!.first + bins[best + 1]!.first) / areaMm2;
  const variance = (bins[best]!.second + bins[best + 1]!.second) / areaMm2 - mean * mean;
  return { topMm: lowestMm + mean + 3 * Math.sqrt(Math.max(0, variance)), areaMm2 };
}

/** Every level, upward triangle whose first corner and middle lie below a height. */
function eachLevelTriangle(
  mesh: TriangleMesh,
  { facing, belowMm }: { facing: 1 | -1; belowMm: number },
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
    const nz = facing * (ux * vy - uy * vx);
    if (!(nz > 0)) continue;
    const twice = Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, nz);
    const zMm = p[a + 2]! + (uz + vz) / 3;
    if (nz > LEVEL_COSINE * twice && zMm < belowMm) each(twice / 2, zMm);
  }
}
