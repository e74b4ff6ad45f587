import type { Vector } from '../geometry';
import type { Drawable } from './drawable';

/** Where a pocket shuts: level with this, seen along `up`, and which summit it is about. All in the picture's units. */
export interface Level {
  top: Vector;
  up: Vector;
  /** Along `up`, from the picture's middle. */
  at: number;
}

/** More of the surface than this is no pocket: its level ran out over a rim. Chosen here. */
const MOST_SHARE = 0.5;

/**
 * The line at which a level meets the surface around a summit: two ends of every piece, in the picture's units. Only the part of the surface that hangs
 * together above the level and holds the summit counts. Empty where no corner of the surface stands above it.
 */
export function levelEnds({ positions: p, index }: Drawable, { top, up, at }: Level): Float32Array {
  const count = p.length / 3;
  const over = new Float32Array(count);
  for (let v = 0; v < count; v++)
    over[v] = p[3 * v]! * up[0] + p[3 * v + 1]! * up[1] + p[3 * v + 2]! * up[2] - at;
  const rootOf = islands(over, index);
  const summit = nearestOver(p, over, top);
  if (summit < 0) return new Float32Array(0);
  const root = rootOf(summit);
  const isIn = (v: number): boolean => over[v]! > 0 && rootOf(v) === root;
  let inside = 0;
  for (let v = 0; v < count; v++) if (isIn(v)) inside++;
  return inside > MOST_SHARE * count ? new Float32Array(0) : crossings(p, index, over, isIn);
}

/** Corners above the level that hang together by edges, as a root of each. */
function islands(over: Float32Array, index: Uint32Array): (v: number) => number {
  const parent = Int32Array.from(over, (_, v) => v);
  const rootOf = (v: number): number => {
    let root = v;
    while (parent[root] !== root) root = parent[root]!;
    while (parent[v] !== root) [parent[v], v] = [root, parent[v]!];
    return root;
  };
  const join = (a: number, b: number): void => {
    if (over[a]! > 0 && over[b]! > 0) parent[rootOf(a)] = rootOf(b);
  };
  for (let t = 0; t < index.length; t += 3) {
    join(index[t]!, index[t + 1]!);
    join(index[t + 1]!, index[t + 2]!);
    join(index[t + 2]!, index[t]!);
  }
  return rootOf;
}

function nearestOver(p: Float32Array, over: Float32Array, [x, y, z]: Vector): number {
  let [best, least] = [-1, Infinity];
  for (let v = 0; v < over.length; v++) {
    if (over[v]! <= 0) continue;
    const far = (p[3 * v]! - x) ** 2 + (p[3 * v + 1]! - y) ** 2 + (p[3 * v + 2]! - z) ** 2;
    if (far < least) [best, least] = [v, far];
  }
  return best;
}

function crossings(
  p: Float32Array,
  index: Uint32Array,
  over: Float32Array,
  isIn: (v: number) => boolean,
): Float32Array {
  const ends: number[] = [];
  const cross = (a: number, b: number): void => {
    const share = over[a]! / (over[a]! - over[b]!);
    for (let k = 0; k < 3; k++) ends.push(p[3 * a + k]! + share * (p[3 * b + k]! - p[3 * a + k]!));
  };
  for (let t = 0; t < index.length; t += 3) {
    const corners = [index[t]!, index[t + 1]!, index[t + 2]!];
    const high = corners.filter((v) => over[v]! > 0);
    if (high.length === 0 || high.length === 3 || !isIn(high[0]!)) continue;
    // The corner that is alone on its side, and the two it parts from.
    const alone = corners.findIndex((v) => over[v]! > 0 === (high.length === 1));
    for (const turn of [1, 2]) cross(corners[alone]!, corners[(alone + turn) % 3]!);
  }
  return Float32Array.from(ends);
}
