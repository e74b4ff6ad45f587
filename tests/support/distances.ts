import type { LevelField } from '../../src/geometry/solids/levelField';
import type { Vec3 } from './shapes';

/**
 * Exact signed distances of solids, negative inside, and what their levels measure in closed form (elementary geometry;
 * for the box Steiner's formula for the solid at a distance from a convex one).
 */
export interface KnownField extends LevelField {
  /** Of everything nearer than the level. */
  volumeMm3: (levelMm: number) => number;
  areaMm2: (levelMm: number) => number;
}

/** About the middle `at`. */
export const sphereField = (radius: number, at: Vec3 = [0, 0, 0]): KnownField => ({
  distanceAtMm: (x, y, z) => Math.hypot(x - at[0], y - at[1], z - at[2]) - radius,
  bounds: boundsAt(at, [radius, radius, radius]),
  volumeMm3: (t) => (4 / 3) * Math.PI * (radius + t) ** 3,
  areaMm2: (t) => 4 * Math.PI * (radius + t) ** 2,
});

/** Lying: its axis is z. Volume and area by Pappus. */
export const torusField = (ring: number, tube: number, at: Vec3 = [0, 0, 0]): KnownField => ({
  distanceAtMm: (x, y, z) => Math.hypot(Math.hypot(x - at[0], y - at[1]) - ring, z - at[2]) - tube,
  bounds: boundsAt(at, [ring + tube, ring + tube, tube]),
  volumeMm3: (t) => 2 * Math.PI ** 2 * ring * (tube + t) ** 2,
  areaMm2: (t) => 4 * Math.PI ** 2 * ring * (tube + t),
});

/** A box of these sides; outside its levels are rounded, inside they are smaller boxes. */
export function boxField([a, b, c]: Vec3, at: Vec3 = [0, 0, 0]): KnownField {
  return {
    distanceAtMm: (x, y, z) => {
      const over = [Math.abs(x - at[0]) - a / 2, Math.abs(y - at[1]) - b / 2, Math.abs(z - at[2]) - c / 2];
      return Math.hypot(...over.map((d) => Math.max(d, 0))) + Math.min(Math.max(...over), 0);
    },
    bounds: boundsAt(at, [a / 2, b / 2, c / 2]),
    volumeMm3: (t) =>
      t < 0
        ? (a + 2 * t) * (b + 2 * t) * (c + 2 * t)
        : a * b * c +
          2 * t * (a * b + b * c + c * a) +
          Math.PI * t * t * (a + b + c) +
          (4 / 3) * Math.PI * t ** 3,
    areaMm2: (t) => 2 * (a * b + b * c + c * a) + 2 * Math.PI * t * (a + b + c) + 4 * Math.PI * t * t,
  };
}

const boundsAt = (at: Vec3, half: Vec3): LevelField['bounds'] => ({
  min: [at[0] - half[0], at[1] - half[1], at[2] - half[2]],
  max: [at[0] + half[0], at[1] + half[1], at[2] + half[2]],
});
