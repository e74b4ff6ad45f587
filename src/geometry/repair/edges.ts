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

/** Half-edges sorted at a time: large meshes are paired in runs of vertices, so that the lists never outgrow the mesh. */
const RUN_EDGES = 3_000_000;

/** Sorts the half-edges by their lower vertex (counting sort), then pairs within each short list. Linear time. */
export function pairEdges(mesh: TriangleMesh): EdgePairs {
  const { triangles } = mesh;
  const pieceRoot = new Int32Array(triangles.length / 3);
  for (let t = 0; t < pieceRoot.length; t++) pieceRoot[t] = t;
  const pairs: EdgePairs = {
    mate: new Int32Array(triangles.length).fill(OPEN),
    shared: [],
    openCount: 0,
    conflictCount: 0,
    pieceRoot,
  };
  const starts = startsByLowVertex(mesh);
  for (let v = 0; v + 1 < starts.length;) {
    const first = v;
    while (v + 1 < starts.length && (v === first || starts[v + 1]! - starts[first]! <= RUN_EDGES)) v++;
    const lists = listRun(triangles, starts, first, v);
    for (let u = first; u < v; u++)
      pairList(pairs, triangles, lists, starts[u]! - lists.offset, starts[u + 1]! - lists.offset);
  }
  return pairs;
}

/** Where the list of each lower vertex starts. */
function startsByLowVertex({ positions, triangles }: TriangleMesh): Int32Array {
  const starts = new Int32Array(positions.length / 3 + 1);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t]!;
    const b = triangles[t + 1]!;
    const c = triangles[t + 2]!;
    starts[(a < b ? a : b) + 1]!++;
    starts[(b < c ? b : c) + 1]!++;
    starts[(c < a ? c : a) + 1]!++;
  }
  for (let v = 1; v < starts.length; v++) starts[v]! += starts[v - 1]!;
  return starts;
}

/** The half-edges of a run of lower vertices, slots[starts[v] - offset ..], and beside each its higher vertex. */
interface EdgeLists {
  slots: Int32Array;
  highs: Int32Array;
  offset: number;
}

function listRun(triangles: Int32Array, starts: Int32Array, from: number, to: number): EdgeLists {
  const offset = starts[from]!;
  const lists: EdgeLists = {
    slots: new Int32Array(starts[to]! - offset),
    highs: new Int32Array(starts[to]! - offset),
    offset,
  };
  const fill = starts.slice(from, to);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t]!;
    const b = triangles[t + 1]!;
    const c = triangles[t + 2]!;
    put(lists, fill, from, t, a, b);
    put(lists, fill, from, t + 1, b, c);
    put(lists, fill, from, t + 2, c, a);
  }
  return lists;
}

function put(lists: EdgeLists, fill: Int32Array, from: number, h: number, a: number, b: number): void {
  const low = (a < b ? a : b) - from;
  if (low < 0 || low >= fill.length) return;
  const at = fill[low]!++ - lists.offset;
  lists.slots[at] = h;
  lists.highs[at] = a < b ? b : a;
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

/** Opens the edges along which two triangles run in the same direction. Changes the pairs in place. */
export function partConflicts({ triangles }: TriangleMesh, pairs: EdgePairs): void {
  for (let h = 0; h < triangles.length; h++) {
    const g = pairs.mate[h]!;
    if (g < h || triangles[g] !== triangles[h]) continue;
    pairs.mate[h] = OPEN;
    pairs.mate[g] = OPEN;
    pairs.openCount += 2;
  }
  pairs.conflictCount = 0;
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
