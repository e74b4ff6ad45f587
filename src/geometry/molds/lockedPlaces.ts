import type { Field } from '../field/buildField';
import type { Vector } from '../measure/planeFrame';
import { placeIn, pointFromGrid, type SweptBody } from './sweptBody';
import { fractionAt } from './volumeWithin';

/** A place where the jacket would be held. */
export interface LockedPlace {
  /** Its middle, in the scan's axes. */
  atMm: Vector;
  volumeMm3: number;
  /** Sides of the box around it, along the scan's axes. */
  sizeMm: Vector;
}

/** A voxel filled by less than this belongs to the noise of the grid. Chosen here. */
const LEAST_SHARE = 0.1;

/** Places smaller than this do not hold a jacket. Chosen here: a fifth of a milliliter. */
const LEAST_MM3 = 200;

/** The connected places of the fill, largest first, `most` of them. */
export function lockedPlaces(
  field: Field,
  { sheared, swept }: SweptBody,
  skinMm: number,
  most: number,
): LockedPlace[] {
  const { nu, nv, nw, spacingMm, values, height } = sheared;
  const plane = nu * nv;
  const share = new Float32Array(nu * nv * nw);
  const isAbove = (i: number, j: number, k: number): boolean =>
    height === undefined || height.atZero + height.perU * i + height.perV * j + height.perW * k > -0.75;
  for (let k = 1; k < nw - 1; k++)
    for (let j = 1; j < nv - 1; j++)
      for (let i = 1, v = k * plane + j * nu + 1; i < nu - 1; i++, v++) {
        if (!(swept[v]! < values[v]!) || swept[v]! > skinMm + 1.5 * spacingMm || !isAbove(i, j, k)) continue;
        const filled = fractionAt(sheared, swept, v, skinMm) - fractionAt(sheared, values, v, skinMm);
        if (filled > LEAST_SHARE) share[v] = filled;
      }
  const places: LockedPlace[] = [];
  const around = [1, -1, nu, -nu, plane, -plane];
  for (let start = 0; start < share.length; start++) {
    if (share[start] === 0) continue;
    const stack = [start];
    const sum = newSum();
    let filled = share[start]!;
    share[start] = 0;
    add(sum, field, sheared, start, filled);
    while (stack.length > 0) {
      const v = stack.pop()!;
      for (const step of around) {
        const next = v + step;
        filled = share[next]!;
        if (filled === 0) continue;
        share[next] = 0;
        add(sum, field, sheared, next, filled);
        stack.push(next);
      }
    }
    const volumeMm3 = sum.weight * spacingMm ** 3;
    if (volumeMm3 >= LEAST_MM3) places.push(placeOf(sum, volumeMm3, spacingMm));
  }
  return places.sort((a, b) => b.volumeMm3 - a.volumeMm3).slice(0, most);
}

interface Sum {
  weight: number;
  moment: number[];
  low: number[];
  high: number[];
}

const newSum = (): Sum => ({
  weight: 0,
  moment: [0, 0, 0],
  low: [Infinity, Infinity, Infinity],
  high: [-Infinity, -Infinity, -Infinity],
});

function add(sum: Sum, field: Field, sheared: SweptBody['sheared'], v: number, filled: number): void {
  const { nu, nv } = sheared;
  const point = pointFromGrid(
    field,
    placeIn(sheared, v % nu, Math.floor(v / nu) % nv, Math.floor(v / (nu * nv))),
  );
  sum.weight += filled;
  point.forEach((c, axis) => {
    sum.moment[axis]! += filled * c;
    sum.low[axis] = Math.min(sum.low[axis]!, c);
    sum.high[axis] = Math.max(sum.high[axis]!, c);
  });
}

function placeOf({ weight, moment, low, high }: Sum, volumeMm3: number, spacingMm: number): LockedPlace {
  const [x, y, z] = moment.map((m) => m / weight);
  const [a, b, c] = high.map((top, axis) => top - low[axis]! + spacingMm);
  return { atMm: [x!, y!, z!], volumeMm3, sizeMm: [a!, b!, c!] };
}
