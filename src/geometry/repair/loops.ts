import type { TriangleMesh } from '../triangleMesh';
import { rootOf, type EdgePairs } from './edges';
import { uncancelledEdges, type DirectedEdges } from './openEdges';
import { wedgeChooser, type WedgeChooser } from './wedges';

/** A closed walk along uncancelled edges, in the direction in which its cap must run. */
export interface Loop {
  vertices: number[];
  /** The triangle on the other side of each edge, from vertex i to the next. */
  triangles: number[];
  /** One of them, to tell which piece the loop belongs to. */
  triangle: number;
}

/**
 * The loops a mesh leaves open, once its marked triangles are turned over. Every piece is walked by itself: its own boundary
 * is a cycle, so no loop runs over from one piece to another that it touches at a corner.
 */
export function findLoops(mesh: TriangleMesh, pairs: EdgePairs, flip: Uint8Array): Loop[] {
  const edges = uncancelledEdges(mesh, pairs, flip);
  const vertexCount = mesh.positions.length / 3;
  const place = (vertex: number, e: number): number =>
    rootOf(pairs.pieceRoot, edges.triangle[e]!) * vertexCount + vertex;
  const outgoing = new Map<number, number[]>();
  for (let e = edges.from.length - 1; e >= 0; e--) {
    const list = outgoing.get(place(edges.from[e]!, e));
    if (list === undefined) outgoing.set(place(edges.from[e]!, e), [e]);
    else list.push(e);
  }
  const crowded = new Set<number>();
  for (const list of outgoing.values()) if (list.length > 1) crowded.add(edges.from[list[0]!]!);
  const walk: Walk = { edges, outgoing, place, choose: wedgeChooser(mesh, flip, edges, crowded) };
  const loops: Loop[] = [];
  for (let e = 0; e < edges.from.length; e++) {
    while (outgoing.get(place(edges.from[e]!, e))!.length > 0) peel(walk, e, loops);
  }
  return loops;
}

interface Walk {
  edges: DirectedEdges;
  outgoing: Map<number, number[]>;
  place: (vertex: number, e: number) => number;
  choose: WedgeChooser;
}

/**
 * Walks from the start of an edge until it is back there; whenever the walk meets itself, that loop is cut off and kept.
 * Where several edges leave a vertex, it takes the one across the same gap.
 */
function peel({ edges, outgoing, place, choose }: Walk, first: number, loops: Loop[]): void {
  const startVertex = edges.from[first]!;
  const path = [startVertex];
  const pathEdges: number[] = [];
  const position = new Map<number, number>([[startVertex, 0]]);
  for (;;) {
    const at = path[path.length - 1]!;
    const list = outgoing.get(place(at, first))!;
    if (list.length === 0) throw new Error(`peel: expected a way on at vertex ${at}, got none`);
    const e = list.length === 1 ? list.pop()! : choose(pathEdges[pathEdges.length - 1], list);
    const to = edges.to[e]!;
    pathEdges.push(e);
    const met = position.get(to);
    if (met === undefined) {
      position.set(to, path.length);
      path.push(to);
      continue;
    }
    const vertices = path.splice(met + 1);
    for (const v of vertices) position.delete(v);
    const triangles = pathEdges.splice(met).map((edge) => edges.triangle[edge]!);
    loops.push({ vertices: [to, ...vertices], triangles, triangle: triangles[0]! });
    if (path.length === 1) return;
  }
}
