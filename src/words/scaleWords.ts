import type { ScaleMeasure } from '../plan';
import { amount, percent, type Sentence, type Values } from './sentence';

/** What a scale can be taken from, in the middle of a sentence. */
export const MEASURE_WORDS: Record<ScaleMeasure, string> = {
  tall: 'taped height',
  wide: 'taped width',
  deep: 'taped depth',
  span: 'distance between two points',
  'file unit': 'file unit',
  'own unit': 'unit that the file states',
};

export const measureWords = (by: number | string | undefined): string =>
  MEASURE_WORDS[by as ScaleMeasure] ?? String(by);

/** Two measures of one scan that do not give the same scale: which, by how much, and what to do. */
export function disagreeWords(v: Values): Sentence {
  const share = Number(v.share);
  const off = percent(Math.abs(share));
  // Of the piece as it should be: a scan at half the size is 50 % too small, though the piece would be 100 % larger.
  const scanOff = percent(Math.abs(share / (1 + share)));
  const volume = percent(Math.abs((1 + share) ** 3 - 1));
  return {
    text: `By the ${measureWords(v.by)} the piece would be ${off} ${share > 0 ? 'larger' : 'smaller'} than by the ${measureWords(v.scaleBy)}, which is used: ${volume} in volume.`,
    hint: `Measure both again. Does it stay so, the scan is stretched or ${scanOff} too ${share > 0 ? 'small' : 'large'}: decide which of the two is the scale.`,
  };
}

export const unreachedWords = (v: Values): Sentence => ({
  text: `No scale fits the ${measureWords(v.by)}: it checks nothing.`,
  hint: 'Is it of what the cut keeps? Measure it again, or take another distance.',
});

export const agreeText = (share: number): string => `within ${percent(Math.max(1e-3, Math.abs(share)))}`;

/** How a measure would change the volume, were it the scale: for a column of effects. */
export const otherwiseText = (cm3: number): string =>
  `would be ${cm3 < 0 ? '\u2212' : '+'} ${amount(Math.abs(cm3))} cm³`;
