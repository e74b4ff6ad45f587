import { between } from './lcg';
import type { Vec3 } from './shapes';

/** Draws from a generator of numbers in 0..1. */
export type Random = () => number;

/** A whole number of [low, high]. */
export const upTo = (random: Random, low: number, high: number): number =>
  Math.min(high, Math.floor(between(random, low, high + 1)));

/** A unit vector, spread evenly: z and the angle about it are even on a sphere (Archimedes). */
export function direction(random: Random): Vec3 {
  const z = between(random, -1, 1);
  const angle = between(random, 0, 2 * Math.PI);
  const r = Math.sqrt(1 - z * z);
  return [r * Math.cos(angle), r * Math.sin(angle), z];
}
