import type { TriangleMesh } from '../triangleMesh';
import { cross, type Vector } from '../vector';
import type { DirectedEdges } from './openEdges';

/** Takes one edge out of the list of those that leave a vertex, given the edge that came in (none at the start of a walk). */
export type WedgeChooser = (incoming: number | undefined, leaving: number[]) => number;

/**
 * Where two gaps of a surface meet at one vertex, four open edges do. The loop of a gap must leave by the edge across the same
 * gap; the other would close two halves of different gaps over the surface between them. Seen against the mean normal of the
 * facets there, a gap lies to the left of its loop, so the right edge is the first one met turning clockwise from where the
 * loop came from.
 */
export function wedgeChooser(
  mesh: TriangleMesh,
  flip: Uint8Array,
  edges: DirectedEdges,
  crowded: ReadonlySet<number>,
): WedgeChooser {
  const normals = crowded.size === 0 ? new Map<number, Vector>() : meanNormals(mesh, flip, crowded);
  return (incoming, leaving) => {
    if (incoming === undefined) return leaving.pop()!;
    const vertex = edges.to[incoming]!;
    const frame = tangentFrame(normals.get(vertex) ?? [0, 0, 1]);
    const back = angleOf(mesh.positions, vertex, edges.from[incoming]!, frame);
    let best = 0;
    let smallest = Infinity;
    leaving.forEach((e, i) => {
      const turn = back - angleOf(mesh.positions, vertex, edges.to[e]!, frame);
      const clockwise = turn - 2 * Math.PI * Math.floor(turn / (2 * Math.PI)) || 2 * Math.PI;
      if (clockwise < smallest) {
        smallest = clockwise;
        best = i;
      }
    });
    return leaving.splice(best, 1)[0]!;
  };
}

/** Sum of the unit normals of the facets at each of the vertices, turned facets the other way. */
function meanNormals(
  mesh: TriangleMesh,
  flip: Uint8Array,
  vertices: ReadonlySet<number>,
): Map<number, Vector> {
  const { positions: p, triangles } = mesh;
  const normals = new Map<number, Vector>();
  for (let c = 0; c < triangles.length; c++) {
    if (!vertices.has(triangles[c]!)) continue;
    const t = c - (c % 3);
    const [i, j, k] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    const u: Vector = [p[j]! - p[i]!, p[j + 1]! - p[i + 1]!, p[j + 2]! - p[i + 2]!];
    const v: Vector = [p[k]! - p[i]!, p[k + 1]! - p[i + 1]!, p[k + 2]! - p[i + 2]!];
    const n = cross(u, v);
    const scale = (flip[t / 3] === 1 ? -1 : 1) / (Math.hypot(n[0], n[1], n[2]) || 1);
    const sum = normals.get(triangles[c]!) ?? [0, 0, 0];
    normals.set(triangles[c]!, [sum[0] + scale * n[0], sum[1] + scale * n[1], sum[2] + scale * n[2]]);
  }
  return normals;
}

/** Two directions across a normal, counter-clockwise as seen from its tip. */
function tangentFrame(n: Vector): { u: Vector; v: Vector } {
  const least =
    Math.abs(n[0]) <= Math.abs(n[1])
      ? Math.abs(n[0]) <= Math.abs(n[2])
        ? 0
        : 2
      : Math.abs(n[1]) <= Math.abs(n[2])
        ? 1
        : 2;
  const axis: Vector = [Number(least === 0), Number(least === 1), Number(least === 2)];
  const u = cross(axis, n);
  const v = cross(n, u);
  const length = Math.hypot(n[0], n[1], n[2]) || 1;
  return { u, v: [v[0] / length, v[1] / length, v[2] / length] };
}

function angleOf(p: Float64Array, from: number, to: number, { u, v }: { u: Vector; v: Vector }): number {
  const d: Vector = [
    p[3 * to]! - p[3 * from]!,
    p[3 * to + 1]! - p[3 * from + 1]!,
    p[3 * to + 2]! - p[3 * from + 2]!,
  ];
  return Math.atan2(d[0] * v[0] + d[1] * v[1] + d[2] * v[2], d[0] * u[0] + d[1] * u[1] + d[2] * u[2]);
}
