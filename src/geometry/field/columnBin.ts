import type { LevelsField } from './coarsePass';
import { BINS } from './levels';

/** The bin of a column, by a hash (constants from memory) of the block of two voxels' edge in which its feet lie. */
export function binOf({ grid, feet }: LevelsField, slot: number): number {
  const perBlock = 1 / (2 * grid.spacingMm);
  const i = Math.floor((feet[4 * slot]! - grid.ox) * perBlock);
  const j = Math.floor((feet[4 * slot + 1]! - grid.oy) * perBlock);
  const k = Math.floor((feet[4 * slot + 2]! - grid.oz) * perBlock);
  let hash = Math.imul(i, 0x9e3779b1) ^ Math.imul(j, 0x85ebca77) ^ Math.imul(k, 0xc2b2ae3d);
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
  return ((hash ^ (hash >>> 13)) >>> 0) % BINS;
}
