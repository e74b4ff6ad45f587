import type { Outcome } from '../../problem';
import { checkEach, checkWithin } from '../checkInput';
import { VOLUME_BOUNDS } from './rules';
import type { VolumeInput } from './rules';

type Inputs = Partial<Record<VolumeInput, number | undefined>>;

/** Refuses the first input that is no number or out of its bounds, by name; see `checkEach`. */
export const checkVolume = (inputs: Inputs, optional: Inputs = {}): Outcome<true> =>
  checkEach(inputs, optional, (value, input) => checkWithin(value, VOLUME_BOUNDS[input], input));

/** Two standard uncertainties either way: meant to hold the truth 95 times of 100. */
export const COVER = 2;
