import { coordinatesAlong, planeFrame, type Vector } from '../measure/planeFrame';
import type { Plane } from '../measure/section';

/** An outline in the plane's own u and v: u, v per point, mm. */
export type FlatRing = Float64Array;

export function ringOf(outline: Float64Array, { point, normal }: Plane): FlatRing {
  const { u, v } = planeFrame(normal);
  const [us, vs] = [coordinatesAlong(outline, u, point), coordinatesAlong(outline, v, point)];
  const ring = new Float64Array(2 * us.length);
  for (let i = 0; i < us.length; i++) ring.set([us[i]!, vs[i]!], 2 * i);
  return ring;
}

/** Above 0 around solid. */
export function signedMm2(ring: FlatRing): number {
  let twice = 0;
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2)
    twice += ring[j]! * ring[i + 1]! - ring[i]! * ring[j + 1]!;
  return twice / 2;
}

/** Middle of the area inside a convex outline, x, y, z; of its corners where it holds none. */
export function middleOf(hull: Float64Array, plane: Plane): Vector {
  if (hull.length === 0) return plane.point;
  const ring = ringOf(hull, plane);
  const sum: [number, number, number] = [0, 0, 0];
  let weights = 0;
  for (let i = 1; i + 1 < ring.length / 2; i++) {
    const weight = signedMm2(Float64Array.of(...ring.subarray(0, 2), ...ring.subarray(2 * i, 2 * i + 4)));
    weights += weight;
    for (const k of [0, 1, 2] as const)
      sum[k] += (weight * (hull[k]! + hull[3 * i + k]! + hull[3 * i + 3 + k]!)) / 3;
  }
  if (weights > 0) return [sum[0] / weights, sum[1] / weights, sum[2] / weights];
  const count = hull.length / 3;
  const mean = (k: number): number => hull.reduce((total, c, i) => total + (i % 3 === k ? c : 0), 0) / count;
  return [mean(0), mean(1), mean(2)];
}

/** Groups of outlines that lie over one another, as those of overlapping shells do. */
export function grouped(rings: readonly FlatRing[]): FlatRing[][] {
  let groups: FlatRing[][] = [];
  for (const ring of rings) {
    const met = groups.filter((group) => group.some((other) => isOverlap(other, ring)));
    groups = [...groups.filter((group) => !met.includes(group)), [...met.flat(), ring]];
  }
  return groups;
}

/** Two outlines share a place. */
export function isOverlap(a: FlatRing, b: FlatRing): boolean {
  if (!doBoxesMeet(a, b)) return false;
  return hasPointIn(a, b) || hasPointIn(b, a) || doCross(a, b);
}

/** Least distance between the corners of two outlines. */
export function gapMm(a: FlatRing, b: FlatRing): number {
  let least = Infinity;
  for (let i = 0; i < a.length; i += 2)
    for (let j = 0; j < b.length; j += 2) {
      const [du, dv] = [a[i]! - b[j]!, a[i + 1]! - b[j + 1]!];
      least = Math.min(least, du * du + dv * dv);
    }
  return Math.sqrt(least);
}

/** Points of one outline tried in the other before all sides are crossed: most that overlap are told by a few. */
const TRIED = 24;

function hasPointIn(points: FlatRing, ring: FlatRing): boolean {
  const count = points.length / 2;
  const step = Math.max(1, Math.floor(count / TRIED));
  for (let i = 0; i < count; i += step) if (isInside(points[2 * i]!, points[2 * i + 1]!, ring)) return true;
  return false;
}

/** By the crossings of a line to the right. */
function isInside(u: number, v: number, ring: FlatRing): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    const [vi, vj] = [ring[i + 1]!, ring[j + 1]!];
    if (vi > v === vj > v) continue;
    if (u < ring[i]! + ((v - vi) / (vj - vi)) * (ring[j]! - ring[i]!)) inside = !inside;
  }
  return inside;
}

function doCross(a: FlatRing, b: FlatRing): boolean {
  for (let i = 0, j = a.length - 2; i < a.length; j = i, i += 2)
    for (let k = 0, l = b.length - 2; k < b.length; l = k, k += 2) {
      if (sideOf(a, j, i, b, l) * sideOf(a, j, i, b, k) > 0) continue;
      if (sideOf(b, l, k, a, j) * sideOf(b, l, k, a, i) <= 0) return true;
    }
  return false;
}

/** On which side of the line from p to q of one ring a point of the other lies. */
const sideOf = (ring: FlatRing, p: number, q: number, other: FlatRing, at: number): number =>
  (ring[q]! - ring[p]!) * (other[at + 1]! - ring[p + 1]!) -
  (ring[q + 1]! - ring[p + 1]!) * (other[at]! - ring[p]!);

function doBoxesMeet(a: FlatRing, b: FlatRing): boolean {
  const [p, q] = [boxOf(a), boxOf(b)];
  return p[0] <= q[1] && q[0] <= p[1] && p[2] <= q[3] && q[2] <= p[3];
}

function boxOf(ring: FlatRing): [number, number, number, number] {
  let [u0, u1, v0, v1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < ring.length; i += 2) {
    [u0, u1] = [Math.min(u0, ring[i]!), Math.max(u1, ring[i]!)];
    [v0, v1] = [Math.min(v0, ring[i + 1]!), Math.max(v1, ring[i + 1]!)];
  }
  return [u0, u1, v0, v1];
}
