import { bad, good } from '../problem';
import type { Outcome } from '../problem';
import { INPUT_BOUNDS } from './rules';
import type { BoundedInput } from './rules';

/** The number itself if it is finite and inside the bounds of its kind; else a problem that names the input. */
export function checkInput(value: number, bounds: BoundedInput, input: string = bounds): Outcome<number> {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return bad('INPUT_NOT_A_NUMBER', { input, value: String(value) });
  }
  const { low, high, unit } = INPUT_BOUNDS[bounds];
  return value >= low && value <= high
    ? good(value)
    : bad('INPUT_OUT_OF_BOUNDS', { input, value, low, high, unit });
}
