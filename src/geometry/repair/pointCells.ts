/*
 * Points in cubes of twice the reach, so that all within reach of a place lie in the eight cubes about it. The cubes are the
 * slots of a hash table, each the head of a linked list; strangers in a slot are told apart by their true distance.
 */

export interface PointCells {
  reachMm: number;
  /** x, y, z of the points, by number. */
  points: Float64Array;
  /** First point of a slot, and the point after each; -1 ends the list. */
  head: Int32Array;
  next: Int32Array;
}

export function makeCells(points: Float64Array, reachMm: number): PointCells {
  let slots = 1024;
  while (slots < points.length / 3) slots *= 2;
  return {
    reachMm,
    points,
    head: new Int32Array(slots).fill(-1),
    next: new Int32Array(points.length / 3).fill(-1),
  };
}

export function addPoint({ reachMm, points, head, next }: PointCells, point: number): void {
  const wide = 2 * reachMm;
  const slot =
    slotOf(
      Math.floor(points[3 * point]! / wide),
      Math.floor(points[3 * point + 1]! / wide),
      Math.floor(points[3 * point + 2]! / wide),
    ) &
    (head.length - 1);
  next[point] = head[slot]!;
  head[slot] = point;
}

/** The nearest point no further off than the reach, or -1. */
export function nearestPoint(cells: PointCells, x: number, y: number, z: number): number {
  const { reachMm, points, head, next } = cells;
  const wide = 2 * reachMm;
  const [i, j, k] = [lowCube(x, wide), lowCube(y, wide), lowCube(z, wide)];
  let best = -1;
  let least = reachMm * reachMm;
  for (let cube = 0; cube < 8; cube++) {
    const slot = slotOf(i + (cube & 1), j + ((cube >> 1) & 1), k + (cube >> 2)) & (head.length - 1);
    for (let q = head[slot]!; q >= 0; q = next[q]!) {
      const dx = points[3 * q]! - x;
      const dy = points[3 * q + 1]! - y;
      const dz = points[3 * q + 2]! - z;
      const square = dx * dx + dy * dy + dz * dz;
      if (square > least || (square === least && best >= 0)) continue;
      least = square;
      best = q;
    }
  }
  return best;
}

/** All points no further off than the reach; each once. */
export function pointsNear(cells: PointCells, x: number, y: number, z: number): Set<number> {
  const { reachMm, points, head, next } = cells;
  const wide = 2 * reachMm;
  const [i, j, k] = [lowCube(x, wide), lowCube(y, wide), lowCube(z, wide)];
  const found = new Set<number>();
  for (let cube = 0; cube < 8; cube++) {
    const slot = slotOf(i + (cube & 1), j + ((cube >> 1) & 1), k + (cube >> 2)) & (head.length - 1);
    for (let q = head[slot]!; q >= 0; q = next[q]!) {
      if (Math.hypot(points[3 * q]! - x, points[3 * q + 1]! - y, points[3 * q + 2]! - z) <= reachMm)
        found.add(q);
    }
  }
  return found;
}

/** The lower of the two cubes along an axis that a ball about here can touch. */
const lowCube = (x: number, wide: number): number => Math.floor(x / wide - 0.5);

/** Odd multipliers and a finishing step as in published 32-bit hashes; the constants are from memory. */
function slotOf(i: number, j: number, k: number): number {
  const h = Math.imul(i, 0x9e3779b1) ^ Math.imul(j, 0x85ebca77) ^ Math.imul(k, 0xc2b2ae3d);
  const mixed = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d);
  return mixed ^ (mixed >>> 13);
}
