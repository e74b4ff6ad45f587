import { CHOICES, type CheckFacts, type FactName } from '../checks';
import { isUsable } from '../checks/facts';
import { bad, good, type Outcome } from '../problem';
import { flagOf } from './batchOptions';
import { textOf, type OptionSpec, type OptionValues } from './command';
import { readPourFigures } from './pourFigures';
import { quantityOption } from './quantity';

/** A fact of the checks that only the caster can tell, and its option. */
interface FactOption {
  fact: FactName;
  option: string;
  about: string;
  is: 'choice' | 'day' | 'answer' | FigureKind;
}

type FigureKind = 'share' | 'count' | 'millimeters' | 'force';

/** What is left out is "Not checked". No clock is read: today is only what is given. */
const FACTS: readonly FactOption[] = [
  {
    fact: 'moldWater',
    option: 'moldWater',
    about: 'water in the mold since it was dry: fill, wash',
    is: 'choice',
  },
  { fact: 'ventCount', option: 'ventCount', about: 'holes for air beside the opening', is: 'count' },
  { fact: 'ventMm', option: 'ventWidth', about: 'width of such a hole (bare number: mm)', is: 'millimeters' },
  {
    fact: 'openingOpen',
    option: 'openingOpen',
    about: 'the opening stays open, or its plug lets air out',
    is: 'answer',
  },
  { fact: 'plugHeld', option: 'plugHeld', about: 'a clamp, strap or weight holds the plug', is: 'answer' },
  { fact: 'plugVented', option: 'plugVented', about: 'the plug lets air out', is: 'answer' },
  {
    fact: 'panelSpanMm',
    option: 'panelSpan',
    about: 'widest flat part of the jacket without rib or board (bare number: mm; 0: none)',
    is: 'millimeters',
  },
  {
    fact: 'strapWorkingN',
    option: 'strapWorking',
    about: 'working load of a strap, by its label (bare number: N)',
    is: 'force',
  },
  { fact: 'mixingMethod', option: 'mixing', about: 'how the foam is mixed', is: 'choice' },
  {
    fact: 'ratioReadBack',
    option: 'readBack',
    about: 'grams and labels were read back aloud',
    is: 'answer',
  },
  {
    fact: 'foamOpenedOn',
    option: 'foamOpened',
    about: 'day the foam was opened, as 2026-03-01, or "not yet"',
    is: 'day',
  },
  { fact: 'today', option: 'today', about: 'day the checks are made for, as 2026-11-29', is: 'day' },
  { fact: 'pigmentKind', option: 'pigment', about: 'pigment that goes into the foam', is: 'choice' },
  {
    fact: 'pigmentShare',
    option: 'pigmentShare',
    about: 'pigment in the whole mix of A and B, as "2 %"',
    is: 'share',
  },
  {
    fact: 'castingFireRated',
    option: 'fireRated',
    about: 'a test report meets what the place of use asks for',
    is: 'answer',
  },
];

const HOLDERS: Readonly<Record<FactOption['is'], string>> = {
  choice: 'kind',
  day: 'day',
  answer: 'answer',
  share: 'share',
  count: 'count',
  millimeters: 'length',
  force: 'force',
};

export const POUR_FACT_OPTIONS: readonly OptionSpec[] = FACTS.map(({ fact, option, about, is }) => ({
  flags: `${flagOf(option)} <${HOLDERS[is]}>`,
  about,
  ...(is === 'choice' ? { choices: CHOICES[fact as keyof typeof CHOICES] } : {}),
  ...(is === 'answer' ? { choices: ['yes', 'no'] } : {}),
}));

/** Facts that are worked out, by the options that they are worked out from. */
const WORKED_OUT: Readonly<Partial<Record<FactName, readonly string[]>>> = {
  moldTempC: ['--mold-temp'],
  cupCm3: ['--cup-volume'],
  pourTimeS: ['--cream'],
  pourWindowS: ['--cream'],
  pourWindowLowS: ['--cream'],
  coreTempC: ['--nco', '--water', '--ingredients'],
  cardOpenMin: ['--open'],
  plugN: ['--plug-area'],
  strapBuckleN: ['--opens', '--projected-area'],
  airPressureFrom: ['--pressure', '--altitude'],
  panelLargestMm: ['--panel'],
  panelVerdict: ['--panel'],
};

/** The options that tell a fact, or that it follows from. */
export function optionsOfFact(fact: string): readonly string[] {
  const known = FACTS.find((one) => one.fact === fact);
  return known === undefined ? (WORKED_OUT[fact as FactName] ?? []) : [flagOf(known.option)];
}

/** The facts that were told. Errors: BAD_CALL for a day that is none, a figure that is none. */
export function pourFacts(options: OptionValues): Outcome<CheckFacts> {
  const facts: Partial<Record<FactName, string | number | boolean>> = {};
  for (const { fact, option, is } of FACTS) {
    const text = textOf(options, option);
    if (text === undefined) continue;
    if (is === 'answer') facts[fact] = text === 'yes';
    else if (is === 'choice' || is === 'day') {
      if (!isUsable(fact, text)) return notADay(option, text, fact);
      facts[fact] = text;
    } else {
      const read = figureOf(options, option, is);
      if (!read.ok) return read;
      if (!isUsable(fact, read.value)) return notUsable(option, text, is);
      facts[fact] = read.value;
    }
  }
  return good(facts as CheckFacts);
}

function figureOf(options: OptionValues, option: string, is: FigureKind): Outcome<number> {
  if (is === 'share')
    return quantityOption(flagOf(option), textOf(options, option)!, 'share', undefined, true);
  const read = readPourFigures(options, [{ key: 'figure', option, unit: is, allowZero: true }]);
  return read.ok ? good(read.value.figure!) : read;
}

const notUsable = (option: string, text: string, is: FigureKind): ReturnType<typeof bad> =>
  bad('BAD_CALL', {
    text: `${flagOf(option)} "${text}" cannot be used.`,
    hint: is === 'count' ? 'Give a whole number, 0 for none.' : 'Check the number and its unit.',
  });

const notADay = (option: string, text: string, fact: FactName): ReturnType<typeof bad> =>
  bad('BAD_CALL', {
    text: `${flagOf(option)} "${text}" is not a day.`,
    hint: `Write year, month and day, as 2026-03-01${fact === 'today' ? '' : ', or "not yet"'}.`,
  });
