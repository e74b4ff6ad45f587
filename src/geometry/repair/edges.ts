import type { TriangleMesh } from '../triangleMesh';

/** Marks in `mate`: the edge belongs to this triangle alone, or to three or more. */
export const OPEN = -1;
export const SHARED = -2;

/**
 * Half-edge h = 3t + e runs from corner e of triangle t to the next corner.
 * `mate[h]` is the other half-edge where exactly two triangles meet, else OPEN or SHARED.
 * `shared` lists the edges with three or more users: a count, then that many half-edges, and so on.
 * `pieceRoot` joins the triangles that hang together by edges of two; `settlePatches` joins further.
 */
export interface EdgePairs {
  mate: Int32Array;
  shared: number[];
  pieceRoot: Int32Array;
  openCount: number;
  /** Pairs whose triangles run along their edge in the same direction: neighbors that disagree about outside. */
  conflictCount: number;
}

export const nextCorner = (h: number): number => (h % 3 === 2 ? h - 2 : h + 1);

/** Sorts the half-edges by their lower vertex (counting sort), then pairs within each short list. Linear time. */
export function pairEdges(mesh: TriangleMesh): EdgePairs {
  const { triangles } = mesh;
  const lists = listByLowVertex(mesh);
  const pieceRoot = new Int32Array(triangles.length / 3);
  for (let t = 0; t < pieceRoot.length; t++) pieceRoot[t] = t;
  const pairs: EdgePairs = {
    mate: new Int32Array(triangles.length).fill(OPEN),
    shared: [],
    openCount: 0,
    conflictCount: 0,
    pieceRoot,
  };
  const { start } = lists;
  for (let v = 0; v + 1 < start.length; v++) pairList(pairs, triangles, lists, start[v]!, start[v + 1]!);
  return pairs;
}

/** The half-edges of each lower vertex, slots[start[v]..start[v + 1]), and beside each its higher vertex. */
interface EdgeLists {
  start: Int32Array;
  slots: Int32Array;
  highs: Int32Array;
}

function listByLowVertex(mesh: TriangleMesh): EdgeLists {
  const { triangles } = mesh;
  const start = new Int32Array(mesh.positions.length / 3 + 1);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t]!;
    const b = triangles[t + 1]!;
    const c = triangles[t + 2]!;
    start[(a < b ? a : b) + 1]!++;
    start[(b < c ? b : c) + 1]!++;
    start[(c < a ? c : a) + 1]!++;
  }
  for (let v = 1; v < start.length; v++) start[v]! += start[v - 1]!;
  const lists: EdgeLists = {
    start,
    slots: new Int32Array(triangles.length),
    highs: new Int32Array(triangles.length),
  };
  const fill = start.slice();
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t]!;
    const b = triangles[t + 1]!;
    const c = triangles[t + 2]!;
    put(lists, fill, t, a, b);
    put(lists, fill, t + 1, b, c);
    put(lists, fill, t + 2, c, a);
  }
  return lists;
}

function put({ slots, highs }: EdgeLists, fill: Int32Array, h: number, from: number, to: number): void {
  const at = from < to ? fill[from]!++ : fill[to]!++;
  slots[at] = h;
  highs[at] = from < to ? to : from;
}

/** Lists longer than this (the hub of a fan) are sorted by the engine. */
const LONG_LIST = 24;

/** Half-edges slots[from..to) share their lower vertex; equal high vertices make an edge. */
function pairList(pairs: EdgePairs, triangles: Int32Array, lists: EdgeLists, from: number, to: number): void {
  if (to - from > LONG_LIST) sortLong(lists, from, to);
  else sortShort(lists, from, to);
  const { highs } = lists;
  for (let i = from; i < to;) {
    const high = highs[i]!;
    let end = i + 1;
    while (end < to && highs[end] === high) end++;
    noteEdge(pairs, triangles, lists.slots, i, end);
    i = end;
  }
}

/** Insertion sort of both arrays by `highs`; stable, so that equal edges stay in file order. */
function sortShort({ slots, highs }: EdgeLists, from: number, to: number): void {
  for (let i = from + 1; i < to; i++) {
    const high = highs[i]!;
    if (highs[i - 1]! <= high) continue;
    const h = slots[i]!;
    let j = i - 1;
    for (; j >= from && highs[j]! > high; j--) {
      highs[j + 1] = highs[j]!;
      slots[j + 1] = slots[j]!;
    }
    highs[j + 1] = high;
    slots[j + 1] = h;
  }
}

function sortLong({ slots, highs }: EdgeLists, from: number, to: number): void {
  const order = Array.from({ length: to - from }, (_, i) => from + i).sort(
    (a, b) => highs[a]! - highs[b]! || a - b,
  );
  slots.set(
    order.map((i) => slots[i]!),
    from,
  );
  highs.set(
    order.map((i) => highs[i]!),
    from,
  );
}

function noteEdge(
  pairs: EdgePairs,
  triangles: Int32Array,
  slots: Int32Array,
  from: number,
  to: number,
): void {
  const first = slots[from]!;
  if (to - from === 1) {
    pairs.openCount++;
    return;
  }
  if (to - from === 2) {
    const second = slots[from + 1]!;
    join(pairs.pieceRoot, (first / 3) | 0, (second / 3) | 0);
    pairs.mate[first] = second;
    pairs.mate[second] = first;
    if (triangles[first] === triangles[second]) pairs.conflictCount++;
    return;
  }
  pairs.shared.push(to - from);
  for (let i = from; i < to; i++) {
    pairs.mate[slots[i]!] = SHARED;
    pairs.shared.push(slots[i]!);
  }
}

/** Representative of a triangle's piece (union-find with path halving). */
export function rootOf(root: Int32Array, t: number): number {
  let i = t;
  while (root[i] !== i) {
    root[i] = root[root[i]!]!;
    i = root[i]!;
  }
  return i;
}

/** Makes two triangles one piece; the lower number becomes the root. */
export function join(root: Int32Array, a: number, b: number): void {
  const ra = rootOf(root, a);
  const rb = rootOf(root, b);
  if (ra < rb) root[rb] = ra;
  else root[ra] = rb;
}
