import type { SizingField } from '../ticket/sizingFields';

/** What a field of the ways in without a scan holds, where its label is not beside it. */
export const SIZING_FIELD_WORDS: Readonly<Record<SizingField, string>> = {
  fillWater: 'The water in the mold',
  fillTemp: 'The temperature of that water',
  sunkBefore: 'The level without the sculpt',
  sunkAfter: 'The level with the sculpt',
  sunkStep: 'The smallest step of the vessel',
  overWater: 'The water that ran over',
  overTemp: 'The temperature of the water that ran over',
};
