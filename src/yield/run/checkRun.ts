import { bad } from '../../problem';
import type { Outcome } from '../../problem';
import { checkEach, checkWithin } from '../checkInput';
import { RUN_BOUNDS } from './rules';
import type { RunInput } from './rules';

type Inputs = Partial<Record<RunInput, number | undefined>>;

/** Refuses the first input that is no number, no whole one where things are counted, or out of its bounds, by name. */
export const checkRun = (inputs: Inputs, optional: Inputs = {}): Outcome<true> =>
  checkEach(inputs, optional, (value, input): Outcome<unknown> => {
    if (WHOLE.includes(input) && Number.isFinite(value) && !Number.isInteger(value))
      return bad('INPUT_NOT_WHOLE', { input, value: value! });
    return checkWithin(value, RUN_BOUNDS[input], input);
  });

const WHOLE: readonly RunInput[] = ['castings', 'molds', 'moldLife', 'moldUsed'];
