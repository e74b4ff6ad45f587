import { oneTwoFive } from './oneTwoFive';
import type { StepBorders } from './paintMaterial';

/** The thickest few are left to the last step; of the thinnest none, since those are looked for. Chosen here. */
const TOP = 0.98;

/** From this spread on, steps that grow tell thin from thinner; below it they are equal. Chosen here. */
const WIDE = 5;

/** More than so many values are not sorted: a share of them tells as much. Chosen here. */
const MOST_SORTED = 20_000;

/**
 * Five round numbers between which the six steps lie, the highest below the thickest places. Over a wide spread they are 1, 2 or 5 times powers of ten; over a
 * narrow one multiples of such a number. None where no value is known.
 */
export function stepBorders(values: Float32Array): StepBorders | undefined {
  const low = values.reduce((least, value) => (value > 0 && value < least ? value : least), Infinity);
  if (low === Infinity) return undefined;
  const every = Math.ceil(values.length / MOST_SORTED);
  const some = values.filter((value, v) => v % every === 0 && value > 0).sort();
  const high = Math.max(low, some[Math.floor(TOP * some.length)] ?? low);
  return high >= WIDE * low || low === high ? growing(high) : equal(low, high);
}

/** The next round number below, or the same a touch further. */
const below = (limit: number): number => oneTwoFive(0.999 * limit);

function growing(high: number): StepBorders {
  const e = below(high);
  const d = below(e);
  const c = below(d);
  const b = below(c);
  return [below(b), b, c, d, e];
}

/** At most five multiples lie between low and high; the others lead up to them, as far as there are any above 0. */
function equal(low: number, high: number): StepBorders {
  let step = oneTwoFive((high - low) / 5);
  while (inside(step, low, high) > 5) step = oneTwoFive(2.6 * step);
  const last = Math.ceil(high / step) - 1;
  if (last < 5) return growing(high);
  const at = (back: number): number => Number(((last - back) * step).toPrecision(9));
  return [at(4), at(3), at(2), at(1), at(0)];
}

const inside = (step: number, low: number, high: number): number =>
  Math.ceil(high / step) - 1 - Math.floor(low / step);
