import type { OpenedInput } from '../../plan';
import { chanceWords } from '../../words/chance';
import { amount } from '../../words/sentence';
import { unitSign } from '../../words/unitSign';
import { SOURCES } from './sources';

/** A figure or an input of it with its unit, as its kind is said: a share in percent, a chance as "1 in 120". */
export function valueWords({ value, unit, shown }: Pick<OpenedInput, 'value' | 'unit' | 'shown'>): string {
  if (shown === 'share') return `${amount(100 * value, 3)} %`;
  if (shown === 'chance') return chanceWords(value);
  const number = amount(value, shown === 'exact' ? 9 : 4);
  return unit === '' ? number : `${number} ${unitSign(unit)}`;
}

/** Signs as they are printed, where the library has those of a keyboard. */
export const formulaWords = (formula: string): string =>
  formula
    .replaceAll(' x ', ' × ')
    .replaceAll(' / ', ' ÷ ')
    .replaceAll(' - ', ' − ')
    .replaceAll('(-', '(−')
    .replaceAll('^2', '²')
    .replaceAll('theta', 'θ')
    .replaceAll('Phi', 'Φ')
    .replaceAll(' pi', ' π');

/** Where an input comes from, in the words of the tags where it has one. */
export const fromWords = (from: string): string =>
  from === 'this plan'
    ? 'worked out here'
    : from in SOURCES
      ? SOURCES[from as keyof typeof SOURCES].word
      : from;
