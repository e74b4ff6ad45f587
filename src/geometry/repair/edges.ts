import type { TriangleMesh } from '../triangleMesh';

/** Marks in `mate`: the edge belongs to this triangle alone, or to three or more. */
export const OPEN = -1;
export const SHARED = -2;

/**
 * Half-edge h = 3t + e runs from corner e of triangle t to the next corner.
 * `mate[h]` is the other half-edge where exactly two triangles meet, else OPEN or SHARED.
 * `shared` lists the edges with three or more users: a count, then that many half-edges, and so on.
 * `pieceRoot` joins the triangles that hang together by edges, however many meet there.
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
  const { start, slots } = listByLowVertex(mesh);
  const pairs: EdgePairs = {
    mate: new Int32Array(triangles.length).fill(OPEN),
    shared: [],
    openCount: 0,
    conflictCount: 0,
    pieceRoot: Int32Array.from({ length: triangles.length / 3 }, (_, t) => t),
  };
  for (let v = 0; v + 1 < start.length; v++) pairList(pairs, triangles, slots, start[v]!, start[v + 1]!);
  return pairs;
}

function listByLowVertex(mesh: TriangleMesh): { start: Int32Array; slots: Int32Array } {
  const { triangles } = mesh;
  const start = new Int32Array(mesh.positions.length / 3 + 1);
  for (let h = 0; h < triangles.length; h++) start[lowVertex(triangles, h) + 1]!++;
  for (let v = 1; v < start.length; v++) start[v]! += start[v - 1]!;
  const fill = start.slice();
  const slots = new Int32Array(triangles.length);
  for (let h = 0; h < triangles.length; h++) slots[fill[lowVertex(triangles, h)]!++] = h;
  return { start, slots };
}

function lowVertex(triangles: Int32Array, h: number): number {
  return Math.min(triangles[h]!, triangles[nextCorner(h)]!);
}

function highVertex(triangles: Int32Array, h: number): number {
  return Math.max(triangles[h]!, triangles[nextCorner(h)]!);
}

/** Half-edges slots[from..to) share their lower vertex; equal high vertices make an edge. */
function pairList(
  pairs: EdgePairs,
  triangles: Int32Array,
  slots: Int32Array,
  from: number,
  to: number,
): void {
  if (to - from > 24)
    slots.subarray(from, to).sort((a, b) => highVertex(triangles, a) - highVertex(triangles, b) || a - b);
  else insertionSort(triangles, slots, from, to);
  for (let i = from; i < to;) {
    const high = highVertex(triangles, slots[i]!);
    let end = i + 1;
    while (end < to && highVertex(triangles, slots[end]!) === high) end++;
    noteEdge(pairs, triangles, slots, i, end);
    i = end;
  }
}

function insertionSort(triangles: Int32Array, slots: Int32Array, from: number, to: number): void {
  for (let i = from + 1; i < to; i++) {
    const h = slots[i]!;
    const high = highVertex(triangles, h);
    let j = i - 1;
    while (j >= from && highVertex(triangles, slots[j]!) > high) {
      slots[j + 1] = slots[j]!;
      j--;
    }
    slots[j + 1] = h;
  }
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
  for (let i = from + 1; i < to; i++) join(pairs.pieceRoot, (first / 3) | 0, (slots[i]! / 3) | 0);
  if (to - from === 2) {
    const second = slots[from + 1]!;
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

function join(root: Int32Array, a: number, b: number): void {
  const ra = rootOf(root, a);
  const rb = rootOf(root, b);
  if (ra < rb) root[rb] = ra;
  else root[ra] = rb;
}
