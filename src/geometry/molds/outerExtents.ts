import type { Field } from '../field/buildField';
import { placeIn, pointFromGrid, type SweptBody } from './sweptBody';

/** Sides of the finished mold along the scan's axes, mm: jacket all round, and the flange on the board where it reaches farther. */
export function outerExtents(
  field: Field,
  { sheared, swept }: SweptBody,
  { levelMm, skinMm, flangeMm }: { levelMm: number; skinMm: number; flangeMm: number },
): readonly [number, number, number] {
  const { nu, nv, nw, spacingMm, height } = sheared;
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  const take = (i: number, j: number, k: number, moreMm: number, axes: readonly number[]): void => {
    const point = pointFromGrid(field, placeIn(sheared, i, j, k));
    for (const axis of axes) {
      low[axis] = Math.min(low[axis]!, point[axis]! - moreMm);
      high[axis] = Math.max(high[axis]!, point[axis]! + moreMm);
    }
  };
  for (let k = 0; k < nw; k++)
    for (let j = 0; j < nv; j++)
      for (let i = 0, v = (k * nv + j) * nu; i < nu; i++, v++) {
        const over =
          height === undefined ? 1 : height.atZero + height.perU * i + height.perV * j + height.perW * k;
        if (over <= -0.75) continue;
        const far = levelMm - swept[v]!;
        // A point this far inside the level puts the level at least as far out.
        if (far >= 0 && far <= spacingMm) take(i, j, k, far, [0, 1, 2]);
        if (flangeMm > 0 && over < 0.75 && Math.abs(skinMm - swept[v]!) <= spacingMm)
          take(i, j, k, flangeMm + skinMm - swept[v]!, [0, 1]);
      }
  const boardMm = height === undefined ? undefined : boardOf(field);
  if (boardMm !== undefined) low[2] = boardMm;
  return [high[0]! - low[0]!, high[1]! - low[1]!, high[2]! - low[2]!];
}

const boardOf = (field: Field): number =>
  field.grid.oz + (field.grid.firstPlane - 0.5) * field.grid.spacingMm + field.surface.frame.originMm[2];
