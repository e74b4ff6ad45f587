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
