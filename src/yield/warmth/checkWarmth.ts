import { bad } from '../../problem';
import type { Outcome } from '../../problem';
import { checkEach, checkWithin } from '../checkInput';
import { WARMTH_BOUNDS } from './rules';
import type { WarmthInput } from './rules';

type Inputs = Partial<Record<WarmthInput, number | undefined>>;

/** Refuses the first input that is no number or out of its bounds, by name; see `checkEach`. */
export const checkWarmth = (inputs: Inputs, optional: Inputs = {}): Outcome<true> =>
  checkEach(inputs, optional, checkOne);

const WHOLE: readonly WarmthInput[] = ['sides', 'rootCount'];

function checkOne(value: number | undefined, input: WarmthInput): Outcome<number> {
  const within = checkWithin(value, WARMTH_BOUNDS[input], input);
  if (!within.ok || !WHOLE.includes(input) || Number.isInteger(value)) return within;
  return bad('INPUT_OUT_OF_BOUNDS', { input, value: within.value, ...WARMTH_BOUNDS[input] });
}
