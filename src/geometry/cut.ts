import { ON_PLANE_SHARE } from './measure/planeFrame';
import { coneLoops } from './repair/closeCycle';
import { pairEdges } from './repair/edges';
import { findLoops } from './repair/loops';
import { orientPatches } from './repair/orient';
import type { TriangleMesh } from './triangleMesh';

/** A plane across one axis of the placed mesh; what lies beyond it on the kept side stays. `atMm` is the file's own zero. */
export interface CutPlane {
  axis: 0 | 1 | 2;
  atMm: number;
  keep: 'above' | 'below';
}

export interface CutMesh {
  mesh: TriangleMesh;
  /** 1 for vertices that lie on a cut: a rim of these alone is the cut itself. */
  onCut: Uint8Array;
}

/**
 * Cuts by every plane in turn. Triangles across a plane are split along it; a vertex on the plane counts as beyond. Every cut
 * but the last is closed flat before the next one, as two planes that meet leave no flat rim.
 */
export function cutMesh(mesh: TriangleMesh, planes: readonly CutPlane[]): CutMesh {
  let result: CutMesh = { mesh, onCut: new Uint8Array(mesh.positions.length / 3) };
  planes.forEach((plane, i) => {
    result = cutOnce(result, plane);
    if (i + 1 < planes.length) result = closeFlat(result, plane);
  });
  return result;
}

/** Adds the flat caps of the rims that lie on the plane as a whole; other rims stay open. */
function closeFlat({ mesh, onCut }: CutMesh, plane: CutPlane): CutMesh {
  const pairs = pairEdges(mesh);
  const { flip } = orientPatches(mesh, pairs);
  const heights = heightsOver(mesh.positions, plane);
  const isOnPlane = (v: number): boolean => heights[v] === 0;
  const flat = findLoops(mesh, pairs, flip).filter((loop) => loop.vertices.every(isOnPlane));
  const capped = coneLoops(mesh, flat).mesh;
  const flags = new Uint8Array(capped.positions.length / 3).fill(1);
  flags.set(onCut);
  return { mesh: capped, onCut: flags };
}

/** State of one cut: the growing vertices, and the vertex made on each edge so that neighbors share it. */
interface Cutting {
  positions: number[];
  firstNew: number;
  made: Map<number, number>;
  heights: Float64Array;
}

function cutOnce({ mesh, onCut }: CutMesh, plane: CutPlane): CutMesh {
  const p = mesh.positions;
  const count = p.length / 3;
  const heights = heightsOver(p, plane);
  const state: Cutting = { positions: [], firstNew: count, made: new Map(), heights };
  const kept: number[] = [];
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const [a, b, c] = [mesh.triangles[t]!, mesh.triangles[t + 1]!, mesh.triangles[t + 2]!];
    const inside = Number(heights[a]! > 0) + Number(heights[b]! > 0) + Number(heights[c]! > 0);
    if (inside === 3) kept.push(a, b, c);
    else if (inside > 0) splitTriangle(p, state, [a, b, c], plane, kept);
  }
  const positions = new Float64Array(p.length + state.positions.length);
  positions.set(p);
  positions.set(state.positions, p.length);
  const flags = new Uint8Array(positions.length / 3).fill(1);
  for (let v = 0; v < count; v++) flags[v] = onCut[v] === 1 || heights[v] === 0 ? 1 : 0;
  return { mesh: { positions, triangles: Int32Array.from(kept) }, onCut: flags };
}

/** Signed distance of every vertex from the plane, positive on the kept side; exactly 0 for those that lie on it. */
function heightsOver(p: Float64Array, plane: CutPlane): Float64Array {
  const sign = plane.keep === 'above' ? 1 : -1;
  const heights = new Float64Array(p.length / 3);
  let largest = 0;
  for (let v = 0; v < heights.length; v++) {
    heights[v] = sign * (p[3 * v + plane.axis]! - plane.atMm);
    largest = Math.max(largest, Math.abs(heights[v]!));
  }
  for (let v = 0; v < heights.length; v++)
    if (Math.abs(heights[v]!) <= ON_PLANE_SHARE * largest) heights[v] = 0;
  return heights;
}

/** Keeps the part of a triangle on the kept side: one triangle, or two. */
function splitTriangle(
  p: Float64Array,
  state: Cutting,
  corners: [number, number, number],
  plane: CutPlane,
  kept: number[],
): void {
  const ring: number[] = [];
  for (let e = 0; e < 3; e++) {
    const from = corners[e]!,
      to = corners[(e + 1) % 3]!;
    const fromIn = state.heights[from]! > 0;
    if (fromIn) ring.push(from);
    if (fromIn !== state.heights[to]! > 0)
      ring.push(onPlane(p, state, fromIn ? from : to, fromIn ? to : from, plane));
  }
  for (let i = 1; i + 1 < ring.length; i++) {
    if (ring[0] !== ring[i] && ring[i] !== ring[i + 1] && ring[0] !== ring[i + 1])
      kept.push(ring[0]!, ring[i]!, ring[i + 1]!);
  }
}

/** The vertex where the edge from `inner` (kept) to `outer` meets the plane. */
function onPlane(p: Float64Array, state: Cutting, inner: number, outer: number, plane: CutPlane): number {
  const { heights } = state;
  if (heights[outer] === 0) return outer;
  const [low, high] = inner < outer ? [inner, outer] : [outer, inner];
  const key = low * state.firstNew + high;
  const known = state.made.get(key);
  if (known !== undefined) return known;
  const share = heights[low]! / (heights[low]! - heights[high]!);
  const vertex = state.firstNew + state.positions.length / 3;
  for (let k = 0; k < 3; k++) {
    state.positions.push(
      k === plane.axis ? plane.atMm : p[3 * low + k]! + share * (p[3 * high + k]! - p[3 * low + k]!),
    );
  }
  state.made.set(key, vertex);
  return vertex;
}
