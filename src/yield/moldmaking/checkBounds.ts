import type { Outcome } from '../../problem';
import { checkEach, checkWithin } from '../checkInput';
import { MOLDMAKING_BOUNDS } from './rules';
import type { MoldmakingInput } from './rules';

type Inputs = Partial<Record<MoldmakingInput, number | undefined>>;

/** Refuses the first input that is no number or out of its bounds, by name; see `checkEach`. */
export const checkBounds = (inputs: Inputs, optional: Inputs = {}): Outcome<true> =>
  checkEach(inputs, optional, (value, input: MoldmakingInput) =>
    checkWithin(value, MOLDMAKING_BOUNDS[input], input),
  );
