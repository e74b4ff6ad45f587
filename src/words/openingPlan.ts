import type { Demold, OpeningPlan } from '../plan';
import type { OpeningVerdict } from '../yield';
import { formatLength, formatQuantity, formatVolume, type Show } from '../units';
import { leastWidth, mostWidth } from './roundedWidth';
import { amount, counted, percent } from './sentence';
import { smallVolume as few } from './smallVolume';

/** What a level filling says of foam: stands wherever trapped air is shown. */
export const LOWER_BOUND = 'filled to a level, a lower bound for foam, which rises as a dome';

export const VERDICT_WORDS: Readonly<Record<OpeningVerdict, string>> = {
  'far too wide': 'far too wide: the foam runs out of it and the skin is bad',
  'too narrow to pour in time': 'too narrow to pour in time',
  'wider than advised': 'wider than advised',
  'time not checked': 'not too wide; whether it pours in time is not checked',
  fits: 'its width fits: wide enough to pour in time, narrow enough for the skin',
};

const PLACED_BY_WORDS: Readonly<Record<OpeningPlan['opening']['placedBy'], string>> = {
  given: 'where you said',
  base: 'in the middle of the base',
  summit: 'at the highest point',
};

/** How the opening came to its place, and how far off that is from where it was wanted. */
export function placedWords({ opening, findings }: OpeningPlan, show: Show): string {
  const movedMm = findings.find(({ code }) => code === 'OPENING_OFF_SURFACE')?.values.movedMm;
  return typeof movedMm === 'number'
    ? `moved ${formatLength(Number(movedMm.toPrecision(3)), show)} from where you said`
    : PLACED_BY_WORDS[opening.placedBy];
}

const NOT_KNOWN_WORDS = {
  liquidCm3: 'how much is poured',
  withinS: 'how long there is for it',
  mixPaS: 'the viscosity of the mix',
} as const;

const COMMON = 'common practice, no source';

const MOST_BY_WORDS = {
  'share of the section': `share of the section, ${COMMON}`,
  'bald area': `bald spot on the casting, ${COMMON}`,
  'back pressure': 'a quarter of the pressure held back, engineering choice',
} as const;

/** "20.3 to 39.4 mm ...", with the rule that sets its upper end and where that comes from. */
export function bandWords({ opening: { band } }: OpeningPlan, show: Show): string {
  const { leastMm, mostMm, mostBy, notKnown, isEmpty } = band;
  const source = `(upper end: ${MOST_BY_WORDS[mostBy]})`;
  if (notKnown.length > 0)
    return `at most ${mostWidth(mostMm, show)} ${source}; the least is not known: ${notKnown.map((name) => NOT_KNOWN_WORDS[name]).join(', ')}`;
  if (leastMm === undefined)
    return `none: no width pours in time; at most ${mostWidth(mostMm, show)} ${source}`;
  return isEmpty
    ? `none: at least ${leastWidth(leastMm, show)} to pour in time, at most ${mostWidth(mostMm, show)} ${source}`
    : `${leastWidth(leastMm, show)} to ${mostWidth(mostMm, show)} ${source}`;
}

/** Ways out of an empty band, one line each. */
export function offerWords({ opening: { offers } }: OpeningPlan, show: Show): string[] {
  if (offers === undefined) return [];
  const { plug, openings, slower } = offers;
  return [
    ...(plug === undefined
      ? []
      : [
          `pour through a mouth of ${leastWidth(plug.mouthMm, show)} and close it at once with a vented plug that is held down: the foam pushes on it with about ${amount(plug.forceN, 2)} N (${formatQuantity('pressure', Number(plug.gaugeKPa.toPrecision(2)), show)}), as ${amount(plug.likeKg, 2)} kg would weigh`,
        ]),
    openings === 'none'
      ? 'several openings do not pour in time within the limits either'
      : `${counted(openings.count, 'opening')} of ${leastWidth(openings.leastMm, show)} to ${mostWidth(openings.mostMm, show)} each, ${amount(openings.pouring)} poured into at the same time`,
    ...(slower === undefined
      ? []
      : [
          `a slower or cooler mix: ${mostWidth(slower.atMm, show)} pour it in ${amount(slower.neededS, 3)} s, ${amount(slower.longerS, 3)} s more than there are`,
        ]),
  ];
}

/** What an opening that stays open keeps of the pressure: only where the foam's viscosity was learned. */
export function keptWords({ opening: { kept, idealKPa }, findings }: OpeningPlan, show: Show): string[] {
  if (kept === undefined || idealKPa === undefined) return [];
  const kPa = (value: number): string => formatQuantity('pressure', Number(value.toPrecision(2)), show);
  const isWasted = findings.some(({ code }) => code === 'PACK_LOST_AT_MOUTH');
  const rest = isWasted
    ? ': the rest of the pack is wasted, it leaves through the opening; close it with a vented plug that is held down, or pack less'
    : kept.gaugeKPa < idealKPa
      ? `, ${percent(kept.gaugeKPa / idealKPa)} of it; the rest leaves through the opening`
      : '';
  return [
    `left open it keeps ${kPa(kept.gaugeKPa)} of the ${kPa(idealKPa)} that this pack makes in a closed, vented mold${rest}`,
  ];
}

/** What is poured and what stays in as the mold stands. */
export function holdWords({ filling, opening: { liquidCm3 } }: OpeningPlan, show: Show): string {
  const holds = `so the mold holds ${formatVolume(filling.holdCm3, show)} of liquid before it runs over the lowest point of the opening`;
  return liquidCm3 === undefined ? holds : `${holds}; ${formatVolume(liquidCm3, show)} are poured`;
}

/** Air of today's way up, and what the advised vents leave of it. */
export function airWords({ filling, places }: OpeningPlan, show: Show): string {
  const { trappedCm3, leftCm3, traps, vents, pinholes } = filling;
  const small = pinholes.count === 0 ? '' : `, and ${counted(pinholes.count, 'pinhole')}`;
  if (traps.length === 0) return `no pocket that asks for a vent${small} (${LOWER_BOUND})`;
  const numbers = places.filter(({ kind }) => kind === 'vent advised').map(({ n }) => amount(n));
  const cure =
    vents.length === 0
      ? 'no vent was found that frees it'
      : `with ${vents.length === 1 ? 'vent' : 'vents'} ${numbers.join(', ')} ${leftCm3 === 0 ? 'none stays' : `${few(leftCm3, show)} stay`}`;
  return `${few(trappedCm3.value, show)} stay in ${counted(traps.length, 'high spot')}${small} (${LOWER_BOUND}); ${cure}`;
}

/** Does it come out, and how. */
export function outWords(demold: Demold, broken: number | undefined, show: Show): string[] {
  const { worst, allowedStretch, slit, locked, caught } = demold;
  const first =
    worst.stretch <= 0
      ? 'comes out squeezed a little, without stretching the rubber'
      : `the rubber must stretch by ${percent(worst.stretch)} where it is tightest, ${letWords(worst.stretch, allowedStretch, broken)}`;
  const free = locked.length + caught.length;
  return [
    first,
    ...(slit === undefined ? [] : [slitWords(slit, show)]),
    ...(free === 0 ? [] : [`free ${counted(free, 'part')} first, see above`]),
  ];
}

/** A rubber of which nothing is known: what a usual one, a stiff and a soft one are let. */
function letWords(
  stretch: number,
  { from, value, low, high }: Demold['allowedStretch'],
  broken?: number,
): string {
  if (from !== 'assumed') {
    const side =
      stretch <= value
        ? 'within'
        : broken !== undefined && stretch > broken
          ? 'over its break, and over'
          : 'over';
    return `${side} the ${percent(value)} it is let (a third of its break)`;
  }
  if (stretch <= low) return `within what even a stiff rubber is let (${percent(low)})`;
  if (stretch > high) return `over what even a soft rubber is let (${percent(high)})`;
  const usual = `for usual rubber (${percent(value)})`;
  return stretch <= value
    ? `within ${usual}, over for a stiff one (${percent(low)}): say which it is by its elongation at break`
    : `over ${usual}, within for a soft one (${percent(high)}): say which it is by its elongation at break`;
}

/** Its line runs past the last tight place; by the girths alone a shorter or a longer one would do. */
function slitWords({ lengthMm, line }: NonNullable<Demold['slit']>, show: Show): string {
  const long = (mm: number): string => formatLength(Number(mm.toPrecision(2)), show);
  const end = 'end it in a round hole, so that it does not run on';
  if (line === undefined)
    return `slit the rubber past the last tight place, for ${long(lengthMm)} at least; no line for it was found: where a seam is cheap to clean; ${end}`;
  const runMm = Math.hypot(...line.fromMm.map((c, k) => c - line.toMm[k]!));
  const girths =
    lengthMm > runMm ? ` and on, ${long(lengthMm)} in all` : `, ${long(runMm)}, past the last tight place`;
  const off = line.isClear ? '' : ', though it passes a thin place';
  const tied = line.isTied ? ' (other sides are as good)' : '';
  return `slit the rubber from ${placeText(line.fromMm, show)} to ${placeText(line.toMm, show)}${girths}${off}${tied}; ${end}`;
}

/** A place in the axes of the placed piece, whole millimeters or hundredths of an inch. */
export function placeText(at: readonly number[], show: Show): string {
  const inMm = at.map((c) => plain(Math.round(c))).join(', ');
  const inIn = at.map((c) => plain(Number((c / 25.4).toFixed(2)))).join(', ');
  if (show === 'us') return `(${inIn}) in`;
  return show === 'metric' ? `(${inMm}) mm` : `(${inMm}) mm, (${inIn}) in`;
}

/** Never "-0", and with a plain minus: such a place can be typed again. */
const plain = (value: number): string => String(value + 0);

/** Which way is up, in words where it is an axis. */
export function upWords(up: readonly number[]): string {
  const axis = up.findIndex((c) => Math.abs(c) > 0.9999);
  if (axis < 0) return `(${up.map((c) => plain(Number(c.toFixed(2)))).join(', ')})`;
  const name = `${up[axis]! > 0 ? '+' : '-'}${'xyz'[axis]}`;
  return `${name}, ${WAY_WORDS[name]}`;
}

const WAY_WORDS: Readonly<Record<string, string>> = {
  '+x': 'its right side up',
  '-x': 'its left side up',
  '+y': 'its face up',
  '-y': 'its back up',
  '+z': 'as the sculpt stands',
  '-z': 'upside down, its base up',
};
