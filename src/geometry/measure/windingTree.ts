import { boundsOf, type TriangleMesh } from '../triangleMesh';

/*
 * The generalized winding number of loose facets (Jacobson, Kavan and Sorkine-Hornung 2013, ACM Trans. Graph. 32:33): the sum of
 * their solid angles over 4 pi. It is 1 inside and 0 outside where they close, and in between near what is missing.
 * Far facets are taken together as one dipole (Barill, Dickson, Schmidt, Levin and Jacobson 2018, ACM Trans. Graph. 37:43, its
 * first term): the sum of their area vectors at their area centroid. Facets lie in order along a space-filling curve of their
 * middles; the tree halves that list.
 */

/** Facets of a leaf, taken one by one. Chosen here. */
const LEAF = 8;

/** A cluster is far when a point is this many of its radii away: off by up to 0.04 on balls and tori (measured). */
const FAR = 2;

/** Numbers of a node: centroid, area vector, radius. */
const ROW = 7;

export interface WindingTree {
  mesh: TriangleMesh;
  order: Int32Array;
  /** Node n has the children 2n + 1 and 2n + 2, each with half of its list. */
  rows: Float64Array;
}

export function windingTree(mesh: TriangleMesh): WindingTree {
  const count = mesh.triangles.length / 3;
  let leaves = 1;
  while (leaves * LEAF < count) leaves *= 2;
  const nodes = 2 * leaves - 1;
  const tree: WindingTree = { mesh, order: alongCurve(mesh), rows: new Float64Array(ROW * nodes) };
  sumNode(tree, { areas: new Float64Array(nodes), boxes: new Float64Array(6 * nodes) }, 0, 0, count);
  return tree;
}

/** Winding number about a point; `far` larger is slower and closer. */
export function windingAbout(tree: WindingTree, point: readonly [number, number, number], far = FAR): number {
  return nodeAngle(tree, point[0], point[1], point[2], far * far, 0, 0, tree.order.length) / (4 * Math.PI);
}

function nodeAngle(
  tree: WindingTree,
  px: number,
  py: number,
  pz: number,
  farSquare: number,
  node: number,
  from: number,
  to: number,
): number {
  const { rows } = tree;
  const row = ROW * node;
  const x = rows[row]! - px;
  const y = rows[row + 1]! - py;
  const z = rows[row + 2]! - pz;
  const square = x * x + y * y + z * z;
  const radius = rows[row + 6]!;
  if (square > farSquare * radius * radius) {
    const flux = x * rows[row + 3]! + y * rows[row + 4]! + z * rows[row + 5]!;
    return flux / (square * Math.sqrt(square));
  }
  if (to - from <= LEAF) return leafAngle(tree, px, py, pz, from, to);
  const middle = (from + to) >> 1;
  return (
    nodeAngle(tree, px, py, pz, farSquare, 2 * node + 1, from, middle) +
    nodeAngle(tree, px, py, pz, farSquare, 2 * node + 2, middle, to)
  );
}

/** Solid angles as in `windingNumber`, written out for speed. */
function leafAngle(
  { mesh: { positions: p, triangles }, order }: WindingTree,
  px: number,
  py: number,
  pz: number,
  from: number,
  to: number,
): number {
  let angle = 0;
  for (let i = from; i < to; i++) {
    const t = 3 * order[i]!;
    const a = 3 * triangles[t]!;
    const b = 3 * triangles[t + 1]!;
    const c = 3 * triangles[t + 2]!;
    const ax = p[a]! - px;
    const ay = p[a + 1]! - py;
    const az = p[a + 2]! - pz;
    const bx = p[b]! - px;
    const by = p[b + 1]! - py;
    const bz = p[b + 2]! - pz;
    const cx = p[c]! - px;
    const cy = p[c + 1]! - py;
    const cz = p[c + 2]! - pz;
    const la = Math.sqrt(ax * ax + ay * ay + az * az);
    const lb = Math.sqrt(bx * bx + by * by + bz * bz);
    const lc = Math.sqrt(cx * cx + cy * cy + cz * cz);
    const triple = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    const ab = ax * bx + ay * by + az * bz;
    const bc = bx * cx + by * cy + bz * cz;
    const ca = cx * ax + cy * ay + cz * az;
    angle += 2 * Math.atan2(triple, la * lb * lc + ab * lc + bc * la + ca * lb);
  }
  return angle;
}

/** What is needed of a node only while the tree is made. */
interface Making {
  areas: Float64Array;
  /** Least x, y, z and greatest. */
  boxes: Float64Array;
}

/** A node from its halves, a leaf from its facets. The radius reaches the far corner of the box: nothing lies nearer than told. */
function sumNode(tree: WindingTree, making: Making, node: number, from: number, to: number): void {
  const { rows } = tree;
  const { areas, boxes } = making;
  const row = ROW * node;
  boxes.fill(Infinity, 6 * node, 6 * node + 3);
  boxes.fill(-Infinity, 6 * node + 3, 6 * node + 6);
  if (to - from <= LEAF) for (let i = from; i < to; i++) addFacet(tree, making, node, tree.order[i]!);
  else {
    const middle = (from + to) >> 1;
    sumNode(tree, making, 2 * node + 1, from, middle);
    sumNode(tree, making, 2 * node + 2, middle, to);
    addChild(tree, making, node, 2 * node + 1);
    addChild(tree, making, node, 2 * node + 2);
  }
  let square = 0;
  for (let k = 0; k < 3; k++) {
    rows[row + k]! /= areas[node]!;
    const at = rows[row + k]!;
    square += Math.max(at - boxes[6 * node + k]!, boxes[6 * node + 3 + k]! - at) ** 2;
  }
  rows[row + 6] = Math.sqrt(square);
}

function addChild({ rows }: WindingTree, { areas, boxes }: Making, node: number, child: number): void {
  areas[node]! += areas[child]!;
  for (let k = 0; k < 3; k++) {
    rows[ROW * node + k]! += areas[child]! * rows[ROW * child + k]!;
    rows[ROW * node + 3 + k]! += rows[ROW * child + 3 + k]!;
    boxes[6 * node + k] = Math.min(boxes[6 * node + k]!, boxes[6 * child + k]!);
    boxes[6 * node + 3 + k] = Math.max(boxes[6 * node + 3 + k]!, boxes[6 * child + 3 + k]!);
  }
}

function addFacet({ mesh, rows }: WindingTree, { areas, boxes }: Making, node: number, t: number): void {
  const { positions: p, triangles } = mesh;
  const a = 3 * triangles[3 * t]!;
  const b = 3 * triangles[3 * t + 1]!;
  const c = 3 * triangles[3 * t + 2]!;
  const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!];
  const [vx, vy, vz] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!];
  const nx = (uy * vz - uz * vy) / 2;
  const ny = (uz * vx - ux * vz) / 2;
  const nz = (ux * vy - uy * vx) / 2;
  // A facet without area counts for next to nothing, but a leaf of such must have a middle.
  const area = Math.max(Math.sqrt(nx * nx + ny * ny + nz * nz), 1e-100);
  const row = ROW * node;
  rows[row + 3]! += nx;
  rows[row + 4]! += ny;
  rows[row + 5]! += nz;
  areas[node]! += area;
  for (let k = 0; k < 3; k++) {
    const [x, y, z] = [p[a + k]!, p[b + k]!, p[c + k]!];
    rows[row + k]! += (area * (x + y + z)) / 3;
    boxes[6 * node + k] = Math.min(boxes[6 * node + k]!, x, y, z);
    boxes[6 * node + 3 + k] = Math.max(boxes[6 * node + 3 + k]!, x, y, z);
  }
}

/** Facets by the place of their middles along Morton's curve, 10 bits an axis. */
function alongCurve(mesh: TriangleMesh): Int32Array {
  const { positions: p, triangles } = mesh;
  const { min, max } = boundsOf(mesh);
  const size = Math.max(max[0] - min[0], max[1] - min[1], max[2] - min[2]) || 1;
  const count = triangles.length / 3;
  // Key and number in one double: 30 bits and 23 are all that fit exactly. More facets leave the key fewer bits.
  const bits = Math.max(23, Math.ceil(Math.log2(count)));
  const room = 2 ** bits;
  const keys = new Float64Array(count);
  for (let t = 0; t < count; t++) {
    const a = 3 * triangles[3 * t]!;
    const b = 3 * triangles[3 * t + 1]!;
    const c = 3 * triangles[3 * t + 2]!;
    let key = 0;
    for (let k = 0; k < 3; k++) {
      const middle = (p[a + k]! + p[b + k]! + p[c + k]!) / 3;
      key |= spreadBits(Math.min(1023, Math.floor((1024 * (middle - min[k]!)) / size))) << k;
    }
    keys[t] = (key >>> (bits - 23)) * room + t;
  }
  keys.sort();
  return Int32Array.from(keys, (key) => key % room);
}

/** Puts two empty places between the ten bits of a number (the usual masks). */
function spreadBits(ten: number): number {
  let x = ten & 1023;
  x = (x | (x << 16)) & 0x030000ff;
  x = (x | (x << 8)) & 0x0300f00f;
  x = (x | (x << 4)) & 0x030c30c3;
  return (x | (x << 2)) & 0x09249249;
}
