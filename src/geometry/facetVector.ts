import type { TriangleMesh } from './triangleMesh';

/**
 * Across a facet (`t` = 3 * its number), out of the body: the cross product of the edges from its first corner, as long as
 * twice its area. The hottest loops write it out.
 */
export function facetVector({ positions: p, triangles }: TriangleMesh, t: number): [number, number, number] {
  const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
  const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!];
  const [vx, vy, vz] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!];
  return [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
}

/** Unit vector across a facet, out of the body; 0 0 0 for one without area. */
export function facetNormal(mesh: TriangleMesh, t: number): [number, number, number] {
  const [x, y, z] = facetVector(mesh, t);
  const length = Math.hypot(x, y, z);
  return length > 0 ? [x / length, y / length, z / length] : [0, 0, 0];
}
