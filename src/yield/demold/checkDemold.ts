import type { Outcome } from '../../problem';
import { checkEach, checkWithin } from '../checkInput';
import { DEMOLD_BOUNDS } from './rules';
import type { DemoldInput } from './rules';

type Inputs = Partial<Record<DemoldInput, number | undefined>>;

/** Refuses the first input that is no number or out of its bounds, by name; see `checkEach`. */
export const checkDemold = (inputs: Inputs, optional: Inputs = {}): Outcome<true> =>
  checkEach(inputs, optional, (value, input: DemoldInput) => checkWithin(value, DEMOLD_BOUNDS[input], input));
