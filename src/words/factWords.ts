import type { FactName } from '../checks';
import { OPENING_FACT_WORDS } from './openingFactWords';
import { POUR_FACT_WORDS } from './pourFactWords';
import type { FactWords } from './factWord';
import type { Sentence, Values } from './sentence';

/** What a missing fact is, after "Not checked:", and what to enter for it. */
const FACT_WORDS: Readonly<Record<FactName, FactWords>> = {
  ...POUR_FACT_WORDS,
  ...OPENING_FACT_WORDS,
  siliconeCure: {
    what: 'which silicone cure it is',
    enter: 'silicone cure, condensation or addition, as the data sheet says',
  },
  sculptSurface: { what: 'what the surface of the sculpt is', enter: 'surface, one of those listed' },
  barrierCoat: { what: 'whether a barrier coat is on the sculpt', enter: 'barrier coat, yes or no' },
  barrierDryMin: { what: 'how long the barrier coat has dried', enter: 'drying time, 0 min or more' },
  patchTested: {
    what: 'whether a patch test has cured',
    enter: 'patch test, yes only if one was made and cured through',
  },
  gloves: { what: 'which gloves are worn', enter: 'gloves, nitrile, latex, vinyl or none' },
  siliconeOpenedOn: {
    what: 'when the silicone was opened',
    enter: 'silicone opened, a day such as 2025-03-31 and not after today, or "not yet"',
  },
  moldMadeOn: {
    what: 'when the mold was cast',
    enter: 'mold cast, a day such as 2025-03-31 and not after today, or "not yet"',
  },
  today: { what: 'which day it is', enter: 'today, a day such as 2025-03-31' },
  thickestMm: {
    what: 'how thick the silicone is at its thickest',
    enter: 'thickest silicone, more than 0 mm',
  },
  release: { what: 'which release is used', enter: 'release, one of those listed or none' },
  willPaint: { what: 'whether the casting is painted', enter: 'painted, yes or no' },
  paintIsFlexible: {
    what: 'whether the paint stays flexible',
    enter: 'flexible paint, yes or no, as its maker says',
  },
  pigmentKind: { what: 'which pigment goes into the foam', enter: 'pigment, one of those listed or none' },
  pigmentShare: {
    what: 'how much pigment goes into the foam',
    enter: 'pigment share, 0 to 100 % of the whole mix',
  },
};

/** A check that waits for facts: names them, says what to enter, and what is known to be at stake, as a sentence. */
export function notChecked(v: Values, stake: string | undefined): Sentence {
  const [missing, unusable] = [factsOf(v.missing), factsOf(v.unusable)];
  const first = unusable[0];
  const wrong = first === undefined ? [] : [`${FACT_WORDS[first].what} ("${v.said}" cannot be used)`];
  const text = `Not checked: ${[...wrong, ...missing.map((name) => FACT_WORDS[name].what)].join('; ')}.`;
  const enter = [...unusable, ...missing].map((name) => FACT_WORDS[name].enter);
  return {
    text: stake === undefined ? text : `${text} ${stake}`,
    hint: `Enter: ${[...new Set(enter)].join('; ')}.`,
  };
}

const factsOf = (names: number | string | undefined): FactName[] =>
  String(names ?? '')
    .split(', ')
    .filter((name): name is FactName => name in FACT_WORDS);
