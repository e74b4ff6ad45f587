import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { MOLDMAKING_BOUNDS } from './rules';
import type { MoldmakingInput } from './rules';

type Inputs = Partial<Record<MoldmakingInput, number | undefined>>;

/**
 * Refuses the first input that is no number or out of its bounds, by name. A missing one is refused too, unless it is
 * among the `optional`, which have a default.
 */
export function checkBounds(inputs: Inputs, optional: Inputs = {}): Outcome<true> {
  for (const [input, value] of Object.entries(inputs)) {
    const checked = checkBound(input as MoldmakingInput, value as number);
    if (!checked.ok) return checked;
  }
  for (const [input, value] of Object.entries(optional)) {
    const checked = value === undefined ? good(0) : checkBound(input as MoldmakingInput, value);
    if (!checked.ok) return checked;
  }
  return good(true);
}

/** The number itself if it is finite and inside the bounds of that name. */
function checkBound(input: MoldmakingInput, value: number): Outcome<number> {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return bad('INPUT_NOT_A_NUMBER', { input, value: String(value) });
  }
  const { low, high, unit } = MOLDMAKING_BOUNDS[input];
  return value >= low && value <= high
    ? good(value)
    : bad('INPUT_OUT_OF_BOUNDS', { input, value, low, high, unit });
}
