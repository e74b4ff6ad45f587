import { outlineOf } from '../molds/boardOutline';
import { distanceAt, growRegion } from '../plane/growRegion';
import { OUTSIDE_MM, type Lattice } from './boardLayers';

/** A flange on the board as `molds/flange.ts` has it: so far beyond the outline of the rubber there, and so high. */
export interface FlangeWish {
  skinMm: number;
  widthMm: number;
}

/** Beyond a flange the values have to be right this far, in steps. */
const AROUND_STEPS = 3;

/** The lattice with room for the flange, and at each of its places the distance along the board from the rubber; 0 in it. */
export function flangeRoom(
  lattice: Lattice,
  { skinMm, widthMm }: FlangeWish,
): { lattice: Lattice; beyondMm: Float32Array } {
  const room = padded(lattice, missingSteps(lattice, skinMm, widthMm));
  const { nx, ny, spacingMm, ox, oy, first, values } = room;
  const board = Float64Array.from(values.subarray((first + 1) * nx * ny, (first + 2) * nx * ny));
  const outline = outlineOf({ nx, ny, spacingMm, oxMm: ox, oyMm: oy, values: board }, skinMm);
  const region = growRegion(outline, { cellMm: 2 * spacingMm });
  const mostMm = widthMm + AROUND_STEPS * spacingMm;
  const beyondMm = Float32Array.from(board, (far, p) => {
    if (far <= skinMm) return 0;
    // A distance grows by a millimeter a millimeter at most; on the faces of the lattice and beyond it there is none.
    if (far < OUTSIDE_MM && far - skinMm > mostMm) return OUTSIDE_MM;
    return distanceAt(region, ox + (p % nx) * spacingMm, oy + Math.floor(p / nx) * spacingMm);
  });
  return { lattice: room, beyondMm };
}

/** Values in which all within `levelMm`, the flange of this height with it, is within `levelMm`. */
export function withFlange(
  lattice: Lattice,
  beyondMm: Float32Array,
  { widthMm, levelMm }: { widthMm: number; levelMm: number },
): Lattice {
  const { nx, ny, nz, spacingMm, heights, first } = lattice;
  const values = lattice.values.slice();
  const boardMm = heights[first]!;
  for (let k = first + 1; k + 1 < nz; k++) {
    const overMm = heights[k]! - boardMm - levelMm;
    if (overMm > AROUND_STEPS * spacingMm) break;
    for (let j = 1; j + 1 < ny; j++)
      for (let p = j * nx + 1, end = (j + 1) * nx - 1; p < end; p++) {
        const slab = Math.max(beyondMm[p]! - widthMm, overMm) + levelMm;
        const v = k * nx * ny + p;
        if (slab < values[v]!) values[v] = slab;
      }
  }
  return { ...lattice, values };
}

/** Steps by which the lattice ends too close to the rubber on the board. */
function missingSteps(
  { nx, ny, spacingMm, first, values }: Lattice,
  skinMm: number,
  widthMm: number,
): number {
  const from = (first + 1) * nx * ny;
  let free = Math.min(nx, ny);
  for (let p = 0; p < nx * ny; p++) {
    if (values[from + p]! > skinMm) continue;
    const [i, j] = [p % nx, Math.floor(p / nx)];
    free = Math.min(free, i, j, nx - 1 - i, ny - 1 - j);
  }
  return Math.max(0, Math.ceil(widthMm / spacingMm) + AROUND_STEPS - free);
}

function padded(lattice: Lattice, steps: number): Lattice {
  if (steps === 0) return lattice;
  const { nx, ny, nz, spacingMm } = lattice;
  const wide = nx + 2 * steps;
  const deep = ny + 2 * steps;
  const values = new Float32Array(wide * deep * nz).fill(OUTSIDE_MM);
  for (let k = lattice.first; k < nz; k++)
    for (let j = 0; j < ny; j++) {
      const row = lattice.values.subarray((k * ny + j) * nx, (k * ny + j + 1) * nx);
      values.set(row, (k * deep + j + steps) * wide + steps);
    }
  const [ox, oy] = [lattice.ox - steps * spacingMm, lattice.oy - steps * spacingMm];
  return { ...lattice, nx: wide, ny: deep, ox, oy, values };
}
