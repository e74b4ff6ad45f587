import { planeFrame } from '../measure/planeFrame';
import type { Section } from '../measure/section';
import type { Vector } from '../vector';
import { distanceAt, growRegion } from './growRegion';

/** The largest circle within a plane section: how wide a neck is, and the place farthest from its walls. */
export interface WidestCircle {
  atMm: Vector;
  diameterMm: number;
}

/** Squares are halved until none can hold a circle wider by this share of the section. Chosen here: 0.03 mm on 300 mm. */
const CLOSE_SHARE = 1e-4;

/** Squares along the longer side at the start. Chosen here. */
const SQUARES = 8;

/**
 * Center and diameter (mm) of the largest circle in the region which the outlines of a section wind about once or more. Distances from its boundary
 * are exact, and grow by a millimeter a millimeter at most: so a square whose middle has too little room for its size holds no wider circle,
 * and the answer is right to CLOSE_SHARE for sure (branch and bound). Undefined where there is no region.
 */
export function widestCircle({ outlines, plane }: Section): WidestCircle | undefined {
  const { u, v } = planeFrame(plane.normal);
  const segments = segmentsOf(outlines, plane.point, u, v);
  if (segments.length === 0) return undefined;
  const region = growRegion(segments);
  const best = roomiest(segments, (x, y) => -distanceAt(region, x, y));
  if (!(best.room > 0)) return undefined;
  const at = (k: 0 | 1 | 2): number => plane.point[k] + best.x * u[k] + best.y * v[k];
  return { atMm: [at(0), at(1), at(2)], diameterMm: 2 * best.room };
}

interface Square {
  x: number;
  y: number;
  half: number;
  /** Distance of its middle from the boundary, negative outside. */
  room: number;
}

function roomiest(segments: Float64Array, roomAt: (x: number, y: number) => number): Square {
  const [lowX, highX] = rangeOfEvery(segments, 0);
  const [lowY, highY] = rangeOfEvery(segments, 1);
  const longer = Math.max(highX - lowX, highY - lowY);
  const half = longer / SQUARES / 2;
  const square = (x: number, y: number, size: number): Square => ({ x, y, half: size, room: roomAt(x, y) });
  let open: Square[] = [];
  for (let x = lowX + half; x < highX + half; x += 2 * half)
    for (let y = lowY + half; y < highY + half; y += 2 * half) open.push(square(x, y, half));
  let best = open.reduce((a, b) => (b.room > a.room ? b : a));
  for (let size = half; open.length > 0; size /= 2) {
    const next: Square[] = [];
    for (const { x, y, room } of open) {
      if (room + size * Math.SQRT2 <= best.room + (CLOSE_SHARE * longer) / 2) continue;
      for (const [dx, dy] of QUARTERS) {
        const quarter = square(x + (dx * size) / 2, y + (dy * size) / 2, size / 2);
        if (quarter.room > best.room) best = quarter;
        next.push(quarter);
      }
    }
    open = next;
  }
  return best;
}

const QUARTERS = [
  [-1, -1],
  [1, -1],
  [-1, 1],
  [1, 1],
] as const;

function rangeOfEvery(values: Float64Array, from: number): [number, number] {
  let least = Infinity;
  let most = -Infinity;
  for (let i = from; i < values.length; i += 2) {
    least = Math.min(least, values[i]!);
    most = Math.max(most, values[i]!);
  }
  return [least, most];
}

/** Four numbers a segment: x and y of both ends. */
function segmentsOf(outlines: readonly Float64Array[], point: Vector, u: Vector, v: Vector): Float64Array {
  const segments: number[] = [];
  for (const outline of outlines)
    for (let i = 0; i < outline.length; i += 3)
      for (const from of [i, (i + 3) % outline.length]) {
        const [dx, dy, dz] = [
          outline[from]! - point[0],
          outline[from + 1]! - point[1],
          outline[from + 2]! - point[2],
        ];
        segments.push(dx * u[0] + dy * u[1] + dz * u[2], dx * v[0] + dy * v[1] + dz * v[2]);
      }
  return Float64Array.from(segments);
}
