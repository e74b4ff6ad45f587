import type {
  AskFirst,
  Confounding,
  FillBatch,
  LearnedFreeRise,
  NextPour,
  OneChange,
  ResidueLine,
  SamePackPair,
} from '../yield';
import { formatDensity, formatTemperature, type Show } from '../units';
import { FACTOR_WORDS, listed } from './bookFields';
import { amount, counted } from './sentence';

/** What stays in the cup, and what says so. */
export function residueLearnedWords(line: ResidueLine): string {
  const { way, pours, fixedG, perMixed, scatterG } = line;
  if (way === 'default' || fixedG === undefined)
    return `${counted(pours, 'residue')} in the book, and it takes three to learn from: until then what stays in the cup is assumed.`;
  const off = scatterG === undefined ? '' : `; a single pour lies about ${amount(scatterG, 2)} g off`;
  if (way === 'mean' || perMixed === undefined)
    return `${amount(fixedG.value, 3)} g stay in the cup, from ${counted(pours, 'pour')} too alike to tell a line${off}.`;
  return `${amount(fixedG.value, 2)} g stay in the cup and ${amount(100 * perMixed.value, 2)} g more for every 100 g mixed: a straight line through ${counted(pours, 'pour')}${off}.`;
}

/** How far a foam rises by itself, from what, and how that lies to its card. */
export function freeRiseLearnedWords(
  foam: string,
  learned: LearnedFreeRise,
  cardKgM3: number | undefined,
  show: Show,
): string {
  const { freeRiseKgM3: rise, cups, shortPours, bounds } = learned;
  const exact = [
    ...(cups > 0 ? [counted(cups, 'cup')] : []),
    ...(shortPours > 0 ? [counted(shortPours, 'short pour')] : []),
  ];
  const from = exact.length === 0 ? 'from its card alone' : `from ${listed(exact)}`;
  const range = `${formatDensity(rise.low, show)} to ${formatDensity(rise.high, show)}`;
  const full =
    bounds === 0
      ? ''
      : ` ${counted(bounds, 'full pour')} ${bounds === 1 ? 'counts as an upper end' : 'count as upper ends'} only: less might have filled.`;
  return `${foam}: free rise ${formatDensity(rise.value, show)}, ${range}, ${from}${toCard(learned, cardKgM3, show)}.${full}`;
}

function toCard({ freeRiseKgM3: rise }: LearnedFreeRise, cardKgM3: number | undefined, show: Show): string {
  if (cardKgM3 === undefined || rise.from === 'data-sheet') return '';
  const card = `its card, ${formatDensity(cardKgM3, show)}`;
  if (rise.low > cardKgM3) return `: above ${card}`;
  if (rise.high < cardKgM3) return `: below ${card}`;
  return `: ${card}, lies within`;
}

/** What to mix for a cavity. */
export const fillLearnedWords = (cavity: string, batch: FillBatch): string =>
  `${cavity} is just filled by ${amount(batch.leastMixedG.value, 3)} g mixed, ${amount(batch.leastMixedG.low, 3)} to ${amount(batch.leastMixedG.high, 3)} g; mix ${amount(batch.mixedG, 3)} g and it fills ${Math.round(20 * batch.chance)} times in 20.`;

/** What moved together, a sentence a group. */
export function movedTogetherWords({ groups, verdict, pours }: Confounding): string[] {
  if (verdict === 'too-few')
    return [`${counted(pours, 'pour')} in the book: it takes three to see what moved together.`];
  return groups.map((group) => {
    const names = listed(group.map((factor) => FACTOR_WORDS[factor]));
    const which = group.length === 2 ? 'The two' : 'They';
    return `${upper(names)}: ${which.toLowerCase()} moved together, so the log cannot say which one did it.`;
  });
}

/** One pair that shows that pack alone is not enough. */
export function samePackWords({ good, bad, packFactor, differ }: SamePackPair): string {
  const other =
    differ.length === 0
      ? 'nothing else that is written down'
      : listed(differ.map((one) => FACTOR_WORDS[one]));
  return `Pack alone is not enough: pour ${bad} and pour ${good} were both packed ${packFactor.toFixed(2)}, and only ${good} came out good. What differed: ${other}.`;
}

/** What every good casting had. */
export function goodOnlyWords(had: NonNullable<Confounding['goodOnlyWith']>, show: Show): string {
  const with_ = [
    ...(had.leastPack === undefined ? [] : [`packed ${had.leastPack.toFixed(2)} or more`]),
    ...(had.coldestMoldC === undefined
      ? []
      : [`a mold of ${formatTemperature(had.coldestMoldC, show)} or warmer`]),
    ...(had.plugged ? ['a plug'] : []),
  ];
  const pours = `Good castings: ${listed(had.pours)}.`;
  return with_.length === 0 ? pours : `${pours} Every one had this: ${listed(with_)}.`;
}

/** The one thing to change next, or what is to be answered first. */
export function nextPourWords({ asks, change }: NextPour, show: Show): string[] {
  return [...(change === undefined ? [] : [changeWords(change, show)]), ...asks.map((ask) => ASKS[ask])];
}

function changeWords(change: OneChange, show: Show): string {
  const { factor, from, to, basePour, effect } = change;
  const hope =
    effect === undefined
      ? ''
      : ` By the log the skin score would move by ${amount(effect.value, 2)} (${amount(effect.low, 2)} to ${amount(effect.high, 2)}).`;
  return `Change one next time: pour as pour ${basePour}, but ${FACTOR_WORDS[factor]} ${settingWords(factor, to, show)} instead of ${settingWords(factor, from, show)}. ${whyWords(change)}${hope}`;
}

function settingWords(factor: OneChange['factor'], value: number, show: Show): string {
  if (factor === 'opening') return value === 1 ? 'plugged' : 'open';
  return factor === 'packFactor' ? value.toFixed(2) : formatTemperature(value, show);
}

function whyWords({ why, factor, apartFrom = [] }: OneChange): string {
  switch (why) {
    case 'mold-cold':
      return 'The mold was colder than is common.';
    case 'opening-open':
      return 'An open mouth lets the pack out.';
    case 'still-poor':
      return 'The mold was warm, the vents were looked at, the cup was tested, and it came out poor all the same.';
    case 'tell-apart':
      return `That tells ${FACTOR_WORDS[factor]} from ${listed(apartFrom.map((one) => FACTOR_WORDS[one]))}.`;
    case 'try-lighter':
      return 'All is well: try with less foam.';
  }
}

const ASKS: Readonly<Record<AskFirst, string>> = {
  'mold-warmth': 'First: how warm was the mold? Nobody wrote it down.',
  vents: 'First: are the vents open? A blocked vent looks like too little pack.',
  'cup-test': 'First: test a cup today. Old foam looks like too little pack.',
};

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
