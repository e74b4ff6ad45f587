import { boundsOf, extentsOf, type TriangleMesh } from './triangleMesh';

/** What makes a table: a level, upward face in the lowest part, wide against the whole footprint. Chosen here. */
const LEVEL_COSINE = 0.985;
const LOWEST_SHARE = 0.15;
const FOOTPRINT_SHARE = 0.25;
const BINS = 200;

export interface Floor {
  /** Height of the table's top, mm, on the placed mesh's own zero. */
  topMm: number;
  areaMm2: number;
}

/**
 * Looks for a table top under the sculpt: level area that faces up, gathered by height in bins of 0.5 % of the size.
 * A proposal only: the wide flat step of a plinth looks the same, so nothing is cut unasked.
 */
export function findFloor(mesh: TriangleMesh): Floor | undefined {
  const bounds = boundsOf(mesh);
  const [width, depth, height] = extentsOf(bounds);
  if (!(height > 0)) return undefined;
  const areaMm2 = new Float64Array(BINS);
  const moment = new Float64Array(BINS);
  eachLevelTriangle(mesh, (areaOfOne, zMm) => {
    const bin = Math.min(BINS - 1, Math.floor(((zMm - bounds.min[2]) / height) * BINS));
    areaMm2[bin]! += areaOfOne;
    moment[bin]! += areaOfOne * zMm;
  });
  let best = -1;
  for (let bin = 0; bin < BINS * LOWEST_SHARE; bin++) {
    const pair = areaMm2[bin]! + areaMm2[bin + 1]!;
    if (best < 0 || pair > areaMm2[best]! + areaMm2[best + 1]!) best = bin;
  }
  const found = areaMm2[best]! + areaMm2[best + 1]!;
  if (found < FOOTPRINT_SHARE * width * depth) return undefined;
  return { topMm: (moment[best]! + moment[best + 1]!) / found, areaMm2: found };
}

function eachLevelTriangle(mesh: TriangleMesh, each: (areaMm2: number, zMm: number) => void): void {
  const { positions: p, triangles } = mesh;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t]!,
      b = 3 * triangles[t + 1]!,
      c = 3 * triangles[t + 2]!;
    const ux = p[b]! - p[a]!,
      uy = p[b + 1]! - p[a + 1]!,
      uz = p[b + 2]! - p[a + 2]!;
    const vx = p[c]! - p[a]!,
      vy = p[c + 1]! - p[a + 1]!,
      vz = p[c + 2]! - p[a + 2]!;
    const nx = uy * vz - uz * vy,
      ny = uz * vx - ux * vz,
      nz = ux * vy - uy * vx;
    const twice = Math.sqrt(nx * nx + ny * ny + nz * nz);
    if (nz > LEVEL_COSINE * twice) each(twice / 2, (p[a + 2]! + p[b + 2]! + p[c + 2]!) / 3);
  }
}
