import type { LevelsField } from './coarsePass';
import { planeFraction } from './planeFraction';

/*
 * Two fronts in one voxel. Where a level runs in from two sides (what is left of a wall shrunk by nearly half of it, a gap that an
 * outward offset nearly fills) the nearest face alone leaves too much: with a remainder of t in a voxel of h by (h - t)^2 / 4h for
 * every mm2. So a voxel whose neighbor farther from the surface looks the opposite way takes that neighbor's face along: inside, what is left is
 * what both leave; outside, what is filled is what either fills. For parallel faces that is exact.
 *
 * Tried: nothing but the nearest face (a ball with walls of 16 mm, shrunk by 8, kept 1.4 cm3 of nothing, and shrunk by 8.6 less than nothing).
 */

/** A plane: its outward normal, and the normal's product with a point on it. */
export interface Front {
  isThere: boolean;
  x: number;
  y: number;
  z: number;
  offset: number;
}

export const newFront = (): Front => ({ isThere: false, x: 0, y: 0, z: 0, offset: 0 });

/** From this cosine on two faces look away from each other; in between the second counts in part. Chosen here. */
const [OPPOSITE, FULLY] = [-0.85, -0.95];

/** Into `front`: the tangent plane of the face nearest to a voxel, from its slot. */
export function frontOf(
  { grid, feet }: LevelsField,
  slot: number,
  i: number,
  j: number,
  k: number,
  front: Front,
): void {
  const signed = feet[4 * slot + 3]!;
  front.isThere = Math.abs(signed) > 1e-3 * grid.spacingMm;
  if (!front.isThere) return;
  const [x, y, z] = [feet[4 * slot]!, feet[4 * slot + 1]!, feet[4 * slot + 2]!];
  front.x = (grid.ox + i * grid.spacingMm - x) / signed;
  front.y = (grid.oy + j * grid.spacingMm - y) / signed;
  front.z = (grid.oz + k * grid.spacingMm - z) / signed;
  front.offset = front.x * x + front.y * y + front.z * z;
}

/** Into `other`: the face that the next voxel away from the surface sees, when it lies opposite. */
export function findOpposite(
  field: LevelsField,
  here: Front,
  isInside: boolean,
  v: number,
  i: number,
  j: number,
  k: number,
  other: Front,
): void {
  other.isThere = false;
  if (!here.isThere) return;
  const { grid, slotOf } = field;
  const [ax, ay, az] = [Math.abs(here.x), Math.abs(here.y), Math.abs(here.z)];
  const away = isInside ? -1 : 1;
  let [di, dj, dk] = [0, 0, 0];
  if (ax >= ay && ax >= az) di = here.x > 0 ? away : -away;
  else if (ay >= az) dj = here.y > 0 ? away : -away;
  else dk = here.z > 0 ? away : -away;
  const slot = slotOf[v + (dk * grid.ny + dj) * grid.nx + di]! - 1;
  if (slot < 0) return;
  frontOf(field, slot, i + di, j + dj, k + dk, other);
  if (other.isThere && cosine(here, other.x, other.y, other.z) > OPPOSITE) other.isThere = false;
}

const cosine = (front: Front, x: number, y: number, z: number): number =>
  front.x * x + front.y * y + front.z * z;

/**
 * The share of a voxel (middle x, y, z; edge `edgeMm`) within a level when a second face lies opposite the nearest one: `share` is the plane
 * fraction of the nearest, whose normal is (nx, ny, nz).
 */
export function betweenFronts(
  share: number,
  second: Front,
  at: { x: number; y: number; z: number; nx: number; ny: number; nz: number; isInside: boolean },
  levelMm: number,
  edgeMm: number,
): number {
  const distance = cosine(second, at.x, at.y, at.z) - second.offset;
  const other = planeFraction((distance - levelMm) / edgeMm, second.x, second.y, second.z);
  const both = at.isInside ? Math.max(0, share + other - 1) : Math.min(1, share + other);
  const weight = (OPPOSITE - cosine(second, at.nx, at.ny, at.nz)) / (OPPOSITE - FULLY);
  return weight <= 0 ? share : share + Math.min(1, weight) * (both - share);
}
