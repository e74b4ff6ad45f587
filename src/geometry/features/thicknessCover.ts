import type { Balls } from './thicknessRoom';
import type { SurfaceSamples } from './thicknessSamples';

/*
 * The thickness of a sample is the diameter of the largest ball that covers it (Hildebrand and Ruegsegger 1997, Journal of Microscopy 185:67): the
 * balls hand it out, largest first, to the samples they touch. A tree of boxes around the samples that have none yet finds these.
 */

/** Balls in hand: which covers a sample; -1: none. */
export function coverSamples(
  samples: SurfaceSamples,
  balls: Balls,
  toleranceMm: number,
  onStep: () => void,
): Int32Array {
  const coveredBy = new Int32Array(samples.count).fill(-1);
  const order = Array.from(balls.radiusMm.keys()).filter((s) => balls.radiusMm[s]! > 0);
  order.sort((a, b) => balls.radiusMm[b]! - balls.radiusMm[a]! || a - b);
  const tree = sampleTree(samples, onStep);
  for (let n = 0; n < order.length; n++) {
    if (n % 64 === 0) onStep();
    handOut(tree, samples, balls, order[n]!, toleranceMm, coveredBy);
    if (tree.left[0] === 0) break;
  }
  return coveredBy;
}

/** A touch beyond the ball counts up to the tolerance, but not beyond this share of its radius. Chosen here. */
const MOST_BEYOND = 0.3;

/** The ball lies where the sample looks to: cosine. On the far side of a thin gap it does not. Chosen here. */
const LOOKS_TO = 0.5;

const LEAF = 8;

/** A binary tree: node n has the children 2n + 1 and 2n + 2; all leaves are on the last level. */
interface SampleTree {
  /** Sample numbers, leaf by leaf. */
  order: Int32Array;
  /** Where the samples of a node start in `order`; they end where the next node of its level starts. */
  from: Int32Array;
  to: Int32Array;
  /** Least and largest x, y, z of a node. */
  boxes: Float32Array;
  /** Samples of a node that are not covered yet. */
  left: Int32Array;
  firstLeaf: number;
}

function sampleTree({ count, at }: SurfaceSamples, onStep: () => void): SampleTree {
  const levels = Math.max(0, Math.ceil(Math.log2(Math.max(1, count) / LEAF)));
  const nodes = 2 ** (levels + 1) - 1;
  const tree: SampleTree = {
    order: Int32Array.from({ length: count }, (_, s) => s),
    from: new Int32Array(nodes),
    to: new Int32Array(nodes),
    boxes: new Float32Array(6 * nodes),
    left: new Int32Array(nodes),
    firstLeaf: 2 ** levels - 1,
  };
  tree.to[0] = count;
  for (let node = 0; node < nodes; node++) {
    onStep();
    const [from, to] = [tree.from[node]!, tree.to[node]!];
    tree.left[node] = to - from;
    const axis = boxAround(tree, at, node);
    if (node >= tree.firstLeaf) continue;
    const part = tree.order.subarray(from, to);
    part.sort((a, b) => at[3 * a + axis]! - at[3 * b + axis]! || a - b);
    const middle = (from + to) >> 1;
    tree.from[2 * node + 1] = from;
    tree.to[2 * node + 1] = tree.from[2 * node + 2] = middle;
    tree.to[2 * node + 2] = to;
  }
  return tree;
}

/** Sets the box of a node; returns the axis along which it is longest. */
function boxAround({ order, from, to, boxes }: SampleTree, at: Float32Array, node: number): number {
  let axis = 0;
  let longest = -1;
  for (let a = 0; a < 3; a++) {
    let low = Infinity;
    let high = -Infinity;
    for (let m = from[node]!; m < to[node]!; m++) {
      const x = at[3 * order[m]! + a]!;
      if (x < low) low = x;
      if (x > high) high = x;
    }
    boxes[6 * node + a] = low;
    boxes[6 * node + 3 + a] = high;
    if (high - low > longest) {
      longest = high - low;
      axis = a;
    }
  }
  return axis;
}

const STACK = new Int32Array(64);

/** Gives ball `b` to the samples it touches that have none. */
function handOut(
  tree: SampleTree,
  { at, inward }: SurfaceSamples,
  balls: Balls,
  b: number,
  toleranceMm: number,
  coveredBy: Int32Array,
): void {
  const { order, from, to, boxes, left, firstLeaf } = tree;
  const radius = balls.radiusMm[b]!;
  const reach = radius + Math.min(toleranceMm, MOST_BEYOND * radius);
  const [x, y, z] = [balls.at[3 * b]!, balls.at[3 * b + 1]!, balls.at[3 * b + 2]!];
  STACK[0] = 0;
  for (let top = 1; top > 0;) {
    const node = STACK[--top]!;
    if (left[node] === 0) continue;
    const n = 6 * node;
    const ex = Math.max(boxes[n]! - x, 0, x - boxes[n + 3]!);
    const ey = Math.max(boxes[n + 1]! - y, 0, y - boxes[n + 4]!);
    const ez = Math.max(boxes[n + 2]! - z, 0, z - boxes[n + 5]!);
    if (ex * ex + ey * ey + ez * ez > reach * reach) continue;
    if (node < firstLeaf) {
      STACK[top++] = 2 * node + 1;
      STACK[top++] = 2 * node + 2;
      continue;
    }
    let given = 0;
    for (let m = from[node]!; m < to[node]!; m++) {
      const s = order[m]!;
      if (coveredBy[s]! >= 0) continue;
      const dx = x - at[3 * s]!;
      const dy = y - at[3 * s + 1]!;
      const dz = z - at[3 * s + 2]!;
      const away = Math.sqrt(dx * dx + dy * dy + dz * dz);
      if (away > reach) continue;
      if (dx * inward[3 * s]! + dy * inward[3 * s + 1]! + dz * inward[3 * s + 2]! < LOOKS_TO * away) continue;
      coveredBy[s] = b;
      given++;
    }
    if (given > 0)
      for (let up = node; ; up = (up - 1) >> 1) {
        left[up]! -= given;
        if (up === 0) break;
      }
  }
}
