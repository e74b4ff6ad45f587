import type { Grid } from '../field/grid';

/** Values at the points of a lattice, x fastest; layers from `first` on count, each at its own height. */
export interface Lattice {
  nx: number;
  ny: number;
  nz: number;
  spacingMm: number;
  ox: number;
  oy: number;
  /** Height of every layer, mm. */
  heights: Float64Array;
  first: number;
  /** Layers from here on are as far from the one below as from the one above. */
  evenFrom: number;
  values: Float32Array;
}

/** Farther than any level. */
export const OUTSIDE_MM = 1e6;

/** A bend of the values across the layers over the board up to this share of a step is a curve, what is above it a crease. Chosen here. */
const MOST_BEND = 0.5;

/**
 * Distances at the points of a grid, made ready for surfaces. On a board the two layers below it become the values on the board itself and, at the same height,
 * nothing: a surface then ends flat on the board. Points on the faces of the lattice are outside, so that every surface closes. Changes `values`.
 */
export function latticeOn(grid: Grid, values: Float32Array): Lattice {
  const { nx, ny, nz, spacingMm, ox, oy, oz, firstPlane } = grid;
  const heights = Float64Array.from({ length: nz }, (_, k) => oz + k * spacingMm);
  const lattice: Lattice = { nx, ny, nz, spacingMm, ox, oy, heights, first: 0, evenFrom: 1, values };
  if (firstPlane > 0) {
    if (firstPlane < 2) throw new Error(`latticeOn: expected two layers below the board, got ${firstPlane}`);
    lattice.first = firstPlane - 2;
    lattice.evenFrom = firstPlane + 1;
    heights[firstPlane - 2] = heights[firstPlane - 1] = oz + (firstPlane - 0.5) * spacingMm;
    carryToBoard(lattice, firstPlane);
  }
  shutFaces(lattice);
  return lattice;
}

/** A parabola through the three layers above: below the board the body ends, and what is measured there bends away from it. */
function carryToBoard({ nx, ny, spacingMm, values }: Lattice, above: number): void {
  const plane = nx * ny;
  const most = MOST_BEND * spacingMm;
  for (let p = 0; p < plane; p++) {
    const at = above * plane + p;
    const [low, middle, high] = [values[at]!, values[at + plane]!, values[at + 2 * plane]!];
    const bend = low - 2 * middle + high;
    values[at - plane] = 1.5 * low - 0.5 * middle + (Math.abs(bend) < most ? 0.375 * bend : 0);
  }
}

function shutFaces({ nx, ny, nz, first, values }: Lattice): void {
  const plane = nx * ny;
  values.fill(OUTSIDE_MM, first * plane, (first + 1) * plane);
  values.fill(OUTSIDE_MM, (nz - 1) * plane, nz * plane);
  for (let k = first; k < nz; k++) {
    values.fill(OUTSIDE_MM, k * plane, k * plane + nx);
    values.fill(OUTSIDE_MM, (k + 1) * plane - nx, (k + 1) * plane);
    for (let j = 0; j < ny; j++)
      values[k * plane + j * nx] = values[k * plane + j * nx + nx - 1] = OUTSIDE_MM;
  }
}
