import { edgeCells, type Cell } from './grownCells';
import { distanceAt, type GrownRegion } from './growRegion';

/**
 * Outlines of the region grown by a distance, u, v per point, mm, the last point joined to the first, the region on the left; to look
 * at, as corners are cut at the size of a cell. By marching squares; where two corners of a cell face each other, its center
 * decides.
 */
export function grownOutline(region: GrownRegion, growMm: number): Float64Array[] {
  const march: March = { points: new Map(), next: new Map(), corners: new Map() };
  const cells = edgeCells(region, growMm);
  const [first] = cells;
  if (first === undefined) return [];
  for (const cell of cells) marchCell(region, growMm, first, cell, march);
  return linked(march);
}

/** Points lie on sides of cells, under the number of the side. */
interface March {
  points: Map<number, readonly [number, number]>;
  next: Map<number, number>;
  /** Distance at corners of cells. */
  corners: Map<number, number>;
}

/** More than there are cells in a row. */
const STRIDE = 1 << 24;

/** Corners of a cell counter-clockwise, in steps from the first. */
const STEPS = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
] as const;

function marchCell(region: GrownRegion, growMm: number, first: Cell, cell: Cell, march: March): void {
  const side = cell.sideMm;
  const [i, j] = [Math.round((cell.u - first.u) / side), Math.round((cell.v - first.v) / side)];
  const corners = STEPS.map(([a, b]) => {
    const key = (i + a + STRIDE / 2) * STRIDE + (j + b + STRIDE / 2);
    const [u, v] = [first.u + (i + a - 0.5) * side, first.v + (j + b - 0.5) * side];
    const distance = march.corners.get(key) ?? distanceAt(region, u, v) - growMm;
    march.corners.set(key, distance);
    return { key, u, v, distance };
  });
  const isInside = corners.map(({ distance }) => distance <= 0);
  const leaving = [0, 1, 2, 3].filter((k) => isInside[k]! && !isInside[(k + 1) % 4]!);
  const entering = [0, 1, 2, 3].filter((k) => !isInside[k]! && isInside[(k + 1) % 4]!);
  for (const k of leaving) {
    const to = leaving.length === 1 ? entering[0]! : (k + (cell.distanceMm <= 0 ? 1 : 3)) % 4;
    march.next.set(pointOn(k, corners, march), pointOn(to, corners, march));
  }
}

interface Corner {
  key: number;
  u: number;
  v: number;
  distance: number;
}

/** Number of the side from corner k to the next one; its point is made. */
function pointOn(k: number, corners: readonly Corner[], { points }: March): number {
  const [a, b] = k < 2 ? [corners[k]!, corners[k + 1]!] : [corners[(k + 1) % 4]!, corners[k]!];
  // Sides start at their lower corner: 2 x its number, and 1 more for those along v.
  const key = 2 * a.key + (k % 2);
  const share = a.distance / (a.distance - b.distance);
  points.set(key, [a.u + share * (b.u - a.u), a.v + share * (b.v - a.v)]);
  return key;
}

function linked({ points, next }: March): Float64Array[] {
  const outlines: Float64Array[] = [];
  for (const start of next.keys()) {
    const outline: number[] = [];
    for (let at: number | undefined = start; at !== undefined && next.has(at);) {
      outline.push(...points.get(at)!);
      const after: number | undefined = next.get(at);
      next.delete(at);
      at = after;
    }
    if (outline.length > 4) outlines.push(Float64Array.from(outline));
  }
  return outlines;
}
