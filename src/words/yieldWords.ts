import { YIELD_CODES } from '../problem';
import type { Problem, YieldCode } from '../problem';
import { formatDensity, formatGrams, formatMass, formatRatio, formatShare, type Show } from '../units';
import type { RatioSentenceParts } from '../yield';
import { BOOK_INPUT_WORDS } from './bookInputWords';
import { chanceWords } from './chance';
import { DEMOLD_INPUT_WORDS } from './demoldInputWords';
import { MOLDMAKING_INPUT_WORDS } from './moldmakingInputWords';
import { POUR_INPUT_WORDS } from './pourInputWords';
import { amount, type Sentence } from './sentence';
import { SILICONE_INPUT_WORDS } from './siliconeInputWords';
import { unitSign } from './unitSign';
import { WARMTH_INPUT_WORDS } from './warmthWords';

/**
 * The sentence of a problem of the pour: what is wrong and by how much; `hint` says what to do now. Masses stay in grams,
 * as the scale shows them; `show` is for the densities.
 */
export function sayYield({ code, values }: Problem, show: Show = 'both'): Sentence {
  if (!isYieldCode(code)) throw new Error(`sayYield: expected a code of the pour, got ${code}`);
  return SENTENCES[code](readerOf(values, show));
}

export const isYieldCode = (code: string): code is YieldCode => YIELD_CODES.some((known) => known === code);

/**
 * The read-back of a ratio, A first in the label, B first into the cup: `A:B 100:55 by weight, 588 g in all: 379 g of A
 * (isocyanate) and 209 g of B (polyol). Weigh ...`
 */
export function ratioSentence({
  a,
  b,
  by,
  weighings: [partA, partB],
  totalG,
  stepG,
}: RatioSentenceParts): string {
  const aG = formatGrams(partA.massG, stepG);
  const bG = formatGrams(partB.massG, stepG);
  const label = `A:B ${formatRatio({ a, b })} by ${by === 'mass' ? 'weight' : 'volume'}`;
  return (
    `${label}, ${formatGrams(totalG, stepG)} in all: ${aG} of A (${partA.side}) and ${bG} of B (${partB.side}). ` +
    `Weigh the ${bG} of B into the ${partB.container} first and set the scale to zero; ` +
    `the ${aG} of A goes into the same ${partA.container} last, and the clock starts when it goes in.`
  );
}

/** A row of the uncertainty list, by the words of the bench. */
export const TERM_WORDS: Readonly<Record<string, string>> = {
  free_rise: 'free-rise density',
  cavity: 'cavity volume',
  station_pressure: 'air pressure of the day',
  riser: 'riser volume',
  residue: 'residue in the cup',
  gas_loss: 'gas that leaves',
  vents: 'foam out of the vents',
  scale: 'step of the scale',
};

const INPUT_WORDS: Readonly<Record<string, string>> = {
  ...BOOK_INPUT_WORDS,
  cavityCm3: 'Cavity volume',
  riserCm3: 'Riser volume',
  freeRiseKgM3: 'Free-rise density',
  minFillKgM3: 'Minimum-fill density',
  liquidKgM3: 'Liquid density of the mix',
  liquidDensityKgM3: 'Liquid density of the mix',
  partDensityAKgM3: 'Density of part A',
  partDensityBKgM3: 'Density of part B',
  packFactor: 'Pack factor',
  overpackShare: 'Overpack',
  shortFillChance: 'Chance of a short fill',
  ventsG: 'Foam out of the vents',
  gasLossShare: 'Gas loss',
  residueG: 'Residue in the cup',
  scaleStepG: 'Step of the scale',
  scaleMaxG: 'Most the scale takes',
  uScanToMoldShare: 'Doubt between scan and mold',
  fullG: 'Full cup',
  cupG: 'Empty cup',
  waterG: 'Water in the cup',
  waterTempC: 'Water temperature',
  cups: 'Number of cups',
  ...WARMTH_INPUT_WORDS,
  ...MOLDMAKING_INPUT_WORDS,
  ...SILICONE_INPUT_WORDS,
  ...POUR_INPUT_WORDS,
  ...DEMOLD_INPUT_WORDS,
};

/** `cavityCm3.uShare` is the doubt of the cavity volume; an input without words of its own keeps its name. */
function inputWords(input: string): string {
  const [name = '', detail] = input.split(/[. ]/);
  const words = INPUT_WORDS[name] ?? input;
  if (detail === undefined) return words;
  return detail.startsWith('u') ? `${words}: its uncertainty` : `${words}: its range`;
}

interface Reader {
  has: (name: string) => boolean;
  num: (name: string) => number;
  text: (name: string) => string;
  unit: () => string;
  density: (name: string) => string;
  share: (name: string) => string;
  /** A figure on its own, at most four digits. */
  plain: (name: string) => string;
  mass: (name: string) => string;
}

function readerOf(values: Problem['values'], show: Show): Reader {
  const num = (name: string): number => {
    const value = values[name];
    if (typeof value !== 'number')
      throw new Error(`sayYield: expected a number ${name}, got ${String(value)}`);
    return value;
  };
  return {
    has: (name) => values[name] !== undefined,
    num,
    text: (name) => String(values[name] ?? ''),
    unit: () => unitSign(String(values.unit ?? '')),
    density: (name) => formatDensity(num(name), show),
    share: (name) => formatShare(num(name)),
    plain: (name) => amount(num(name)),
    mass: (name) => formatMass(num(name), show === 'both' ? show : 'metric'),
  };
}

const SENTENCES: Readonly<Record<YieldCode, (v: Reader) => Sentence>> = {
  INPUT_NOT_A_NUMBER: (v) => ({
    text: `${inputWords(v.text('input'))} is not a number: ${v.text('value')}.`,
    hint: 'Type it as a plain number with its unit.',
  }),
  INPUT_OUT_OF_BOUNDS: (v) => ({
    text:
      `${inputWords(v.text('input'))} is ${v.plain('value')} ${v.unit()}`.trimEnd() +
      `, which is not within ${v.plain('low')} to ${v.plain('high')} ${v.unit()}`.trimEnd() +
      '.',
    hint: 'Check the figure and its unit, then type it again.',
  }),
  INPUT_CONFLICT: (v) => ({
    text: `Two ways to set the pack were given: ${lower(v.text('first'))} and ${lower(v.text('second'))}.`,
    hint: 'Keep one of them: pack factor, chance of a short fill, or overpack.',
  }),
  RATIO_NOT_POSITIVE: (v) => ({
    text: `The ratio A:B ${v.text('a')}:${v.text('b')} by ${v.text('by') === 'mass' ? 'weight' : v.text('by')} has a side that is not above 0, or no kind.`,
    hint: 'Type parts A to parts B from the data sheet, such as 52:100, and whether by weight or by volume.',
  }),
  RATIO_EXTREME: (v) => ({
    text: `The ratio A:B ${v.plain('a')}:${v.plain('b')} lies outside ${v.plain('low')} to ${v.plain('high')} parts A to one B.`,
    hint: 'Check both sides against the data sheet; A is the isocyanate.',
  }),
  RATIO_REVERSED: (v) => ({
    text:
      `The ratio A:B ${v.plain('a')}:${v.plain('b')} is that of the card, ${v.plain('cardA')}:${v.plain('cardB')}, ` +
      'in the other order.',
    hint: 'A is the isocyanate and comes first. If the drum labels say otherwise, correct the card.',
  }),
  PART_DENSITIES_NEEDED: (v) => ({
    text: `A:B ${v.plain('a')}:${v.plain('b')} is by volume, and the density of part A, of part B or of both is missing.`,
    hint: 'Give the density of A and of B from the data sheet, or the ratio by weight; a scale cannot weigh a volume.',
  }),
  MIN_FILL_NEEDED: (v) => ({
    text: `Overpack ${v.share('overpackShare')} counts from the minimum fill, and its density is missing.`,
    hint: 'Give the minimum-fill density (a short pour tells it), or a pack factor instead.',
  }),
  MIN_FILL_BELOW_FREE_RISE: (v) => ({
    text:
      `The minimum fill, ${v.density('minFillKgM3')}, is lighter than the free rise, ${v.density('freeRiseKgM3')}: ` +
      'a mold with its skin cannot need less. The free rise was used as the least.',
    hint: 'Test a cup of today and check which of the two figures is old.',
  }),
  MIN_FILL_UNKNOWN: (v) => ({
    text:
      `The minimum fill is not known; it was taken as the free rise, ${v.density('freeRiseKgM3')}. The real one is higher ` +
      'because of the skin (the more, the smaller the piece), so the true chance of a short fill is larger.' +
      (v.has('chancePack')
        ? ` The wanted chance alone would give pack ${v.plain('chancePack')}: it was raised to ${v.plain('packFactor')}.`
        : ''),
    hint:
      'A short pour tells it: the mass of the part over the volume it filled; a full piece, weighed, says what it is at most. ' +
      'Give it as the minimum-fill density (--min-fill).',
  }),
  NOT_A_FOAM: (v) => ({
    text:
      `Free rise ${v.density('freeRiseKgM3')} at pack ${v.plain('packFactor')} gives ${v.density('moldedKgM3')}, ` +
      `no lighter than the liquid at ${v.density('liquidKgM3')}.`,
    hint: 'Check the unit of the free-rise density and the pack factor.',
  }),
  PACK_REFUSED: (v) => ({
    text: `Pack factor ${v.plain('packFactor')} is outside ${v.plain('low')} to ${v.plain('high')}.`,
    hint:
      `Pack factor must be between ${v.plain('low')} and ${v.plain('high')}: molded over free-rise density. ` +
      'An overpack in percent is another term.',
  }),
  PACK_UNUSUAL: (v) => ({
    text:
      `Pack factor ${v.plain('packFactor')} is outside the usual ${v.plain('low')} to ${v.plain('high')}` +
      (v.num('packFactor') > v.num('stopAbove') ? `, and above ${v.plain('stopAbove')} where we stop.` : '.'),
    hint:
      v.num('packFactor') > v.num('high')
        ? 'Lower the pack, or check with the data sheet that mold, clamps and vents stand the pressure.'
        : 'Raise the pack, or expect a short fill and thin skin.',
  }),
  SHORT_FILL_OUT_OF_REACH: (v) => ({
    text:
      `A short fill of only ${chanceWords(v.num('chance')).replace('about ', '')} would need a pack above ${v.plain('largest')}, ` +
      `since the pack is only known to ${v.share('sigmaShare')}.`,
    hint: 'Make a cup test today and measure the cavity better; then ask again, or allow a larger chance.',
  }),
  SHORT_FILL_LIKELY: (v) => ({
    text:
      `A short fill is ${chanceWords(v.num('chance'))} at pack ${v.plain('packFactor')}; ` +
      `over ${chanceWords(v.num('lookChance')).replace('about ', '')} deserves a look, over ${chanceWords(v.num('stopChance')).replace('about ', '')} a stop. ` +
      `The pack is known to ${v.share('sigmaShare')}.`,
    hint: 'First ask: is the mold warm, is every high spot vented, is the cup test from today? Only then pack more.',
  }),
  NO_CUP_TEST: (v) => ({
    text: `Free rise ${v.density('freeRiseKgM3')} was not checked with a cup of today (source: ${v.text('from').replaceAll('-', ' ')}).`,
    hint: 'Foam a cup of known volume in this room today, trim and weigh it: the cheapest way to a surer batch.',
  }),
  PART_BELOW_SCALE: (v) => ({
    text: `Part ${v.text('part')} would weigh ${v.mass('partG')}, less than the scale can show in steps of ${v.plain('stepG')} g.`,
    hint: 'Use a finer scale or mix a larger batch.',
  }),
  SCALE_COARSE: (v) => ({
    text:
      `With steps of ${v.plain('stepG')} g the ratio of this ${v.plain('totalG')} g batch is only sure to ` +
      `${v.share('twoUShare')}; ${v.share('allowedShare')} is wanted. Rounding alone moved it by ${formatShare(Math.abs(v.num('roundingShare')))}.`,
    hint:
      `Use a scale with steps of ${v.plain('neededStepG')} g or finer, or mix at least ` +
      `${amount(Math.ceil(v.num('smallestTotalG')), 9)} g.`,
  }),
  SCALE_OVERLOADED: (v) => ({
    text: `A and B are ${v.mass('totalG')} together, and the scale takes ${v.mass('maxG')}, the cup included.`,
    hint: 'Use a scale that takes more, or check what is said of it in the shop file.',
  }),
  RATIO_ROUNDED: (v) => ({
    text:
      `Rounded to ${v.plain('stepG')} g the ratio is off by ${v.share('ratioErrorShare')} ` +
      `(A ${v.plain('partAG')} g, B ${v.plain('partBG')} g); ${v.share('lookShare')} deserves a look, ${v.share('stopShare')} a stop.`,
    hint: 'Use a finer scale or mix a larger batch.',
  }),
  RESIDUE_LARGE: (v) => ({
    text:
      `The residue in the cup, ${v.mass('residueG')}, is ${v.share('residueShare')} of the ${v.mass('mixedG')} mixed; ` +
      `over ${v.share('lookShare')} it rules the result.`,
    hint: 'Use a smaller cup, scrape it, and weigh it empty after the pour so that the next batch knows.',
  }),
  CUP_WEIGHTS: (v) => ({
    text: `The cup test does not add up: full ${v.mass('fullG')}, empty ${v.mass('cupG')}, water ${v.mass('waterG')}.`,
    hint: 'The full cup must weigh more than the empty one and the water more than nothing. Weigh them again.',
  }),
  CUP_TEST_SMALL: (v) => ({
    text: `The cup held only ${v.mass('foamG')} of foam; under ${v.mass('wantedG')} it is known to ${v.share('uShare')} at best.`,
    hint: 'Use a larger cup for the next test.',
  }),
  FOAM_CARD_FIELD: (v) => ({
    text: `The foam card's ${v.text('field')} is missing or wrong: it needs ${v.text('need')}.`,
    hint: 'Correct it on the card from the data sheet.',
  }),
};

function lower(input: string): string {
  const words = inputWords(input);
  return words.charAt(0).toLowerCase() + words.slice(1);
}
