import { CHOICES, NOT_YET, type FactName, type MaterialFacts } from '../checks';
import { isUsable } from '../checks/facts';
import { bad, good, type Outcome } from '../problem';
import { textOf, type OptionSpec, type OptionValues } from './command';
import { flagOf } from './batchOptions';
import { readFigures } from './moldFigures';

const YES_OR_NO = ['yes', 'no'] as const;

/** Facts that the checks of materials ask for; what is left out is "Not checked". No clock is read: today is only what is given. */
export const FACT_OPTIONS: readonly OptionSpec[] = [
  {
    flags: '--sculpt-surface <kind>',
    about: 'surface that the silicone meets',
    choices: CHOICES.sculptSurface,
  },
  {
    flags: '--barrier-coat <time>',
    about: 'a coat keeps the silicone off the sculpt, dry for so long (bare number: min), or "none"',
  },
  {
    flags: '--patch-tested <answer>',
    about: 'a patch test cured through on that surface',
    choices: YES_OR_NO,
  },
  { flags: '--gloves <kind>', about: 'gloves that are worn', choices: CHOICES.gloves },
  { flags: '--opened <day>', about: 'day the silicone was opened, as 2026-03-01, or "not yet"' },
  { flags: '--today <day>', about: 'day the checks are made for, as 2026-11-29' },
  { flags: '--release <kind>', about: 'release that is used for the castings', choices: CHOICES.release },
  { flags: '--will-paint <answer>', about: 'the castings are painted', choices: YES_OR_NO },
  {
    flags: '--paint-flexible <answer>',
    about: 'the paint stays flexible, as its maker says',
    choices: YES_OR_NO,
  },
  { flags: '--pigment <kind>', about: 'pigment that goes into the foam', choices: CHOICES.pigmentKind },
  { flags: '--pigment-share <share>', about: 'pigment in the whole mix of A and B, as "2 %"' },
];

/** Facts that are kept as they are typed: words of a list, and days. */
const TEXTS: readonly (readonly [FactName, option: string])[] = [
  ['sculptSurface', 'sculptSurface'],
  ['gloves', 'gloves'],
  ['siliconeOpenedOn', 'opened'],
  ['today', 'today'],
  ['release', 'release'],
  ['pigmentKind', 'pigment'],
];

const ANSWERS: readonly (readonly [FactName, option: string])[] = [
  ['patchTested', 'patchTested'],
  ['willPaint', 'willPaint'],
  ['paintIsFlexible', 'paintFlexible'],
];

/** Errors: BAD_CALL for a day that is none, or a time. */
export function factOptions(options: OptionValues): Outcome<MaterialFacts> {
  // The mold of this command is still to be made.
  const facts: Partial<Record<FactName, string | number | boolean>> = { moldMadeOn: NOT_YET };
  for (const [name, option] of TEXTS) {
    const text = textOf(options, option);
    if (text === undefined) continue;
    if (!isUsable(name, text))
      return bad('BAD_CALL', {
        text: `${flagOf(option)} "${text}" is not a day.`,
        hint: `Write year, month and day, as 2026-03-01${name === 'siliconeOpenedOn' ? ', or "not yet"' : ''}.`,
      });
    facts[name] = text;
  }
  for (const [name, option] of ANSWERS) {
    const text = textOf(options, option);
    if (text !== undefined) facts[name] = text === 'yes';
  }
  const isBare = textOf(options, 'barrierCoat') === 'none';
  const figures = readFigures(isBare ? { ...options, barrierCoat: undefined } : options, [
    { key: 'barrierDryMin', option: 'barrierCoat', kind: 'minutes', allowZero: true },
    { key: 'pigmentShare', option: 'pigmentShare', kind: 'share', allowZero: true },
  ]);
  if (!figures.ok) return figures;
  if (isBare) facts.barrierCoat = false;
  if (figures.value.barrierDryMin !== undefined) facts.barrierCoat = true;
  return good({ ...facts, ...figures.value } as MaterialFacts);
}
