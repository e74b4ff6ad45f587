import type { LevelFill, OpeningPlan } from '../../plan';
import { amount, percent } from '../../words/sentence';
import { upWords } from './openingWays';

/** Wherever air is told: level filling is the least that stays. */
export const LOWER_BOUND =
  'Level filling is a lower bound for foam: it rises as a dome and can close a pocket that a liquid would fill.';

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

const numberWord = (n: number): string => NUMBERS[n] ?? amount(n);

const some = (n: number, one: string): string => `${numberWord(n)} ${one}${n === 1 ? '' : 's'}`;

const upperFirst = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** "Two air pockets, base up; two vents cure both". */
export function fillSentence({ filling, checks, places }: OpeningPlan): string {
  const { traps, vents, leftCm3, up } = filling;
  const planned = places.filter(({ kind }) => kind === 'vent planned').length;
  const withVents = planned === 0 ? '' : ` with ${some(planned, 'planned vent')}`;
  const found = `${upperFirst(some(traps.length, 'air pocket'))}, ${upWords(up)}${withVents}`;
  if (traps.length === 0 || vents.length === 0) return found;
  const isCured = checks.some(({ values }) => values.because === 'vents cure it');
  const more = some(vents.length, planned === 0 ? 'vent' : 'more vent');
  return isCured
    ? `${found}; ${more} ${vents.length === 1 ? 'cures' : 'cure'} ${traps.length === 1 ? 'it' : traps.length === 2 ? 'both' : 'all'}`
    : `${found}; with ${more} ${cm3(leftCm3)} stay`;
}

/** "The rubber must stretch 55 %; 100 % is allowed". */
export function stretchSentence({ demold }: OpeningPlan): string {
  if (demold === undefined) return 'the way out was not measured';
  const { worst, allowedStretch } = demold;
  return worst.stretch <= 0
    ? 'the casting passes without stretching the rubber'
    : `the rubber must stretch ${percent(worst.stretch)}, ${percent(allowedStretch.value)} is allowed`;
}

export const cm3 = (value: number): string => `${amount(value, 2)} cm³`;

/** Air of a way up with its doubt, in cm3. */
export function airWords({ trappedCm3: { value, low, high } }: Pick<LevelFill, 'trappedCm3'>): string {
  if (value === 0) return 'none';
  const [from, to] = [amount(low, 2), amount(high, 2)];
  return from === to ? cm3(value) : `${cm3(value)} (${from} to ${to})`;
}

export const BAND_NEEDS = {
  liquidCm3: 'the foam’s free rise, in Batch',
  withinS: 'the time to pour',
  mixPaS: 'the viscosity of the mix',
} as const;
