import { planeFrame } from '../measure/planeFrame';
import type { Section } from '../measure/section';
import type { Vector } from '../vector';

/** The largest circle within a plane section: how wide a neck is, and the place farthest from its walls. */
export interface WidestCircle {
  atMm: Vector;
  diameterMm: number;
}

/** Places a side that are tried first, and halvings of their spacing after that. Chosen here: to a ten-thousandth of the size. */
const [PLACES, HALVINGS] = [24, 14];

/** Starts that are followed: a section of two lobes has two best places. Chosen here. */
const STARTS = 5;

/**
 * Center and diameter (mm) of the largest circle that lies in the region which the outlines of a section wind about once or more. Distances
 * from the segments are exact; the center is sought from a lattice of places, then downhill. Undefined where there is no such region.
 */
export function widestCircle({ outlines, plane }: Section): WidestCircle | undefined {
  const { u, v } = planeFrame(plane.normal);
  const walls = wallsOf(outlines, plane.point, u, v);
  if (walls.length === 0) return undefined;
  const box = boxOf(walls);
  const clearance = (x: number, y: number): number => clearanceAt(walls, x, y);
  const step = Math.max(box.maxX - box.minX, box.maxY - box.minY) / PLACES;
  const places: Place[] = [];
  for (let x = box.minX + step / 2; x < box.maxX; x += step)
    for (let y = box.minY + step / 2; y < box.maxY; y += step) places.push({ x, y, clear: clearance(x, y) });
  places.sort((a, b) => b.clear - a.clear);
  const best = places
    .slice(0, STARTS)
    .map((place) => climbed(place, step, clearance))
    .reduce((a, b) => (b.clear > a.clear ? b : a));
  if (!(best.clear > 0)) return undefined;
  const at = (k: 0 | 1 | 2): number => plane.point[k] + best.x * u[k] + best.y * v[k];
  return { atMm: [at(0), at(1), at(2)], diameterMm: 2 * best.clear };
}

interface Place {
  x: number;
  y: number;
  /** Distance from the nearest wall, negative outside. */
  clear: number;
}

/** Eight neighbors, as long as one is farther from the walls; then closer ones. */
function climbed(start: Place, step: number, clearance: (x: number, y: number) => number): Place {
  let best = start;
  let reach = step;
  for (let halving = 0; halving < HALVINGS; reach /= 2, halving++)
    for (let moved = true; moved;) {
      moved = false;
      const { x, y } = best;
      for (let turn = 0; turn < 8; turn++) {
        const nextX = x + reach * Math.cos((turn * Math.PI) / 4);
        const nextY = y + reach * Math.sin((turn * Math.PI) / 4);
        const clear = clearance(nextX, nextY);
        if (clear <= best.clear) continue;
        best = { x: nextX, y: nextY, clear };
        moved = true;
      }
    }
  return best;
}

/** Four numbers a segment: x and y of both ends. */
function wallsOf(outlines: readonly Float64Array[], point: Vector, u: Vector, v: Vector): Float64Array {
  const count = outlines.reduce((sum, outline) => sum + outline.length / 3, 0);
  const walls = new Float64Array(4 * count);
  let at = 0;
  for (const outline of outlines)
    for (let i = 0; i < outline.length; i += 3)
      for (const from of [i, (i + 3) % outline.length]) {
        const [dx, dy, dz] = [0, 1, 2].map((k) => outline[from + k]! - point[k as 0 | 1 | 2]) as [
          number,
          number,
          number,
        ];
        walls[at++] = dx * u[0] + dy * u[1] + dz * u[2];
        walls[at++] = dx * v[0] + dy * v[1] + dz * v[2];
      }
  return walls;
}

function boxOf(walls: Float64Array): { minX: number; maxX: number; minY: number; maxY: number } {
  const box = { minX: Infinity, maxX: -Infinity, minY: Infinity, maxY: -Infinity };
  for (let i = 0; i < walls.length; i += 2) {
    box.minX = Math.min(box.minX, walls[i]!);
    box.maxX = Math.max(box.maxX, walls[i]!);
    box.minY = Math.min(box.minY, walls[i + 1]!);
    box.maxY = Math.max(box.maxY, walls[i + 1]!);
  }
  return box;
}

/** Distance from the nearest wall; outside (wound about less than once) negative. */
function clearanceAt(walls: Float64Array, x: number, y: number): number {
  let least = Infinity;
  let winding = 0;
  for (let i = 0; i < walls.length; i += 4) {
    const [ax, ay, bx, by] = [walls[i]! - x, walls[i + 1]! - y, walls[i + 2]! - x, walls[i + 3]! - y];
    const [dx, dy] = [bx - ax, by - ay];
    const square = dx * dx + dy * dy;
    const share = square > 0 ? Math.min(1, Math.max(0, -(ax * dx + ay * dy) / square)) : 0;
    const away = (ax + share * dx) ** 2 + (ay + share * dy) ** 2;
    if (away < least) least = away;
    if (ay <= 0 !== by <= 0) {
      const side = ax * by - bx * ay;
      if (ay <= 0 ? side > 0 : side < 0) winding += ay <= 0 ? 1 : -1;
    }
  }
  return winding >= 1 ? Math.sqrt(least) : -Math.sqrt(least);
}
