import { cross, type Vector } from '../vector';

export type { Vector } from '../vector';

/** Right-handed unit vectors: `u` and `v` span the plane, `n` stands on it. */
export interface PlaneFrame {
  u: Vector;
  v: Vector;
  n: Vector;
}

/**
 * Radians. An angle no modeler uses: edges of a part at rest lie along neither u nor v, where lines would take them whole or
 * not at all. Chosen here.
 */
const ASKEW = 0.37;

/**
 * Vertices closer to a plane than this share of the largest distance from it lie on it: 0.3 micrometers on 300 mm. Chosen here.
 */
export const ON_PLANE_SHARE = 1e-6;

/** Two directions across `normal` (any length above 0), at a set angle to the axes. */
export function planeFrame(normal: Vector): PlaneFrame {
  const n = unit(normal);
  const [x, y, z] = n.map(Math.abs) as [number, number, number];
  const side: Vector = x <= y && x <= z ? [1, 0, 0] : y <= z ? [0, 1, 0] : [0, 0, 1];
  const across = unit(cross(side, n));
  const ahead = cross(n, across);
  const [sin, cos] = [Math.sin(ASKEW), Math.cos(ASKEW)];
  return { u: combined(cos, across, sin, ahead), v: combined(-sin, across, cos, ahead), n };
}

/** A direction of length 1. Throws on one of no or of infinite length. */
export function unit(a: Vector): Vector {
  const length = Math.hypot(...a);
  if (!(length > 0 && length < Infinity))
    throw new Error(`planeFrame: expected a direction of finite length above 0, got ${a.join(' ')}`);
  return [a[0] / length, a[1] / length, a[2] / length];
}

const combined = (s: number, a: Vector, t: number, b: Vector): Vector => [
  s * a[0] + t * b[0],
  s * a[1] + t * b[1],
  s * a[2] + t * b[2],
];

/** One coordinate of every vertex: its distance from `origin` along a unit vector. */
export function coordinatesAlong(positions: Float64Array, axis: Vector, origin: Vector): Float64Array {
  const [ax, ay, az] = axis;
  const [ox, oy, oz] = origin;
  const along = new Float64Array(positions.length / 3);
  for (let v = 0, i = 0; v < along.length; v++, i += 3)
    along[v] = ax * (positions[i]! - ox) + ay * (positions[i + 1]! - oy) + az * (positions[i + 2]! - oz);
  return along;
}

/** Least and largest of a coordinate over the vertices that triangles use; Infinity and -Infinity where there are none. */
export function rangeOf(coordinates: Float64Array, triangles: Int32Array): { low: number; high: number } {
  let low = Infinity;
  let high = -Infinity;
  for (let c = 0; c < triangles.length; c++) {
    const x = coordinates[triangles[c]!]!;
    if (x < low) low = x;
    if (x > high) high = x;
  }
  return { low, high };
}

/** Lists of coordinates, one after the other. */
export function joined(lists: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(lists.reduce((sum, list) => sum + list.length, 0));
  let at = 0;
  for (const list of lists) {
    all.set(list, at);
    at += list.length;
  }
  return all;
}
