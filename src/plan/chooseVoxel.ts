import { extentsOf, type Bounds } from '../geometry';
import { bad, good, type Outcome } from '../problem';

/** How fine the field is; `normal` is assumed and said when nothing is given. */
export const ACCURACIES = ['fast', 'normal', 'fine'] as const;
export type Accuracy = (typeof ACCURACIES)[number];

/** Voxels spent on the box around the grown body. Chosen here: 1 mm on a piece of 250 mm is about normal; fine still fits a browser tab. */
const VOXELS: Record<Accuracy, number> = { fast: 1.2e6, normal: 9e6, fine: 7e7 };

/** So many times more voxels are spent at most because an offset is small or a wall thin. Chosen here. */
const MOST_TIMES: Record<Accuracy, number> = { fast: 1, normal: 4, fine: 1.3 };

/** More voxels than these are refused: about a gigabyte and a half. Chosen here. */
const MOST_VOXELS = 4e8;

/** With fewer, some 22 a side, the range was not tried (tests/geometry/field/coverage.test.ts goes down to that). */
const FEWEST_VOXELS = 1e4;

/** A level this many voxels from the surface, and a wall this many voxels thick, are told apart well. Chosen here. */
const VOXELS_TO_LEVEL = 4;
const VOXELS_ACROSS_WALL = 2;

/** Why the voxel is what it is: the size of the piece, the offset nearest to its surface, its thinnest walls, or because it was given. */
export interface VoxelChoice {
  voxelMm: number;
  because: 'size' | 'offset' | 'wall' | 'given';
  /** Smaller ones were wanted, but this accuracy does not go so far. */
  isLimited?: true;
}

/**
 * The edge of the voxels for the levels asked for: from the size of the piece, finer where a level runs close to the surface or walls
 * are thin, as far as memory goes. Two digits. Errors: VOXEL_TOO_SMALL and VOXEL_TOO_LARGE for one that was given.
 */
export function chooseVoxel(wanted: {
  bounds: Bounds;
  offsetsMm: readonly number[];
  thinnestMm: number | undefined;
  accuracy: Accuracy;
  voxelMm?: number;
}): Outcome<VoxelChoice> {
  const outwardMm = Math.max(0, ...wanted.offsetsMm);
  const boxMm3 = extentsOf(wanted.bounds).reduce((product, mm) => product * (mm + 2 * outwardMm), 1);
  if (wanted.voxelMm !== undefined) return given(wanted.voxelMm, boxMm3);
  const edgeFor = (voxels: number): number => Math.cbrt(boxMm3 / voxels);
  const bySize = edgeFor(VOXELS[wanted.accuracy]);
  const finest = edgeFor(MOST_TIMES[wanted.accuracy] * VOXELS[wanted.accuracy]);
  const nearest = Math.min(...wanted.offsetsMm.map(Math.abs).filter((mm) => mm > 0)) / VOXELS_TO_LEVEL;
  const wall = (wanted.thinnestMm ?? Infinity) / VOXELS_ACROSS_WALL;
  const wish = Math.min(nearest, wall);
  const voxelMm = twoDigits(Math.max(finest, wish));
  if (voxelMm >= twoDigits(bySize)) return good({ voxelMm: twoDigits(bySize), because: 'size' });
  const because = wall < nearest ? 'wall' : 'offset';
  return good(wish < finest ? { voxelMm, because, isLimited: true } : { voxelMm, because });
}

function given(voxelMm: number, boxMm3: number): Outcome<VoxelChoice> {
  const voxels = boxMm3 / voxelMm ** 3;
  if (voxels < FEWEST_VOXELS)
    return bad('VOXEL_TOO_LARGE', { voxelMm, largestMm: 0.95 * Math.cbrt(boxMm3 / FEWEST_VOXELS) });
  if (voxels <= MOST_VOXELS) return good({ voxelMm, because: 'given' });
  return bad('VOXEL_TOO_SMALL', { voxelMm, voxels, smallestMm: 1.05 * Math.cbrt(boxMm3 / MOST_VOXELS) });
}

const twoDigits = (mm: number): number => Number(mm.toPrecision(2));
