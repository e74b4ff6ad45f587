import type { Grid } from '../field/grid';
import { shiftPlane, type Sheared } from '../molds/sheared';

/**
 * Values laid along a pull, back at the points of the grid they were sheared from: the shift of every plane the other way. In the grid the
 * board is level, whatever the pull.
 */
export function gridAgain(sheared: Sheared, values: Float32Array, grid: Grid): Float32Array {
  const { nu, nv, nw, axes, slopeU, slopeV, originMm, spacingMm, topMm } = sheared;
  const counts = [grid.nx, grid.ny, grid.nz];
  const strides = [1, grid.nx, grid.nx * grid.ny];
  const [su, sv, sw] = axes.map((axis) => strides[axis]!) as [number, number, number];
  const [countU, countV] = [counts[axes[0]]!, counts[axes[1]]!];
  const origin = [grid.ox, grid.oy, grid.oz];
  const [firstU, firstV] = [0, 1].map((n) => (originMm[axes[n]!]! - origin[axes[n]!]!) / spacingMm) as [
    number,
    number,
  ];
  const again = new Float32Array(grid.nx * grid.ny * grid.nz);
  const between = new Float32Array(nv * countU);
  const plane = new Float32Array(countU * countV);
  const source = { values, su: 1, sv: nu, nu, nv };
  for (let k = 0; k < nw; k++) {
    const shiftU = straightened(-firstU - k * slopeU);
    const shiftV = straightened(-firstV - k * slopeV);
    shiftPlane(source, k * nu * nv, { shiftU, shiftV, far: topMm }, between, countU, countV, plane);
    for (let j = 0, n = 0; j < countV; j++)
      for (let i = 0, at = k * sw + j * sv; i < countU; i++, n++, at += su) again[at] = plane[n]!;
  }
  return again;
}

/** A whole number of steps but for rounding is one: between points, values would be blended for nothing. */
const straightened = (shift: number): number =>
  Math.abs(shift - Math.round(shift)) < 1e-9 ? Math.round(shift) : shift;
