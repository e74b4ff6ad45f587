import { bad } from '../../problem';
import type { Outcome } from '../../problem';
import { checkEach, checkWithin } from '../checkInput';
import { POUR_BOUNDS } from './bounds';
import type { PourInput } from './bounds';

type Inputs = Partial<Record<PourInput, number | undefined>>;

/** Refuses the first input that is no number, no whole one where things are counted, or out of its bounds, by name; see `checkEach`. */
export const checkPour = (inputs: Inputs, optional: Inputs = {}): Outcome<true> =>
  checkEach(inputs, optional, checkOne);

function checkOne(value: number | undefined, input: PourInput): Outcome<number> {
  if (WHOLE.includes(input) && Number.isFinite(value) && !Number.isInteger(value))
    return bad('INPUT_NOT_WHOLE', { input, value: value! });
  return checkWithin(value, POUR_BOUNDS[input], input);
}

/** Counts of things and hands. */
const WHOLE: readonly PourInput[] = ['straps', 'mixers', 'drops', 'vents', 'ventsPlaced', 'poured', 'filled'];
