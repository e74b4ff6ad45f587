import type { TriangleMesh } from '../triangleMesh';
import { nextCorner, OPEN, type EdgePairs } from './edges';

/*
 * Algebraic closure. A triangle list is a 2-chain. The directed edges that its triangles leave uncancelled are its
 * boundary, and a boundary is always a 1-cycle: at every vertex as many come in as go out. So they split into closed
 * loops, and a cone over each loop gives a chain without boundary, whose winding number is a whole number everywhere
 * off the surface (Munkres, Elements of Algebraic Topology, chapter 1, from memory).
 * One step thus fills holes and open bases, and undoes what flipped, doubled and loose facets would add.
 */

/** A closed walk along uncancelled edges, in the direction in which its cap must run. */
export interface Loop {
  vertices: number[];
  /** A triangle at the loop, to tell which piece it belongs to. */
  triangle: number;
}

/** The loops a mesh leaves open, once its marked triangles are turned over. */
export function findLoops(mesh: TriangleMesh, pairs: EdgePairs, flip: Uint8Array): Loop[] {
  const edges = uncancelledEdges(mesh, pairs, flip);
  const outgoing = new Map<number, number[]>();
  for (let e = edges.from.length - 1; e >= 0; e--) {
    const list = outgoing.get(edges.from[e]!);
    if (list === undefined) outgoing.set(edges.from[e]!, [e]);
    else list.push(e);
  }
  const loops: Loop[] = [];
  for (let e = 0; e < edges.from.length; e++) {
    while ((outgoing.get(edges.from[e]!)?.length ?? 0) > 0) peel(edges, outgoing, edges.from[e]!, loops);
  }
  return loops;
}

interface DirectedEdges {
  from: number[];
  to: number[];
  triangle: number[];
}

/** The reverse of every uncancelled edge: the direction the cap must take to cancel it. */
function uncancelledEdges(mesh: TriangleMesh, pairs: EdgePairs, flip: Uint8Array): DirectedEdges {
  const { triangles } = mesh;
  const edges: DirectedEdges = { from: [], to: [], triangle: [] };
  const startOf = (h: number): number =>
    flip[(h / 3) | 0] === 1 ? triangles[nextCorner(h)]! : triangles[h]!;
  const endOf = (h: number): number => (flip[(h / 3) | 0] === 1 ? triangles[h]! : triangles[nextCorner(h)]!);
  const addReverse = (h: number): void => {
    edges.from.push(endOf(h));
    edges.to.push(startOf(h));
    edges.triangle.push((h / 3) | 0);
  };
  const anyPairOff = pairs.conflictCount > 0;
  for (let h = 0; h < triangles.length; h++) {
    const g = pairs.mate[h]!;
    if (g === OPEN || (anyPairOff && g > h && startOf(h) === startOf(g))) addReverse(h);
    if (anyPairOff && g > h && startOf(h) === startOf(g)) addReverse(g);
  }
  for (let i = 0; i < pairs.shared.length; i += pairs.shared[i]! + 1) {
    const group = pairs.shared.slice(i + 1, i + 1 + pairs.shared[i]!);
    const low = Math.min(startOf(group[0]!), endOf(group[0]!));
    const up = group.filter((h) => startOf(h) === low);
    const down = group.filter((h) => startOf(h) !== low);
    const extra = up.length > down.length ? up.slice(down.length) : down.slice(up.length);
    extra.forEach(addReverse);
  }
  return edges;
}

/** Walks from a vertex until the walk has nowhere to go; whenever it meets itself, the loop is cut off and kept. */
function peel(
  edges: DirectedEdges,
  outgoing: Map<number, number[]>,
  startVertex: number,
  loops: Loop[],
): void {
  const path = [startVertex];
  const pathTriangles: number[] = [];
  const position = new Map<number, number>([[startVertex, 0]]);
  for (;;) {
    const e = outgoing.get(path[path.length - 1]!)?.pop();
    if (e === undefined) return;
    const to = edges.to[e]!;
    pathTriangles.push(edges.triangle[e]!);
    const met = position.get(to);
    if (met === undefined) {
      position.set(to, path.length);
      path.push(to);
      continue;
    }
    const vertices = path.splice(met + 1);
    for (const v of vertices) position.delete(v);
    const loopTriangles = pathTriangles.splice(met);
    loops.push({ vertices: [to, ...vertices], triangle: loopTriangles[0]! });
    if (path.length === 1 && (outgoing.get(to)?.length ?? 0) === 0) return;
  }
}

/** The mesh with a cone over every loop. Loops of two edges cancel themselves; of three, one triangle is the cap. */
export interface Capped {
  mesh: TriangleMesh;
  /** Triangles from here on are caps. */
  surfaceCount: number;
  /** Loop number of each cap triangle. */
  loopOf: Int32Array;
}

export function coneLoops(mesh: TriangleMesh, loops: readonly Loop[]): Capped {
  const surfaceCount = mesh.triangles.length / 3;
  const points: number[] = [];
  const caps: number[] = [];
  const loopOf: number[] = [];
  loops.forEach((loop, number) => {
    const n = loop.vertices.length;
    if (n < 3) return;
    if (n === 3) {
      caps.push(loop.vertices[0]!, loop.vertices[1]!, loop.vertices[2]!);
      loopOf.push(number);
      return;
    }
    const apex = (mesh.positions.length + points.length) / 3;
    points.push(...loopCentroid(mesh.positions, loop.vertices));
    for (let i = 0; i < n; i++) {
      caps.push(loop.vertices[i]!, loop.vertices[(i + 1) % n]!, apex);
      loopOf.push(number);
    }
  });
  if (caps.length === 0) return { mesh, surfaceCount, loopOf: new Int32Array(0) };
  const positions = new Float64Array(mesh.positions.length + points.length);
  positions.set(mesh.positions);
  positions.set(points, mesh.positions.length);
  const triangles = new Int32Array(mesh.triangles.length + caps.length);
  triangles.set(mesh.triangles);
  triangles.set(caps, mesh.triangles.length);
  return { mesh: { positions, triangles }, surfaceCount, loopOf: Int32Array.from(loopOf) };
}

/** Centroid of the outline as a wire: each edge counts by its length, so uneven spacing does not pull it. */
export function loopCentroid(p: Float64Array, vertices: readonly number[]): [number, number, number] {
  let x = 0,
    y = 0,
    z = 0,
    total = 0;
  for (let i = 0; i < vertices.length; i++) {
    const a = 3 * vertices[i]!,
      b = 3 * vertices[(i + 1) % vertices.length]!;
    const length = Math.hypot(p[a]! - p[b]!, p[a + 1]! - p[b + 1]!, p[a + 2]! - p[b + 2]!);
    x += (length * (p[a]! + p[b]!)) / 2;
    y += (length * (p[a + 1]! + p[b + 1]!)) / 2;
    z += (length * (p[a + 2]! + p[b + 2]!)) / 2;
    total += length;
  }
  if (total === 0) return [p[3 * vertices[0]!]!, p[3 * vertices[0]! + 1]!, p[3 * vertices[0]! + 2]!];
  return [x / total, y / total, z / total];
}
