import { dualGrid, FREE } from './dual-grid.mjs';
import { settle } from './settle.mjs';

/**
 * Triangle mesh of {field < 0 and z > 0}, mm, outward, flat at z = 0.
 * Returns {points: xyz in a row, triangles: three indices each, baseTriangles: how many of the last triangles
 * are the flat base, isBase: per vertex, whether it lies in the base or on its rim}.
 */
export function meshField({ field, hMm, reach }) {
  const mesh = dualGrid({ field, hMm, reach });
  const offSurfaceMm = settle({ mesh, field, hMm });
  if (!(offSurfaceMm < 1e-4)) {
    throw new Error(`meshField: expected vertices within 1e-4 mm of the surface, got ${offSurfaceMm}`);
  }
  const onBase = (quad) => quad.every((v) => mesh.kinds[v] !== FREE);
  const base = mesh.quads.filter(onBase).flatMap((quad) => split(quad, mesh.points));
  const side = mesh.quads.filter((quad) => !onBase(quad)).flatMap((quad) => split(quad, mesh.points));
  return {
    points: mesh.points,
    triangles: [...side, ...base],
    baseTriangles: base.length / 3,
    isBase: mesh.kinds.map((kind) => kind !== FREE),
  };
}

// Two triangles along the diagonal that leaves the better worst triangle.
function split([a, b, c, d], points) {
  const alongAC = Math.min(quality(points, a, b, c), quality(points, a, c, d));
  const alongBD = Math.min(quality(points, a, b, d), quality(points, b, c, d));
  return alongAC >= alongBD ? [a, b, c, a, c, d] : [a, b, d, b, c, d];
}

// Height over longest side: 0 for a sliver, 0.87 for equal sides.
function quality(points, a, b, c) {
  const [u, v, w] = [side(points, a, b), side(points, b, c), side(points, c, a)];
  const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  return Math.sqrt(square(n)) / Math.max(square(u), square(v), square(w));
}

function side(points, a, b) {
  return [0, 1, 2].map((n) => points[3 * b + n] - points[3 * a + n]);
}

function square(v) {
  return v[0] * v[0] + v[1] * v[1] + v[2] * v[2];
}
