/** A tree of boxes around straight pieces (u0, v0, u1, v1 each), for the nearest point of them all. */
export interface PieceTree {
  /** In the order of the leaves. */
  pieces: Float64Array;
  /** Least u, least v, largest u, largest v of each node. A node's first child follows it. */
  boxes: Float64Array;
  /** The second child; 0 for a leaf. */
  second: Int32Array;
  /** Pieces of a leaf. */
  from: Int32Array;
  to: Int32Array;
}

/** Chosen here. */
const LEAF_PIECES = 4;

export function pieceTree(unordered: Float64Array): PieceTree {
  const count = unordered.length / 4;
  const order = Array.from({ length: count }, (_, i) => 4 * i);
  const nodes = Math.max(1, 2 * count);
  const tree: PieceTree = {
    pieces: new Float64Array(unordered.length),
    boxes: new Float64Array(4 * nodes),
    second: new Int32Array(nodes),
    from: new Int32Array(nodes),
    to: new Int32Array(nodes),
  };
  addNode(tree, unordered, order, 0, 0);
  return tree;
}

/** Adds the pieces as a node, split in the middle of its longer side; gives the number of the next node. */
function addNode(tree: PieceTree, all: Float64Array, order: number[], from: number, node: number): number {
  const box = boxAround(all, order);
  tree.boxes.set(box, 4 * node);
  if (order.length <= LEAF_PIECES) {
    order.forEach((i, k) => tree.pieces.set(all.subarray(i, i + 4), 4 * (from + k)));
    tree.from[node] = from;
    tree.to[node] = from + order.length;
    return node + 1;
  }
  const axis = box[2] - box[0] > box[3] - box[1] ? 0 : 1;
  order.sort((i, j) => all[i + axis]! + all[i + axis + 2]! - all[j + axis]! - all[j + axis + 2]! || i - j);
  const half = order.length >> 1;
  const second = addNode(tree, all, order.slice(0, half), from, node + 1);
  tree.second[node] = second;
  return addNode(tree, all, order.slice(half), from + half, second);
}

function boxAround(all: Float64Array, order: readonly number[]): [number, number, number, number] {
  const box: [number, number, number, number] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const i of order) {
    box[0] = Math.min(box[0], all[i]!, all[i + 2]!);
    box[1] = Math.min(box[1], all[i + 1]!, all[i + 3]!);
    box[2] = Math.max(box[2], all[i]!, all[i + 2]!);
    box[3] = Math.max(box[3], all[i + 1]!, all[i + 3]!);
  }
  return box;
}

/** Of the nearest point: its piece (-1 where there is none), and from it to the place asked about. */
export interface Nearest {
  piece: number;
  squared: number;
  du: number;
  dv: number;
}

/** Writes into `nearest`, so that a million calls make no garbage. Exact but for rounding. */
export function findNearest(tree: PieceTree, u: number, v: number, nearest: Nearest): void {
  nearest.piece = -1;
  nearest.squared = Infinity;
  descend(tree, 0, u, v, nearest);
}

function descend(tree: PieceTree, node: number, u: number, v: number, nearest: Nearest): void {
  const second = tree.second[node]!;
  if (second === 0) {
    for (let i = tree.from[node]!; i < tree.to[node]!; i++) take(tree.pieces, i, u, v, nearest);
    return;
  }
  const [first, toFirst, toSecond] = [node + 1, toBox(tree, node + 1, u, v), toBox(tree, second, u, v)];
  const [near, toNear] = toFirst <= toSecond ? [first, toFirst] : [second, toSecond];
  const [far, toFar] = toFirst <= toSecond ? [second, toSecond] : [first, toFirst];
  if (toNear < nearest.squared) descend(tree, near, u, v, nearest);
  if (toFar < nearest.squared) descend(tree, far, u, v, nearest);
}

/** Squared; 0 inside. */
function toBox({ boxes }: PieceTree, node: number, u: number, v: number): number {
  const du = Math.max(0, boxes[4 * node]! - u, u - boxes[4 * node + 2]!);
  const dv = Math.max(0, boxes[4 * node + 1]! - v, v - boxes[4 * node + 3]!);
  return du * du + dv * dv;
}

function take(pieces: Float64Array, piece: number, u: number, v: number, nearest: Nearest): void {
  const i = 4 * piece;
  const [u0, v0] = [pieces[i]!, pieces[i + 1]!];
  const [lu, lv] = [pieces[i + 2]! - u0, pieces[i + 3]! - v0];
  const along = ((u - u0) * lu + (v - v0) * lv) / (lu * lu + lv * lv);
  const share = along > 0 ? Math.min(1, along) : 0;
  const [du, dv] = [u - u0 - share * lu, v - v0 - share * lv];
  const squared = du * du + dv * dv;
  if (squared >= nearest.squared) return;
  nearest.piece = piece;
  nearest.squared = squared;
  nearest.du = du;
  nearest.dv = dv;
}
