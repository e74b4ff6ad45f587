import type { Field } from '../field/buildField';
import { AT, FOUND, QUERY, searchNearest, type SearchSurface } from '../field/nearest';

/*
 * Points spread over the surface: the feet of the grid points within a step of it, on the far side of what is measured. There is air all round the thinnest
 * fin, so no wall is too thin to be sampled. Directions come from foot to grid point, never from how a triangle is wound.
 */

/** Which side of the surface the balls lie in: the body, or the air (rubber of the mold) between its parts. */
export type SurfaceSide = 'inside' | 'outside';

/** Positions and directions are those of the field's frame. */
export interface SurfaceSamples {
  count: number;
  /** Three numbers a sample, mm. */
  at: Float32Array;
  /** Unit direction from the sample into the side that is measured. */
  inward: Float32Array;
  /** What a sample stands for; together the area of the surface. */
  areaMm2: Float32Array;
  /** Root of the mean area of a sample. */
  spacingMm: number;
}

/** Beyond about so many, samples are left out by chance (a hash of their place). Chosen here: about 1.5 seconds of work. */
const MOST_SAMPLES = 32_000;

/** Grid points nearer than this, in steps, have no clear direction to the surface; a point half a step out is asked instead. Chosen here. */
const TOO_NEAR = 0.15;

const ROUNDS = 2;

/** Samples of the surface of a standing field. `isLeftOut` is asked with a foot in the field's frame. */
export function surfaceSamples(
  field: Field,
  side: SurfaceSide,
  isLeftOut: (x: number, y: number, z: number) => boolean,
  onStep: () => void,
): SurfaceSamples {
  const near = gridPointsBeyond(field, side, onStep);
  const kept = near.length > MOST_SAMPLES ? near.filter(hashBelow(MOST_SAMPLES / near.length)) : near;
  const at = new Float32Array(3 * kept.length);
  const inward = new Float32Array(3 * kept.length);
  const weight = new Float32Array(kept.length);
  const surface = { ...field.task, nearest: field.task.nearests[0]! };
  let count = 0;
  for (let n = 0; n < kept.length; n++) {
    if (n % 256 === 0) onStep();
    const away = footOf(field, surface, side, kept[n]!);
    if (away < 0 || isLeftOut(FOOT[0]!, FOOT[1]!, FOOT[2]!)) continue;
    at.set(FOOT.subarray(0, 3), 3 * count);
    inward.set(FOOT.subarray(3, 6), 3 * count);
    // The hat function: a point on the surface stands for twice the mean, one a step off for nothing.
    weight[count++] = 1 - away / field.grid.spacingMm;
  }
  const total = weight.reduce((sum, w) => sum + w, 0);
  const areaMm2 = exposedAreaMm2(surface);
  return {
    count,
    at: at.subarray(0, 3 * count),
    inward: inward.subarray(0, 3 * count),
    areaMm2: weight.subarray(0, count).map((w) => (w * areaMm2) / total),
    spacingMm: Math.sqrt(areaMm2 / Math.max(1, count)),
  };
}

/** Grid points within a step of the surface, on the side that is not measured. */
function gridPointsBeyond({ grid, task }: Field, side: SurfaceSide, onStep: () => void): Int32Array {
  const { nx, ny, nz, spacingMm } = grid;
  const [winding, distance, nearest] = [task.windings[0]!, task.distances[0]!, task.nearests[0]!];
  const places: number[] = [];
  for (let k = 1; k < nz - 1; k++) {
    onStep();
    for (let j = 1; j < ny - 1; j++)
      for (let i = 1, v = (k * ny + j) * nx + 1; i < nx - 1; i++, v++)
        if (nearest[v]! > 0 && distance[v]! < spacingMm && winding[v]! > 0 === (side === 'outside'))
          places.push(v);
  }
  return Int32Array.from(places);
}

/** Keeps about this share, evenly over all places (constants of a hash from memory). */
function hashBelow(share: number): (v: number) => boolean {
  const limit = share * 2 ** 32;
  return (v) => {
    let hash = Math.imul(v ^ (v >>> 16), 0x85ebca6b);
    hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
    return (hash ^ (hash >>> 16)) >>> 0 < limit;
  };
}

/** Foot (three numbers) and direction into the measured side (three) of the last `footOf`. */
const FOOT = new Float64Array(6);
const SLOPE = new Float64Array(3);

/** Into FOOT, from grid point `v`; returns the distance of the grid point, or -1 where the foot has no clear direction. */
function footOf(field: Field, surface: SearchSurface, side: SurfaceSide, v: number): number {
  const { nx, ny, spacingMm: step, ox, oy, oz } = field.grid;
  const i = v % nx;
  const j = Math.floor(v / nx) % ny;
  const k = Math.floor(v / (nx * ny));
  QUERY[0] = ox + i * step;
  QUERY[1] = oy + j * step;
  QUERY[2] = oz + k * step;
  const t = searchNearest(surface, surface.nearest[v]! - 1, ROUNDS);
  const away = Math.sqrt(FOUND[AT.squared]!);
  if (away >= step) return -1;
  if (away >= TOO_NEAR * step) {
    setFoot(away);
    return away;
  }
  if (!slopeAt(field, v)) return -1;
  const out = side === 'inside' ? 1 : -1;
  for (let a = 0; a < 3; a++) QUERY[a] = QUERY[a]! + FOUND[AT.footX + a]! + (out * SLOPE[a]! * step) / 2;
  searchNearest(surface, t, ROUNDS);
  const out2 = Math.sqrt(FOUND[AT.squared]!);
  let along = 0;
  for (let a = 0; a < 3; a++) along -= out * SLOPE[a]! * FOUND[AT.footX + a]!;
  // In a gap narrower than that the point lies nearer to the other side of it.
  if (out2 < TOO_NEAR * step || along < 0.7 * out2) return -1;
  setFoot(out2);
  return away;
}

/** From QUERY and FOUND. */
function setFoot(away: number): void {
  for (let a = 0; a < 3; a++) {
    FOOT[a] = QUERY[a]! + FOUND[AT.footX + a]!;
    FOOT[3 + a] = FOUND[AT.footX + a]! / away;
  }
}

/** Into SLOPE: the unit direction in which the signed distance of the grid grows fastest. False where it has none. */
function slopeAt({ grid, task }: Field, v: number): boolean {
  const steps = [1, grid.nx, grid.nx * grid.ny];
  const signed = (u: number): number =>
    task.windings[0]![u]! > 0 ? -task.distances[0]![u]! : task.distances[0]![u]!;
  for (let a = 0; a < 3; a++) SLOPE[a] = signed(v + steps[a]!) - signed(v - steps[a]!);
  const length = Math.hypot(SLOPE[0]!, SLOPE[1]!, SLOPE[2]!);
  if (!(length > 0)) return false;
  for (let a = 0; a < 3; a++) SLOPE[a]! /= length;
  return true;
}

/** Half the length of the cross products of the sides of the triangles. */
function exposedAreaMm2({ positions: p, triangles }: SearchSurface): number {
  let sum = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!];
    const [vx, vy, vz] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!];
    const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    sum += Math.sqrt(x * x + y * y + z * z) / 2;
  }
  return sum;
}
