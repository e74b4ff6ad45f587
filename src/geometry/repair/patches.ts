import type { TriangleMesh } from '../triangleMesh';
import { join, nextCorner, rootOf, type EdgePairs } from './edges';

/** Rounds of the search for signs; each round visits every patch, and nearly all is settled in the first two. */
const ROUNDS = 12;

/** One edge with three or more users: how often each patch runs along it one way, less the other way. */
interface SharedEdge {
  lengthMm: number;
  net: Map<number, number>;
}

/**
 * What patches that meet at edges of three or more users are to each other. A patch that cancels itself along such an edge only
 * touches there (two boxes with an edge in common) and stays a piece of its own. Patches that need each other to cancel become
 * one piece, turned over where that leaves less edge uncancelled, or as much but facing away from the middle: greedy. Changes `flip` and
 * `pairs.pieceRoot` in place.
 */
export function settlePatches(mesh: TriangleMesh, pairs: EdgePairs, flip: Uint8Array): void {
  if (pairs.shared.length === 0) return;
  const edges = sharedEdges(mesh, pairs, flip);
  const turned = settleSigns(edges, outwardFlux(mesh, pairs, flip, edges));
  if (turned.size > 0) {
    for (let t = 0; t < flip.length; t++) if (turned.has(rootOf(pairs.pieceRoot, t))) flip[t]! ^= 1;
  }
  for (const { net } of edges) {
    const needy = [...net].filter(([, times]) => times !== 0).map(([patch]) => patch);
    for (const patch of needy.slice(1)) join(pairs.pieceRoot, needy[0]!, patch);
  }
}

function sharedEdges(mesh: TriangleMesh, pairs: EdgePairs, flip: Uint8Array): SharedEdge[] {
  const { positions: p, triangles } = mesh;
  const edges: SharedEdge[] = [];
  for (let i = 0; i < pairs.shared.length; i += pairs.shared[i]! + 1) {
    const net = new Map<number, number>();
    let lengthMm = 0;
    for (let k = i + 1; k <= i + pairs.shared[i]!; k++) {
      const h = pairs.shared[k]!;
      const t = (h / 3) | 0;
      const [a, b] = [triangles[h]!, triangles[nextCorner(h)]!];
      const way = a < b === (flip[t] === 0) ? 1 : -1;
      const patch = rootOf(pairs.pieceRoot, t);
      net.set(patch, (net.get(patch) ?? 0) + way);
      lengthMm = Math.hypot(
        p[3 * a]! - p[3 * b]!,
        p[3 * a + 1]! - p[3 * b + 1]!,
        p[3 * a + 2]! - p[3 * b + 2]!,
      );
    }
    edges.push({ lengthMm, net });
  }
  return edges;
}

/** The patches to turn over so that as little length as possible stays uncancelled. */
function settleSigns(edges: readonly SharedEdge[], flux: ReadonlyMap<number, number>): Set<number> {
  const edgesOf = new Map<number, SharedEdge[]>();
  for (const edge of edges) {
    for (const [patch, times] of edge.net) {
      if (times === 0) continue;
      const list = edgesOf.get(patch);
      if (list === undefined) edgesOf.set(patch, [edge]);
      else list.push(edge);
    }
  }
  const turned = new Set<number>();
  const sign = (patch: number): number => (turned.has(patch) ? -1 : 1);
  const total = ({ net }: SharedEdge): number =>
    [...net].reduce((sum, [patch, times]) => sum + sign(patch) * times, 0);
  for (let round = 0, changed = true; changed && round < ROUNDS; round++) {
    changed = false;
    for (const [patch, own] of edgesOf) {
      let gain = 0;
      let slack = 0;
      for (const edge of own) {
        const now = total(edge);
        slack += 1e-9 * edge.lengthMm;
        gain += edge.lengthMm * (Math.abs(now) - Math.abs(now - 2 * sign(patch) * edge.net.get(patch)!));
      }
      const facesIn = sign(patch) * (flux.get(patch) ?? 0) < 0;
      if (gain < -slack || (gain <= slack && !facesIn)) continue;
      if (!turned.delete(patch)) turned.add(patch);
      changed = true;
    }
  }
  return turned;
}

/** How much each patch that needs another faces away from the middle of them all (positive) or toward it. */
function outwardFlux(
  { positions: p, triangles }: TriangleMesh,
  pairs: EdgePairs,
  flip: Uint8Array,
  edges: readonly SharedEdge[],
): Map<number, number> {
  const flux = new Map<number, number>();
  for (const { net } of edges) for (const [patch, times] of net) if (times !== 0) flux.set(patch, 0);
  const members: number[] = [];
  const middle = [0, 0, 0];
  for (let t = 0; t < flip.length; t++) {
    if (!flux.has(rootOf(pairs.pieceRoot, t))) continue;
    members.push(t);
    for (let k = 0; k < 3; k++) middle[k]! += p[3 * triangles[3 * t]! + k]!;
  }
  for (const t of members) {
    const [a, b, c] = [3 * triangles[3 * t]!, 3 * triangles[3 * t + 1]!, 3 * triangles[3 * t + 2]!];
    const at = (v: number): [number, number, number] =>
      [0, 1, 2].map((k) => p[v + k]! - middle[k]! / members.length) as [number, number, number];
    const [u, v, w] = [at(a), at(b), at(c)];
    const sixfold =
      u[0] * (v[1] * w[2] - v[2] * w[1]) +
      u[1] * (v[2] * w[0] - v[0] * w[2]) +
      u[2] * (v[0] * w[1] - v[1] * w[0]);
    const patch = rootOf(pairs.pieceRoot, t);
    flux.set(patch, flux.get(patch)! + (flip[t] === 1 ? -sixfold : sixfold));
  }
  return flux;
}
