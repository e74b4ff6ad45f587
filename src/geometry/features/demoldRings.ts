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

/** Two outlines around solid share an area. Where they only share a point or a border, they touch: rubber can part them. */
export function isOverlap(a: FlatRing, b: FlatRing): boolean {
  const [p, q] = [boxOf(a), boxOf(b)];
  if (!doBoxesMeet(p, q)) return false;
  const nearMm = NEAR_SHARE * Math.max(p[1] - p[0], p[3] - p[2], q[1] - q[0], q[3] - q[2]);
  if (hasPointIn(a, b, nearMm) || hasPointIn(b, a, nearMm)) return true;
  return goesInto(a, b, nearMm) || goesInto(b, a, nearMm);
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

/**
 * What is nearer than this share of the larger outline lies on one line: corners of a scan in single precision are true to a tenth of that. Chosen
 * here: 0.2 micrometers on 200 mm.
 */
const NEAR_SHARE = 1e-6;

/** Points of one outline tried in the other before all sides are crossed: most that overlap are told by a few. */
const TRIED = 24;

function hasPointIn(points: FlatRing, ring: FlatRing, nearMm: number): boolean {
  const count = points.length / 2;
  const step = Math.max(1, Math.floor(count / TRIED));
  for (let i = 0; i < count; i += step)
    if (isWellInside(points[2 * i]!, points[2 * i + 1]!, ring, nearMm)) return true;
  return false;
}

const isWellInside = (u: number, v: number, ring: FlatRing, nearMm: number): boolean =>
  isInside(u, v, ring) && borderMm(u, v, ring) > nearMm;

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

function borderMm(u: number, v: number, ring: FlatRing): number {
  let least = Infinity;
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    const [du, dv] = [ring[i]! - ring[j]!, ring[i + 1]! - ring[j + 1]!];
    const [pu, pv] = [u - ring[j]!, v - ring[j + 1]!];
    const square = du * du + dv * dv;
    const t = square === 0 ? 0 : Math.min(1, Math.max(0, (pu * du + pv * dv) / square));
    least = Math.min(least, (pu - t * du) ** 2 + (pv - t * dv) ** 2);
  }
  return Math.sqrt(least);
}

/**
 * The border of `a` runs within `b`, or along the border of `b` with its solid on the same side. Every side is cut where it meets the other outline;
 * the middle of a piece stands for all of it.
 */
function goesInto(a: FlatRing, b: FlatRing, nearMm: number): boolean {
  const box = boxOf(b);
  for (let i = 0, j = a.length - 2; i < a.length; j = i, i += 2) {
    const side = Float64Array.of(a[j]!, a[j + 1]!, a[i]!, a[i + 1]!);
    if (!doBoxesMeet(boxOf(side), box, nearMm)) continue;
    const cuts = cutsBy(side, b, nearMm);
    if (cuts === 'along') return true;
    for (let n = 0; n + 1 < cuts.length; n++) {
      const [from, to] = [cuts[n]!, cuts[n + 1]!];
      const at = (k: 0 | 1): number => side[k]! + ((from + to) / 2) * (side[k + 2]! - side[k]!);
      if (to > from && isWellInside(at(0), at(1), b, nearMm)) return true;
    }
  }
  return false;
}

/** Where a side meets an outline, as shares of its length with both ends; nothing where it does not. `along`: they share a border and the solid beside it. */
function cutsBy(side: FlatRing, ring: FlatRing, nearMm: number): number[] | 'along' {
  const cuts: number[] = [];
  const lengthMm = Math.hypot(side[2]! - side[0]!, side[3]! - side[1]!);
  for (let k = 0, l = ring.length - 2; k < ring.length && lengthMm > 0; l = k, k += 2) {
    if (isClear(side, 0, ring, k, l, nearMm) || isClear(side, 1, ring, k, l, nearMm)) continue;
    const [fromL, fromK] = [awayMm(side, 0, 2, ring, l), awayMm(side, 0, 2, ring, k)];
    if (Math.min(fromL, fromK) > nearMm || Math.max(fromL, fromK) < -nearMm) continue;
    const [start, end] = [awayMm(ring, l, k, side, 0), awayMm(ring, l, k, side, 2)];
    if (Math.min(start, end) > nearMm || Math.max(start, end) < -nearMm) continue;
    const isOn = (p: number, q: number): boolean => Math.max(Math.abs(p), Math.abs(q)) <= nearMm;
    if (!isOn(fromL, fromK) && !isOn(start, end)) {
      cuts.push(Math.min(1, Math.max(0, start / (start - end))));
      continue;
    }
    const [atL, atK] = [alongMm(side, ring, l), alongMm(side, ring, k)];
    const [first, last] = [Math.max(0, Math.min(atL, atK)), Math.min(lengthMm, Math.max(atL, atK))];
    if (last - first > 2 * nearMm && atK > atL) return 'along';
    if (last >= first) cuts.push(first / lengthMm, last / lengthMm);
  }
  return cuts.length === 0 ? cuts : [0, ...cuts, 1].sort((p, q) => p - q);
}

/** Most pairs of sides are apart along u or along v: told at the least cost. */
function isClear(side: FlatRing, axis: 0 | 1, ring: FlatRing, k: number, l: number, nearMm: number): boolean {
  const [p, q, r, s] = [side[axis]!, side[axis + 2]!, ring[k + axis]!, ring[l + axis]!];
  return (p < q ? q : p) + nearMm < (r < s ? r : s) || (r < s ? s : r) + nearMm < (p < q ? p : q);
}

/** How far to the left of the line from p to q of one ring a point of the other lies; 0 where p and q are one. */
function awayMm(ring: FlatRing, p: number, q: number, other: FlatRing, at: number): number {
  const [du, dv] = [ring[q]! - ring[p]!, ring[q + 1]! - ring[p + 1]!];
  // Not Math.hypot: this is asked for every pair of sides.
  const lengthMm = Math.sqrt(du * du + dv * dv);
  if (lengthMm === 0) return 0;
  return (du * (other[at + 1]! - ring[p + 1]!) - dv * (other[at]! - ring[p]!)) / lengthMm;
}

/** How far along a side a point of an outline lies, from its start. */
function alongMm(side: FlatRing, ring: FlatRing, at: number): number {
  const [du, dv] = [side[2]! - side[0]!, side[3]! - side[1]!];
  return (du * (ring[at]! - side[0]!) + dv * (ring[at + 1]! - side[1]!)) / Math.hypot(du, dv);
}

type FlatBox = [u0: number, u1: number, v0: number, v1: number];

const doBoxesMeet = (p: FlatBox, q: FlatBox, nearMm = 0): boolean =>
  p[0] <= q[1] + nearMm && q[0] <= p[1] + nearMm && p[2] <= q[3] + nearMm && q[2] <= p[3] + nearMm;

function boxOf(ring: FlatRing): FlatBox {
  let [u0, u1, v0, v1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < ring.length; i += 2) {
    [u0, u1] = [Math.min(u0, ring[i]!), Math.max(u1, ring[i]!)];
    [v0, v1] = [Math.min(v0, ring[i + 1]!), Math.max(v1, ring[i + 1]!)];
  }
  return [u0, u1, v0, v1];
}
