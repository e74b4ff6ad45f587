import { boundsOf, type TriangleMesh } from '../triangleMesh';

type Point = readonly [number, number, number];

/**
 * Six times the signed volume of the tetrahedron from `origin` over triangle t, summed over a closed surface, is six times
 * its volume (divergence theorem). The origin must be near the surface: far away, digits cancel.
 */
export function signedSixfold(mesh: TriangleMesh, t: number, origin: Point): number {
  const { positions: p, triangles } = mesh;
  const a = 3 * triangles[3 * t]!,
    b = 3 * triangles[3 * t + 1]!,
    c = 3 * triangles[3 * t + 2]!;
  const ax = p[a]! - origin[0],
    ay = p[a + 1]! - origin[1],
    az = p[a + 2]! - origin[2];
  const bx = p[b]! - origin[0],
    by = p[b + 1]! - origin[1],
    bz = p[b + 2]! - origin[2];
  const cx = p[c]! - origin[0],
    cy = p[c + 1]! - origin[1],
    cz = p[c + 2]! - origin[2];
  return ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
}

/** The centre of the mesh's bounds: a good local origin. */
export function localOrigin(mesh: TriangleMesh): Point {
  const { min, max } = boundsOf(mesh);
  return [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2];
}

/** Volume inside a closed, outward mesh, in the cube of its unit. Meaningless (but finite) for an open one. */
export function divergenceVolume(mesh: TriangleMesh): number {
  const origin = localOrigin(mesh);
  let sum = 0;
  for (let t = 0; t < mesh.triangles.length / 3; t++) sum += signedSixfold(mesh, t, origin);
  return sum / 6;
}
