import type { OutlinePoint, Vec3 } from './shapes';

/** Figures of regular polygons and planes that tests of sections and shadows compare with (elementary geometry). */

/** Area of the regular polygon of `sides` corners at distance r. */
export const polygonArea = (r: number, sides: number): number =>
  (sides / 2) * Math.sin((2 * Math.PI) / sides) * r * r;

export const polygonPerimeter = (r: number, sides: number): number =>
  2 * sides * r * Math.sin(Math.PI / sides);

/** A cap of radius 30 and height 10 on a stem of radius 10 and height 40, for `revolve`. */
export const mushroom: readonly OutlinePoint[] = [
  [0, 0],
  [10, 0],
  [10, 40],
  [30, 40],
  [30, 50],
  [0, 50],
];

/** A vector turned by the unit quaternion of four numbers: v + 2 q x (q x v + w v) (as in any text on rotations). */
export function turnedVector(v: Vec3, quaternion: readonly [number, number, number, number]): Vec3 {
  const length = Math.hypot(...quaternion);
  const [w, x, y, z] = quaternion.map((q) => q / length) as [number, number, number, number];
  const inner: Vec3 = [
    y * v[2] - z * v[1] + w * v[0],
    z * v[0] - x * v[2] + w * v[1],
    x * v[1] - y * v[0] + w * v[2],
  ];
  return [
    v[0] + 2 * (y * inner[2] - z * inner[1]),
    v[1] + 2 * (z * inner[0] - x * inner[2]),
    v[2] + 2 * (x * inner[1] - y * inner[0]),
  ];
}
