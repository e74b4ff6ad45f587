import type { TriangleMesh } from '../triangleMesh';
import { nextCorner, type EdgePairs } from './edges';

export interface Orientation {
  /** 1 where the triangle must be turned over for its patch to agree with itself and with the vote. */
  flip: Uint8Array;
  /** Edges that still disagree: the patch there is one-sided like a Moebius strip. */
  oneSidedEdges: number;
  /** Area of the patches that hold such edges, in the mesh's unit squared. */
  oneSidedArea: number;
}

/**
 * Makes neighbors agree across edges with exactly two users, patch by patch, then lets the area of each patch vote:
 * the turning sense that most of it had in the file stays. What is out and what is in is settled later, by volume.
 */
export function orientPatches(mesh: TriangleMesh, pairs: EdgePairs): Orientation {
  const count = mesh.triangles.length / 3;
  const result: Orientation = {
    flip: new Uint8Array(count),
    oneSidedEdges: 0,
    oneSidedArea: 0,
  };
  if (pairs.conflictCount === 0) return result;
  const seen = new Uint8Array(count);
  const queue = new Int32Array(count);
  for (let t = 0; t < count; t++) if (seen[t] === 0) growPatch(mesh, pairs, { seen, queue, seed: t }, result);
  return result;
}

function growPatch(
  mesh: TriangleMesh,
  pairs: EdgePairs,
  walk: { seen: Uint8Array; queue: Int32Array; seed: number },
  result: Orientation,
): void {
  const { flip } = result;
  const { seen, queue } = walk;
  let end = 0;
  queue[end++] = walk.seed;
  seen[walk.seed] = 1;
  let conflicts = 0;
  const area = [0, 0];
  for (let at = 0; at < end; at++) {
    const t = queue[at]!;
    area[flip[t]!]! += triangleArea(mesh, t);
    for (let h = 3 * t; h < 3 * t + 3; h++) {
      const g = pairs.mate[h]!;
      if (g < 0) continue;
      const u = (g / 3) | 0;
      const wanted = flip[t]! ^ (agree(mesh.triangles, h, g) ? 0 : 1);
      if (seen[u] === 0) {
        seen[u] = 1;
        flip[u] = wanted;
        queue[end++] = u;
      } else if (flip[u] !== wanted) conflicts++;
    }
  }
  if (conflicts > 0) {
    result.oneSidedEdges += conflicts / 2;
    result.oneSidedArea += area[0]! + area[1]!;
  }
  if (area[1]! > area[0]!) for (let at = 0; at < end; at++) flip[queue[at]!]! ^= 1;
}

/** Do two half-edges on one edge run in opposite directions, as they must on a surface with one outside? */
const agree = (triangles: Int32Array, h: number, g: number): boolean =>
  triangles[h] === triangles[nextCorner(g)];

function triangleArea(mesh: TriangleMesh, t: number): number {
  const { positions: p, triangles } = mesh;
  const a = 3 * triangles[3 * t]!,
    b = 3 * triangles[3 * t + 1]!,
    c = 3 * triangles[3 * t + 2]!;
  const ux = p[b]! - p[a]!,
    uy = p[b + 1]! - p[a + 1]!,
    uz = p[b + 2]! - p[a + 2]!;
  const vx = p[c]! - p[a]!,
    vy = p[c + 1]! - p[a + 1]!,
    vz = p[c + 2]! - p[a + 2]!;
  const nx = uy * vz - uz * vy,
    ny = uz * vx - ux * vz,
    nz = ux * vy - uy * vx;
  return 0.5 * Math.sqrt(nx * nx + ny * ny + nz * nz);
}

/** Turns the marked triangles over, in place. */
export function applyFlips(mesh: TriangleMesh, flip: Uint8Array): void {
  const { triangles } = mesh;
  for (let t = 0; t < flip.length; t++) {
    if (flip[t] === 0) continue;
    const keep = triangles[3 * t + 1]!;
    triangles[3 * t + 1] = triangles[3 * t + 2]!;
    triangles[3 * t + 2] = keep;
  }
}
