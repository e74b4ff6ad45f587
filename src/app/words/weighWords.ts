import type { WeighBox, WeighState } from '../../job/weighState';

/** What each box is of, and what to put on the scale. */
export const BOX_WORDS: Readonly<Record<WeighBox, { label: string; hint: string }>> = {
  mixed: { label: 'Mixed', hint: 'A and B together, with any color, as weighed' },
  residue: { label: 'Left in the cup', hint: 'with the stick, less the empty ones' },
  trim: { label: 'Trimmed off', hint: 'plug, vents and flash' },
  casting: { label: 'Casting', hint: 'out of the mold, trimmed' },
  room: { label: 'Room', hint: 'as you poured' },
  mold: { label: 'Mold', hint: 'as you poured' },
};

type Skin = Extract<NonNullable<WeighState['skin']>, number>;

/** What each score looks like: under its figure, and in a sentence. */
export const SKIN_WORDS: Readonly<Record<Skin, { short: string; long: string }>> = {
  1: { short: 'ragged, open cells', long: 'ragged, with open cells at the surface.' },
  2: { short: 'patchy', long: 'patchy: closed in places, open in others.' },
  3: { short: 'closed, pinholes', long: 'closed, with pinholes you would fill before paint.' },
  4: { short: 'closed, even', long: 'closed and even.' },
  5: { short: 'hard as cast', long: 'hard, as cast against the mold.' },
};

export const SKINS: readonly Skin[] = [1, 2, 3, 4, 5];

export const FILLED_OPTIONS = [
  { value: 'full', label: 'Filled' },
  { value: 'short', label: 'Short' },
  { value: 'not', label: 'Did not look' },
] as const;

export const OPENING_OPTIONS = [
  { value: 'plug', label: 'Plugged' },
  { value: 'open', label: 'Left open' },
  { value: 'not', label: 'Did not look' },
] as const;
