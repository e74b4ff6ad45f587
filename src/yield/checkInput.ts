import { bad, good } from '../problem';
import type { Outcome } from '../problem';
import { INPUT_BOUNDS } from './rules';
import type { BoundedInput } from './rules';

export interface InputBounds {
  low: number;
  high: number;
  unit: string;
}

/** The number itself if it is finite and inside the bounds of its kind; else a problem that names the input. */
export const checkInput = (value: number, bounds: BoundedInput, input: string = bounds): Outcome<number> =>
  checkWithin(value, INPUT_BOUNDS[bounds], input);

/** The same by any bounds. */
export function checkWithin(
  value: number | undefined,
  { low, high, unit }: InputBounds,
  input: string,
): Outcome<number> {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return bad('INPUT_NOT_A_NUMBER', { input, value: String(value) });
  }
  return value >= low && value <= high
    ? good(value)
    : bad('INPUT_OUT_OF_BOUNDS', { input, value, low, high, unit });
}

/**
 * The first problem among named inputs, in their order. A missing one is refused too, unless it is among the `optional`, which have a
 * default.
 */
export function checkEach<Name extends string>(
  inputs: Partial<Record<Name, number | undefined>>,
  optional: Partial<Record<Name, number | undefined>>,
  check: (value: number | undefined, input: Name) => Outcome<unknown>,
): Outcome<true> {
  const given = Object.entries<number | undefined>(optional).filter(([, value]) => value !== undefined);
  for (const [input, value] of [...Object.entries<number | undefined>(inputs), ...given]) {
    const checked = check(value, input as Name);
    if (!checked.ok) return checked;
  }
  return good(true);
}
