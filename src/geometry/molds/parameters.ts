import type { MoldParameter } from './moldType';

/*
 * Parameters that several types share. Sources: "common practice" is what shops are used to, without a source that could be cited; "chosen here"
 * is ours.
 */

const COMMON = 'common practice, no source';

export const BASE: MoldParameter = {
  key: 'base',
  label: 'The sculpt stands on the board, or hangs free',
  flag: 'base',
  kind: 'choice',
  default: 'open',
  choices: ['open', 'closed'],
  from: 'chosen here: most sculpts are molded on a board',
};

export const parts = (label: string, preset: 1 | 2): MoldParameter => ({
  key: 'parts',
  label,
  flag: 'parts',
  kind: 'choice',
  default: String(preset),
  choices: ['1', '2'],
  from: 'chosen here',
});

const PULL: MoldParameter = {
  key: 'pull',
  label: 'Pull of the jacket',
  flag: 'pull',
  kind: 'pull',
  default: 'best',
  from: 'chosen here: the direction that locks least, by search',
};

const DRAFT: MoldParameter = {
  key: 'draftDegrees',
  label: 'Draft of the jacket',
  flag: 'draft',
  kind: 'angle',
  default: 0,
  low: 0,
  high: 15,
  from: `0: the rubber gives; 2 to 5 degrees where it should slide off easily, ${COMMON}`,
  isFine: true,
};

const FILL: MoldParameter = {
  key: 'fill',
  label: 'Undercuts filled with',
  flag: 'fill',
  kind: 'choice',
  default: 'rubber',
  choices: ['rubber', 'filler'],
  from: 'chosen here: rubber; filler pieces are made apart and lie between skin and jacket',
  isFine: true,
};

const JACKET: MoldParameter = {
  key: 'jacketMm',
  label: 'Jacket thickness',
  flag: 'jacket',
  kind: 'length',
  default: 15,
  low: 1,
  high: 60,
  from: `10 to 25 mm for plaster, ${COMMON}`,
};

const FLANGE_WIDTH: MoldParameter = {
  key: 'flangeMm',
  label: 'Flange width',
  flag: 'flange',
  kind: 'length',
  default: 25,
  low: 0,
  high: 100,
  from: `20 to 40 mm, ${COMMON}; 0 makes none`,
};

const KEY_RADIUS: MoldParameter = {
  key: 'keyRadiusMm',
  label: 'Key radius',
  flag: 'key-radius',
  kind: 'length',
  default: 8,
  low: 0,
  high: 30,
  from: `8 to 10 mm, ${COMMON}; 0 makes none`,
  isFine: true,
};

const KEY_SPACING: MoldParameter = {
  key: 'keySpacingMm',
  label: 'Spacing of the keys',
  flag: 'key-spacing',
  kind: 'length',
  default: 65,
  low: 20,
  high: 300,
  from: `50 to 80 mm, ${COMMON}`,
  isFine: true,
};

export const length = (
  key: string,
  label: string,
  flag: string,
  [preset, low, high]: readonly [number, number, number],
  from: string,
  isFine = false,
): MoldParameter => ({
  key,
  label,
  flag,
  kind: 'length',
  default: preset,
  low,
  high,
  from,
  ...(isFine ? { isFine: true } : {}),
});

export const PRACTICE = COMMON;

/** What every skin under a rigid jacket has to choose. */
export const JACKETED: readonly MoldParameter[] = [
  PULL,
  DRAFT,
  FILL,
  FLANGE_WIDTH,
  KEY_RADIUS,
  KEY_SPACING,
  JACKET,
];
