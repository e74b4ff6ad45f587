import type { Outcome } from '../../problem';
import { checkEach, checkWithin } from '../checkInput';
import { SILICONE_BOUNDS } from './rules';
import type { SiliconeInput } from './rules';

/** Base to catalyst by mass, base first: a scale weighs no volume. */
export interface SiliconeRatio {
  base: number;
  catalyst: number;
  by: 'mass';
}

type Inputs = Partial<Record<SiliconeInput, number | undefined>>;

/**
 * Refuses the first number that is not finite or outside the bounds of its kind, by name: INPUT_NOT_A_NUMBER,
 * INPUT_OUT_OF_BOUNDS. A missing one is refused too, unless it is among the `optional`, which have a default.
 */
export const checkSilicone = (inputs: Inputs, optional: Inputs = {}): Outcome<true> =>
  checkEach(inputs, optional, (value, input: SiliconeInput) =>
    checkWithin(value, SILICONE_BOUNDS[input], input),
  );

/** Both parts above 0 and no absurd figures. Errors: those of `checkSilicone`. */
export function checkRatioParts({ base, catalyst }: SiliconeRatio): Outcome<true> {
  const first = checkSilicone({ ratioPart: base });
  return first.ok ? checkSilicone({ ratioPart: catalyst }) : first;
}

export function isWithin(value: unknown, input: SiliconeInput): value is number {
  const { low, high } = SILICONE_BOUNDS[input];
  return typeof value === 'number' && value >= low && value <= high;
}
