import type { Problem } from '../problem';
import type { Show } from '../units';
import { BOOK_WORDS } from './bookFindingWords';
import { CHECK_WORDS } from './checkWords';
import { MESH_WORDS } from './meshWords';
import { MOLD_WORDS } from './moldWords';
import { OPENING_FINDING_WORDS } from './openingWords';
import { PLAN_WORDS } from './planWords';
import { POUR_WORDS } from './pourWords';
import { READER_WORDS } from './readerWords';
import type { Sentence, Values } from './sentence';
import { SILICONE_WORDS } from './siliconeWords';
import { STORE_WORDS } from './storeWords';
import { WARMTH_WORDS } from './warmthWords';
import { isYieldCode, sayYield } from './yieldWords';

const WORDS: Partial<Record<string, (v: Values) => Sentence>> = {
  ...READER_WORDS,
  ...MESH_WORDS,
  ...PLAN_WORDS,
  ...MOLD_WORDS,
  ...SILICONE_WORDS,
  ...CHECK_WORDS,
  ...POUR_WORDS,
  ...OPENING_FINDING_WORDS,
  ...WARMTH_WORDS,
  ...STORE_WORDS,
  ...BOOK_WORDS,
};

export const hasWords = (code: string): boolean => WORDS[code] !== undefined || isYieldCode(code);

/** A problem in words: what is wrong, by how much and where, and what to do now. */
export function say(problem: Problem, show: Show = 'both'): Sentence {
  if (isYieldCode(problem.code)) return sayYield(problem, show);
  const words = WORDS[problem.code];
  if (words === undefined) throw new Error(`say: expected words for every code, got ${problem.code}`);
  const { text, hint } = words(problem.values);
  return { text: placeOf(problem) + text, hint };
}

function placeOf({ at }: Problem): string {
  if (at?.line !== undefined) return `Line ${at.line}: `;
  if (at?.byte !== undefined && at.byte > 0) return `Byte ${at.byte}: `;
  return '';
}
