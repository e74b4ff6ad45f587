import type { FactName } from '../../checks';
import type { AirAround } from '../../yield';

/** One color of the recipe, by name; its share and its drops are fields. */
export interface ColorRow {
  name: string;
  of: 'B' | 'mix';
}

export const MOST_COLORS = 4;

/** What was said about the pour beside what was typed into fields. Left empty: nobody has said so. */
export interface Pouring {
  sides: '' | '1' | '2';
  surroundings: '' | AirAround;
  /** As typed: "1.15 short, 1.25 filled 3". */
  past: string;
  colors: readonly ColorRow[];
  /** Facts of the checks of the pour, as those of materials are kept in `molding`. */
  facts: Partial<Record<FactName, string>>;
  /** What "ready to pour" was said for, see `ready.ts`. */
  readyFor: string;
}

export const newPouring = (): Pouring => ({
  sides: '',
  surroundings: '',
  past: '',
  colors: [{ name: '', of: 'B' }],
  facts: {},
  readyFor: '',
});

/** Of the mold in hand, or of the moment: forgotten with the scan. */
export const POUR_FACTS_OF_SCAN: readonly FactName[] = [
  'moldWater',
  'openingOpen',
  'plugHeld',
  'plugVented',
  'ratioReadBack',
];

/** What the user says of the pour, beside what is typed into fields. */
export type PourWord =
  | { do: 'pouring'; pouring: Partial<Pick<Pouring, 'sides' | 'surroundings' | 'readyFor'>> }
  | { do: 'past'; text: string }
  | { do: 'pourFact'; fact: FactName; value: string }
  | { do: 'color'; row: number; color: Partial<ColorRow> };

export function withPourWord(pouring: Pouring, word: PourWord): Pouring {
  switch (word.do) {
    case 'pouring':
      return { ...pouring, ...word.pouring };
    case 'past':
      return { ...pouring, past: word.text };
    case 'pourFact':
      return { ...pouring, facts: { ...pouring.facts, [word.fact]: word.value } };
    case 'color':
      return { ...pouring, colors: withColor(pouring.colors, word) };
  }
}

/** A row past the last is a new one. */
const withColor = (
  colors: readonly ColorRow[],
  { row, color }: { row: number; color: Partial<ColorRow> },
): ColorRow[] =>
  row < colors.length
    ? colors.map((one, at) => (at === row ? { ...one, ...color } : one))
    : [...colors, { name: '', of: 'B', ...color }];
