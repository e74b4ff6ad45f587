import type { TriangleMesh } from '../triangleMesh';
import type { Loop } from './loops';

/*
 * Algebraic closure. A triangle list is a 2-chain. The directed edges that its triangles leave uncancelled are its
 * boundary, and a boundary is always a 1-cycle: at every vertex as many come in as go out. So they split into closed
 * loops, and a cone over each loop gives a chain without boundary, whose winding number is a whole number everywhere
 * off the surface (Munkres, Elements of Algebraic Topology, chapter 1, from memory).
 * One step thus fills holes and open bases, and undoes what flipped, doubled and loose facets would add.
 */

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
