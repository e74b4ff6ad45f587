import { segmentRows, windingAt, type SegmentRows } from './segmentRows';

/** Segments closer than this share of the coordinates are one: walls of two bodies that touch are no boundary. Chosen here. */
const TOUCHING_SHARE = 1e-12;

/**
 * Boundary of the region that directed segments wind around at least once: segments are split where they meet, and a piece stays
 * when the region is on one side of it only. What of one outline lies inside another goes, as do outlines that run the wrong way
 * around nothing, and walls that touch. u0, v0, u1, v1 of each piece. About as fast as a sort, unless many segments are long.
 */
export function boundaryPieces(segments: Float64Array, rows: SegmentRows): Float64Array {
  const touching = TOUCHING_SHARE * segments.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  const turned = segmentRows(quarterTurned(segments));
  const cuts = cutsOf(segments, touching);
  const pieces: number[] = [];
  for (let i = 0; i < segments.length; i += 4) {
    const [u0, v0, u1, v1] = segments.subarray(i, i + 4) as unknown as [number, number, number, number];
    const [du, dv] = [u1 - u0, v1 - v0];
    const shares = [0, ...(cuts.get(i) ?? []).sort((a, b) => a - b), 1];
    for (let k = 1; k < shares.length; k++) {
      const [from, to] = [shares[k - 1]!, shares[k]!];
      if ((to - from) * Math.hypot(du, dv) <= touching) continue;
      const [u, v] = [u0 + ((from + to) / 2) * du, v0 + ((from + to) / 2) * dv];
      // Looked at across the segment, more or less: along it nothing could be told.
      const isBoundary =
        Math.abs(dv) >= Math.abs(du) ? parts(rows, u, v, touching) : parts(turned, v, -u, touching);
      if (isBoundary)
        pieces.push(
          u0 + from * du,
          v0 + from * dv,
          to === 1 ? u1 : u0 + to * du,
          to === 1 ? v1 : v0 + to * dv,
        );
    }
  }
  return Float64Array.from(pieces);
}

const parts = (rows: SegmentRows, u: number, v: number, touching: number): boolean =>
  windingAt(rows, u - touching, v) >= 1 !== windingAt(rows, u + touching, v) >= 1;

/** A quarter turn clockwise: what was on the left stays there. */
function quarterTurned(segments: Float64Array): Float64Array {
  const turned = new Float64Array(segments.length);
  for (let i = 0; i < segments.length; i += 2) {
    turned[i] = segments[i + 1]!;
    turned[i + 1] = -segments[i]!;
  }
  return turned;
}

/** Where segments are to be split, as shares of their length, by 4 x their number. */
function cutsOf(segments: Float64Array, touching: number): Map<number, number[]> {
  const cuts = new Map<number, number[]>();
  const low = (i: number, k: number): number => Math.min(segments[i + k]!, segments[i + 2 + k]!) - touching;
  const high = (i: number, k: number): number => Math.max(segments[i + k]!, segments[i + 2 + k]!) + touching;
  const order = Array.from({ length: segments.length / 4 }, (_, i) => 4 * i);
  const lows = new Float64Array(segments.length);
  for (const i of order) lows[i] = low(i, 0);
  order.sort((i, j) => lows[i]! - lows[j]!);
  order.forEach((i, k) => {
    const [right, bottom, top] = [high(i, 0), low(i, 1), high(i, 1)];
    for (let next = k + 1; next < order.length && lows[order[next]!]! <= right; next++) {
      const j = order[next]!;
      if (low(j, 1) <= top && high(j, 1) >= bottom) cutPair(segments, i, j, touching, cuts);
    }
  });
  return cuts;
}

/** Splits two segments where they cross and each where an end of the other lies on it. */
function cutPair(s: Float64Array, i: number, j: number, touching: number, cuts: Map<number, number[]>): void {
  const [iu, iv] = [s[i + 2]! - s[i]!, s[i + 3]! - s[i + 1]!];
  const [ju, jv] = [s[j + 2]! - s[j]!, s[j + 3]! - s[j + 1]!];
  const [du, dv] = [s[j]! - s[i]!, s[j + 1]! - s[i + 1]!];
  const turn = iu * jv - iv * ju;
  const [onI, onJ] = [(du * jv - dv * ju) / turn, (du * iv - dv * iu) / turn];
  if (onI > 0 && onI < 1 && onJ > 0 && onJ < 1) {
    add(cuts, i, onI);
    add(cuts, j, onJ);
    return;
  }
  for (const end of [0, 2]) {
    cutAt(s, i, s[j + end]!, s[j + end + 1]!, touching, cuts);
    cutAt(s, j, s[i + end]!, s[i + end + 1]!, touching, cuts);
  }
}

function cutAt(
  s: Float64Array,
  i: number,
  u: number,
  v: number,
  touching: number,
  cuts: Map<number, number[]>,
): void {
  const [du, dv] = [s[i + 2]! - s[i]!, s[i + 3]! - s[i + 1]!];
  const [pu, pv] = [u - s[i]!, v - s[i + 1]!];
  const share = (pu * du + pv * dv) / (du * du + dv * dv);
  if (share > 0 && share < 1 && Math.hypot(pu - share * du, pv - share * dv) <= touching) add(cuts, i, share);
}

function add(cuts: Map<number, number[]>, i: number, share: number): void {
  const known = cuts.get(i);
  if (known) known.push(share);
  else cuts.set(i, [share]);
}
