import { gramsText } from '../units';

/** Digits of a figure that count, where no scale says otherwise: as in every sentence. */
const DIGITS = 4;
/** No figure is shown finer than this. */
const FINEST = 1e-3;

export interface RangeText {
  value: string;
  low: string;
  high: string;
}

/**
 * A value and its range to the same last place: that of the scale where there is a step, else of the value's fourth digit. The
 * ends are rounded outward, so that no rounding leaves the value outside of its range.
 */
export function rangeText(
  { value, low, high }: { value: number; low: number; high: number },
  { step = lastPlace(value) }: { step?: number } = {},
): RangeText {
  const text = (steps: number): string => gramsText(steps * step, step);
  return {
    value: text(Math.round(value / step)),
    low: text(Math.floor(unlessWhole(low / step))),
    high: text(Math.ceil(unlessWhole(high / step))),
  };
}

function lastPlace(value: number): number {
  const rounded = Math.abs(Number(value.toPrecision(DIGITS)));
  return rounded === 0 ? 1 : Math.max(FINEST, Number(`1e${Math.floor(Math.log10(rounded)) - DIGITS + 1}`));
}

/** A multiple of the step that floating point has put a hair beside it stays where it is. */
const unlessWhole = (steps: number): number =>
  Math.abs(steps - Math.round(steps)) <= 1e-9 * Math.abs(steps) ? Math.round(steps) : steps;
