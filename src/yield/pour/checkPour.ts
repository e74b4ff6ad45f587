import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { POUR_BOUNDS } from './bounds';
import type { PourInput } from './bounds';

type Inputs = Partial<Record<PourInput, number | undefined>>;

/**
 * Refuses the first input that is no number, no whole one where things are counted, or out of its bounds, by name. A missing one is refused too, unless it is
 * among the `optional`, which have a default.
 */
export function checkPour(inputs: Inputs, optional: Inputs = {}): Outcome<true> {
  for (const [input, value] of Object.entries(inputs)) {
    const checked = checkOne(input as PourInput, value as number);
    if (!checked.ok) return checked;
  }
  for (const [input, value] of Object.entries(optional)) {
    const checked = value === undefined ? good(0) : checkOne(input as PourInput, value);
    if (!checked.ok) return checked;
  }
  return good(true);
}

function checkOne(input: PourInput, value: number): Outcome<number> {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return bad('INPUT_NOT_A_NUMBER', { input, value: String(value) });
  }
  if (WHOLE.includes(input) && !Number.isInteger(value)) return bad('INPUT_NOT_WHOLE', { input, value });
  const { low, high, unit } = POUR_BOUNDS[input];
  return value >= low && value <= high
    ? good(value)
    : bad('INPUT_OUT_OF_BOUNDS', { input, value, low, high, unit });
}

/** Counts of things and hands. */
const WHOLE: readonly PourInput[] = ['straps', 'mixers', 'drops', 'vents', 'poured', 'filled'];
