import { OFFERED_UNITS, type AskReason, type ErrorReason, type ScalarKind, type Why } from '../units';
import type { Sentence } from './sentence';
import { unitSign } from './unitSign';

/** Why a typed quantity was asked about or refused, and what to type instead. */
export function sayWhy({ reason, values }: Why): Sentence {
  return SENTENCES[reason]((name) => String(values[name] ?? ''));
}

const KIND_WORDS: Readonly<Record<string, string>> = {
  length: 'a length',
  mass: 'a mass',
  volume: 'a volume',
  density: 'a density',
  temperature: 'a temperature',
  temperatureDifference: 'a temperature difference',
  pressure: 'a pressure',
  viscosity: 'a viscosity',
  share: 'a share',
  packFactor: 'a pack factor',
  overpack: 'an overpack',
  plain: 'a plain number',
  ratio: 'a ratio',
};

const kindWords = (kind: string): string => KIND_WORDS[kind] ?? kind;

/** The units that are offered for it; a kind without any is a number. */
function unitHint(kind: string): string {
  const units = kind in OFFERED_UNITS ? OFFERED_UNITS[kind as ScalarKind] : [];
  return units.length === 0 ? 'Type the number alone.' : `Use ${units.map(unitSign).join(', ')}.`;
}

const PICK = 'Write the one you mean.';

const SENTENCES: Readonly<Record<AskReason | ErrorReason, (value: (name: string) => string) => Sentence>> = {
  'comma-or-thousands': () => ({ text: 'The comma can be a decimal sign or mark thousands.', hint: PICK }),
  exponent: () => ({ text: 'A number with an exponent is easily misread.', hint: 'Write it out in full.' }),
  'other-digits': () => ({
    text: 'The digits are of another script or width.',
    hint: 'Write them as 0 to 9.',
  }),
  'bare-fraction': () => ({
    text: 'A fraction without a unit can be a number, a ratio or a date.',
    hint: PICK,
  }),
  'unit-missing': () => ({ text: 'The unit is missing.', hint: 'Write the unit behind the number.' }),
  implausible: (value) => ({
    text: `${value('value')} is hard to believe: ${kindWords(value('kind'))} ${value('side')} ${value('bound')}.`,
    hint: 'Check the number and its unit.',
  }),
  'percent-or-number': () => ({ text: 'It can be meant as a percentage or as a plain number.', hint: PICK }),
  'slash-ratio': (value) => ({
    text: 'A slash can mean a ratio, a fraction or a percentage.',
    hint: `Write ${value('a')}:${value('b')}, A first.`,
  }),
  empty: () => ({ text: 'Nothing was typed.', hint: 'Type a number, with its unit where it has one.' }),
  'too-long': () => ({
    text: 'The text is too long for a quantity.',
    hint: 'Type one number with its unit.',
  }),
  'not-a-number': () => ({
    text: 'It does not start with a number, or a number is broken.',
    hint: 'Type a number, with its unit where it has one.',
  }),
  'bad-grouping': () => ({
    text: 'The points and commas fit neither decimals nor thousands.',
    hint: 'Use one decimal sign and no separators.',
  }),
  'out-of-reach': () => ({
    text: 'The number is too large or too small to be kept.',
    hint: 'Check its exponent.',
  }),
  'unknown-unit': (value) => ({
    text: `The unit "${value('unit')}" is not known.`,
    hint: unitHint(value('kind')),
  }),
  'wrong-kind': (value) => ({
    text: `"${value('unit')}" belongs to ${kindWords(value('unitKind'))}, and ${kindWords(value('kind'))} is wanted.`,
    hint: 'Type it in a unit of that kind.',
  }),
  'not-positive': (value) => ({
    text: `${sentence(kindWords(value('kind')))} of 0 cannot be used.`,
    hint: 'Type a number above 0.',
  }),
  negative: (value) => ({
    text: `${sentence(kindWords(value('kind')))} cannot be negative here.`,
    hint: 'Type it without the minus sign.',
  }),
  'bad-compound': () => ({
    text: 'The numbers do not make one quantity.',
    hint: 'Write the larger unit first, as in 5 ft 3 in or 5 lb 3 oz.',
  }),
  'bad-ratio': (value) => ({
    text: `"${value('text')}" is no ratio of two numbers above 0.`,
    hint: 'Write parts A, a colon, parts B, as in 52:100.',
  }),
  'share-out-of-range': (value) => ({
    text: `A share of ${value('value')} % is more than all.`,
    hint: 'Type 0 to 100 %.',
  }),
  'below-absolute-zero': (value) => ({
    text: `${value('valueC')} °C is below absolute zero.`,
    hint: 'Check the number and its unit.',
  }),
};

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
