import { CHOICES, type FactName } from '../../checks';

/** How a fact is asked on the page. Numbers are fields of the ticket; the thickness and the day come from the mold and the clock. */
export type FactField =
  | { fact: FactName; label: string; kind: 'choice'; choices: readonly string[] }
  | { fact: FactName; label: string; kind: 'yesno' }
  | { fact: FactName; label: string; kind: 'day' };

const choice = (fact: keyof typeof CHOICES, label: string): FactField => ({
  fact,
  label,
  kind: 'choice',
  choices: CHOICES[fact],
});

/** In the order of the job. The cure is on the silicone's card. */
export const FACT_ROWS: readonly FactField[] = [
  choice('sculptSurface', 'Surface of the sculpt'),
  { fact: 'barrierCoat', label: 'Barrier coat on the sculpt', kind: 'yesno' },
  { fact: 'patchTested', label: 'A patch test has cured through', kind: 'yesno' },
  choice('gloves', 'Gloves'),
  { fact: 'siliconeOpenedOn', label: 'Silicone first opened on', kind: 'day' },
  { fact: 'moldMadeOn', label: 'Mold cast on', kind: 'day' },
  choice('release', 'Release'),
  choice('pigmentKind', 'Pigment in the foam'),
  { fact: 'willPaint', label: 'The casting will be painted', kind: 'yesno' },
  { fact: 'paintIsFlexible', label: 'The paint stays flexible', kind: 'yesno' },
];

/** Of one pour: the figures of the page tell the rest. */
export const POUR_FACT_ROWS: readonly FactField[] = [
  { fact: 'ratioReadBack', label: 'Grams and labels were read back aloud', kind: 'yesno' },
  { fact: 'foamOpenedOn', label: 'Foam first opened on', kind: 'day' },
  choice('mixingMethod', 'Mixed by'),
  choice('moldWater', 'Water in the mold since it was dry'),
  { fact: 'openingOpen', label: 'The opening stays open or its plug lets air out', kind: 'yesno' },
  { fact: 'plugHeld', label: 'Plug or lid is held by clamp, strap or weight', kind: 'yesno' },
  { fact: 'plugVented', label: 'Plug or lid lets air out', kind: 'yesno' },
  {
    fact: 'castingFireRated',
    label: 'A fire test report covers this foam where it will stand',
    kind: 'yesno',
  },
];
