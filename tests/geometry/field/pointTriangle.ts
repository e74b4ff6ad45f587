import type { Vec3 } from '../../support/shapes';

type Mesh = { positions: ArrayLike<number>; triangles: ArrayLike<number> };

const minus = (u: Vec3, w: Vec3): Vec3 => [u[0] - w[0], u[1] - w[1], u[2] - w[2]];
const dot = (u: Vec3, w: Vec3): number => u[0] * w[0] + u[1] * w[1] + u[2] * w[2];
const cross = (u: Vec3, w: Vec3): Vec3 => [
  u[1] * w[2] - u[2] * w[1],
  u[2] * w[0] - u[0] * w[2],
  u[0] * w[1] - u[1] * w[0],
];

/** Distance of a point from triangle t of a mesh: the height over its plane within its three edge planes, else the nearest edge. */
export function distanceTo(mesh: Mesh, t: number, p: Vec3): number {
  const [a, b, c] = [0, 1, 2].map((k) => {
    const v = 3 * mesh.triangles[3 * t + k]!;
    return [mesh.positions[v]!, mesh.positions[v + 1]!, mesh.positions[v + 2]!] as const;
  }) as [Vec3, Vec3, Vec3];
  const n = cross(minus(b, a), minus(c, a));
  const isOver = (from: Vec3, to: Vec3): boolean => dot(cross(n, minus(to, from)), minus(p, from)) >= 0;
  if (Math.hypot(...n) > 0 && isOver(a, b) && isOver(b, c) && isOver(c, a))
    return Math.abs(dot(n, minus(p, a))) / Math.hypot(...n);
  return Math.min(fromEdge(a, b, p), fromEdge(b, c, p), fromEdge(c, a, p));
}

function fromEdge(from: Vec3, to: Vec3, p: Vec3): number {
  const along = minus(to, from);
  const share = Math.min(1, Math.max(0, dot(minus(p, from), along) / (dot(along, along) || 1)));
  return Math.hypot(...from.map((x, k) => x + share * along[k]! - p[k]!));
}

/** Over all triangles, one by one; boxes around them turn the far ones away. */
export function nearestDistance(mesh: Mesh, p: Vec3): number {
  let least = Infinity;
  for (let t = 0; t < mesh.triangles.length / 3; t++) {
    const [a, b, c] = [0, 1, 2].map((k) => 3 * mesh.triangles[3 * t + k]!) as [number, number, number];
    let away = 0;
    for (let k = 0; k < 3; k++) {
      const [x, y, z] = [mesh.positions[a + k]!, mesh.positions[b + k]!, mesh.positions[c + k]!];
      away += Math.max(0, Math.min(x, y, z) - p[k]!, p[k]! - Math.max(x, y, z)) ** 2;
    }
    if (away < least * least) least = Math.min(least, distanceTo(mesh, t, p));
  }
  return least;
}
