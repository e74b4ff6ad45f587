import type { OpeningField } from '../ticket/openingFields';

/** What a field of opening and vents holds, where its label is not beside it. */
export const OPENING_FIELD_WORDS: Readonly<Record<OpeningField, string>> = {
  openWide: 'The diameter of the opening',
  openX: 'The x of the opening',
  openY: 'The y of the opening',
  openZ: 'The z of the opening',
  pourWithin: 'The time to pour',
  mixViscosity: 'The viscosity of the mix',
  riseTime: 'The rise time',
  ventWide: 'The diameter of the vents',
  thinUnder: 'The thickness that is thin',
  breakStretch: 'The elongation at break',
};
