import { turnedExtents, type Bounds } from '../geometry';
import { bad, good, type Outcome } from '../problem';

/** How fine the field is; `normal` is assumed and said when nothing is given. */
export const ACCURACIES = ['fast', 'normal', 'fine'] as const;
export type Accuracy = (typeof ACCURACIES)[number];

/** Voxels spent on the grid around the grown body, which is turned. Chosen here: 1 mm on a piece of 250 mm is about normal; fine still fits a browser tab. */
const VOXELS: Record<Accuracy, number> = { fast: 2e6, normal: 1.4e7, fine: 1e8 };

/** So many times more voxels are spent at most because an offset is small or a wall thin. Chosen here. */
const MOST_TIMES: Record<Accuracy, number> = { fast: 1, normal: 4, fine: 1.3 };

/** More voxels than these are refused: about a gigabyte and a half. Chosen here. */
const MOST_VOXELS = 2.5e8;

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
  const sides = turnedExtents(wanted.bounds, false).map((mm) => mm + 2 * outwardMm);
  if (wanted.voxelMm !== undefined) return given(wanted.voxelMm, sides);
  const edgeFor = (voxels: number): number => edgeOf(sides, voxels);
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

function given(voxelMm: number, sides: readonly number[]): Outcome<VoxelChoice> {
  const voxels = voxelsIn(sides, voxelMm);
  const largestMm = Math.cbrt(sides.reduce((product, mm) => product * mm, 1) / FEWEST_VOXELS);
  if (voxelMm > largestMm) return bad('VOXEL_TOO_LARGE', { voxelMm, largestMm: 0.95 * largestMm });
  if (voxels <= MOST_VOXELS) return good({ voxelMm, because: 'given' });
  return bad('VOXEL_TOO_SMALL', { voxelMm, voxels, smallestMm: 1.05 * edgeOf(sides, MOST_VOXELS) });
}

/** Voxels all round that the grid has beside the box, on both sides together. */
const RIM_VOXELS = 12;

/** Voxels of the grid around a box of these sides. */
const voxelsIn = (sides: readonly number[], edgeMm: number): number =>
  sides.reduce((product, mm) => product * (mm / edgeMm + RIM_VOXELS), 1);

/** The edge at which the grid has so many voxels: halving between what is surely too large and too small. */
function edgeOf(sides: readonly number[], voxels: number): number {
  let [small, large] = [1e-9, Math.max(...sides, 1e-6)];
  for (let round = 0; round < 80; round++) {
    const middle = Math.sqrt(small * large);
    if (voxelsIn(sides, middle) > voxels) small = middle;
    else large = middle;
  }
  return large;
}

const twoDigits = (mm: number): number => Number(mm.toPrecision(2));
