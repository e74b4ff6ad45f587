import type { Outcome } from '../../problem';
import { checkEach, checkWithin } from '../checkInput';
import { LEARN_BOUNDS } from './rules';
import type { LearnInput } from './rules';

type Inputs = Partial<Record<LearnInput, number | undefined>>;

/** Refuses the first input that is no number or out of its bounds, by name; see `checkEach`. */
export const checkLearn = (inputs: Inputs, optional: Inputs = {}): Outcome<true> =>
  checkEach(inputs, optional, (value, input) => checkWithin(value, LEARN_BOUNDS[input], input));
