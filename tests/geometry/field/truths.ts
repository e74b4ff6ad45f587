import { divergenceVolume, type TriangleMesh } from '../../../src/geometry';
import { scaled } from '../../support/meshTools';
import {
  revolve,
  revolvedVolume,
  sphere,
  sphereOutline,
  torusOutline,
  type Vec3,
} from '../../support/shapes';

/** Solids and what their levels hold, by formulas that know nothing of grids. */

const cross = (u: Vec3, w: Vec3): Vec3 => [
  u[1] * w[2] - u[2] * w[1],
  u[2] * w[0] - u[0] * w[2],
  u[0] * w[1] - u[1] * w[0],
];
const dot = (u: Vec3, w: Vec3): number => u[0] * w[0] + u[1] * w[1] + u[2] * w[2];
const minus = (u: Vec3, w: Vec3): Vec3 => [u[0] - w[0], u[1] - w[1], u[2] - w[2]];

/**
 * Steiner's formula for a convex polyhedron grown by L >= 0: V + A L + M L^2 + 4/3 pi L^3, with M half the sum of edge length
 * times the angle between the normals of its two faces (Schneider, Convex Bodies, 4.2, from memory).
 */
export function steinerOf(mesh: TriangleMesh): (levelMm: number) => number {
  const corners = cornersOf(mesh);
  const normals = corners.map(([a, b, c]) => cross(minus(b, a), minus(c, a)));
  const volume = corners.reduce((sum, [a], f) => sum + dot(a, normals[f]!) / 6, 0);
  const area = normals.reduce((sum, n) => sum + Math.hypot(...n) / 2, 0);
  const firstFace = new Map<string, number>();
  let bend = 0;
  corners.forEach((face, f) => {
    for (let k = 0; k < 3; k++) {
      const [i, j] = [mesh.triangles[3 * f + k]!, mesh.triangles[3 * f + ((k + 1) % 3)]!];
      const edge = i < j ? `${i} ${j}` : `${j} ${i}`;
      const other = firstFace.get(edge);
      firstFace.set(edge, f);
      if (other === undefined) continue;
      const [m, n] = [normals[other]!, normals[f]!];
      const length = Math.hypot(...minus(face[k]!, face[(k + 1) % 3]!));
      bend += (length * Math.atan2(Math.hypot(...cross(m, n)), dot(m, n))) / 2;
    }
  });
  return (levelMm) => volume + area * levelMm + bend * levelMm ** 2 + (4 / 3) * Math.PI * levelMm ** 3;
}

function cornersOf({ positions: p, triangles }: TriangleMesh): [Vec3, Vec3, Vec3][] {
  const point = (v: number): Vec3 => [p[3 * v]!, p[3 * v + 1]!, p[3 * v + 2]!];
  return Array.from({ length: triangles.length / 3 }, (_, t) => [
    point(triangles[3 * t]!),
    point(triangles[3 * t + 1]!),
    point(triangles[3 * t + 2]!),
  ]);
}

/** A convex polyhedron about a ball that touches all its faces shrinks to a smaller copy of itself. */
export function tangentialOf(mesh: TriangleMesh): (levelMm: number) => number {
  const [volume, [a, b, c]] = [divergenceVolume(mesh), cornersOf(mesh)[0]!];
  const normal = cross(minus(b, a), minus(c, a));
  const touchMm = dot(a, normal) / Math.hypot(...normal);
  return (levelMm) => (levelMm < 0 ? volume * (1 + levelMm / touchMm) ** 3 : steinerOf(mesh)(levelMm));
}

/** A box at any level: smaller inward, by Steiner's formula outward. */
export const boxTruth =
  ([a, b, c]: Vec3) =>
  (t: number): number =>
    t < 0
      ? Math.max(0, a + 2 * t) * Math.max(0, b + 2 * t) * Math.max(0, c + 2 * t)
      : a * b * c +
        2 * t * (a * b + b * c + c * a) +
        Math.PI * t * t * (a + b + c) +
        (4 / 3) * Math.PI * t ** 3;

export const ballMm3 = (radius: number): number => (4 / 3) * Math.PI * Math.max(0, radius) ** 3;

/** A faceted ball that holds exactly what the round one does, so that the facets cost the levels nothing of first order. */
export const fullBall = (radius: number, rings: number): TriangleMesh =>
  scaled(
    sphere(radius, rings),
    Math.cbrt(ballMm3(radius) / revolvedVolume(sphereOutline(radius, rings), 2 * rings)),
  );

export const torusMm3 = (ring: number, tube: number): number => 2 * Math.PI ** 2 * ring * tube ** 2;

/** A faceted torus whose tube circle is a polygon of the circle's area and whose ring holds exactly the round one's volume. */
export function fullTorus(ring: number, tube: number, sides: number, steps: number): TriangleMesh {
  const outline = torusOutline(ring, tube, steps);
  const grow = Math.sqrt(torusMm3(ring, tube) / revolvedVolume(outline, sides, true));
  return revolve(
    outline.map(([r, z]) => [ring + grow * (r - ring), grow * z] as const),
    sides,
    true,
  );
}

/** An L of two arms, `arm` wide and `long` long, as high as `high`. */
export function ell(long: number, arm: number, high: number): TriangleMesh {
  const outline = [
    [arm, arm],
    [arm, long],
    [0, long],
    [0, 0],
    [long, 0],
    [long, arm],
  ] as const;
  const positions = [0, high].flatMap((z) => outline.flatMap(([x, y]) => [x, y, z]));
  const triangles: number[] = [];
  // The corner at the inside of the L sees all of it.
  for (let k = 1; k < 5; k++) triangles.push(0, k + 1, k, 6, 6 + k, 7 + k);
  for (let k = 0; k < 6; k++) {
    const next = (k + 1) % 6;
    triangles.push(k, next, 6 + next, k, 6 + next, 6 + k);
  }
  return { positions: Float64Array.from(positions), triangles: Int32Array.from(triangles) };
}

/**
 * The same in closed form: plane figures grown by r hold A + P r + c r^2, with c = 5 pi/4 - 1 for five outer corners and an inner one
 * (its two strips share a square); shrunk A - P r + (5 - pi/4) r^2 (elementary geometry).
 */
export function ellTruth(long: number, arm: number, high: number): (t: number) => number {
  const area = 2 * long * arm - arm * arm;
  const around = 4 * long;
  return (t) => {
    if (t < 0) return (area + around * t + (5 - Math.PI / 4) * t * t) * (high + 2 * t);
    const c = (5 * Math.PI) / 4 - 1;
    return (
      high * (area + around * t + c * t * t) +
      2 * (area * t + (around * Math.PI * t * t) / 4 + (c * 2 * t ** 3) / 3)
    );
  };
}
