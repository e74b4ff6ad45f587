import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { WARMTH_BOUNDS } from './rules';
import type { WarmthInput } from './rules';

type Inputs = Partial<Record<WarmthInput, number | undefined>>;

/**
 * Refuses the first input that is no number or out of its bounds, by name. A missing one is refused too, unless it is
 * among the `optional`, which have a default.
 */
export function checkWarmth(inputs: Inputs, optional: Inputs = {}): Outcome<true> {
  for (const [input, value] of Object.entries(inputs)) {
    const checked = checkOne(input as WarmthInput, value);
    if (!checked.ok) return checked;
  }
  for (const [input, value] of Object.entries(optional)) {
    const checked = value === undefined ? good(true as const) : checkOne(input as WarmthInput, value);
    if (!checked.ok) return checked;
  }
  return good(true);
}

const WHOLE: readonly WarmthInput[] = ['sides', 'rootCount'];

function checkOne(input: WarmthInput, value: number | undefined): Outcome<true> {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return bad('INPUT_NOT_A_NUMBER', { input, value: String(value) });
  }
  const { low, high, unit } = WARMTH_BOUNDS[input];
  const isWhole = !WHOLE.includes(input) || Number.isInteger(value);
  return value >= low && value <= high && isWhole
    ? good(true)
    : bad('INPUT_OUT_OF_BOUNDS', { input, value, low, high, unit });
}
