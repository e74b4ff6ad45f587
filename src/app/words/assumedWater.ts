import { numberText } from '../../units';
import { VOLUME_RULES } from '../../yield';
import { lowerFirst } from './fieldWords';

const { value, from } = VOLUME_RULES.waterTemp;

/** Beside a box for the temperature of water that nobody measured: what is taken, and the text that makes it the user's word. */
export const ASSUMED_WATER = {
  text: `${numberText(value)} C`,
  shown: `${numberText(value)} °C`,
  basis: lowerFirst(from),
};
