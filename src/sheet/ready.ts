import type { PourAsk, PreparedPour } from '../plan';
import { formatGrams, formatTemperature, formatVolume, type Show } from '../units';
import { POUR_RULES, WARMTH_RULES } from '../yield';
import { amount, counted } from '../words/sentence';
import { mixesOf } from './grams';
import { blank, BOX, escaped, tick } from './html';

/** What was told of warmth and mold; the sheet names it as what to reach. */
export type SheetTold = Pick<PourAsk, 'moldC' | 'roomC' | 'ingredientsC' | 'warm' | 'clamp' | 'cups'>;

/** What must be true before A is opened. */
export function readyBlock(prepared: PreparedPour, told: SheetTold, show: Show): string {
  const { warm, moldC, ingredientsC, roomC } = told;
  const aim = warm?.targetTempC ?? moldC;
  const { low, high } = WARMTH_RULES.moldFine;
  const mold =
    aim === undefined
      ? `${formatTemperature(low, show)} to ${formatTemperature(high, show)} is common`
      : `to reach ${formatTemperature(aim, show)}`;
  const within = prepared.warmth.coolDown?.pourWithinMin;
  const parts = ingredientsC ?? roomC;
  const line = `${blank(13)} ${show === 'us' ? '\u00b0F' : '\u00b0C'}`;
  return `<section><h2>Before you start</h2><ul>${[
    'Mold dry, clean, released, empty',
    `Mold ${line} inside, ${mold}${within === undefined ? '' : `; pour within ${amount(within, 2)} min`}`,
    `A and B ${line}${parts === undefined ? '' : `, planned ${formatTemperature(parts, show)}`}; room ${line}`,
    ...strapTicks(prepared),
    ...plugTicks(prepared),
    cupTick(prepared, told, show),
    'Gloves, goggles, exhaust air, mixer, clock',
    'Grams and drum labels read back aloud, A first',
  ]
    .map(tick)
    .join('')}</ul></section>`;
}

function strapTicks({ forces }: PreparedPour): string[] {
  const { clamp, straps } = forces;
  if (clamp === undefined || straps === undefined) return ['Vents open; straps or clamps tight'];
  const each = `${counted(straps.straps, 'strap')} at ${amount(straps.buckleN, 2)} N`;
  const short = straps.holds ? '' : ` (not enough: ${amount(straps.strapsNeeded)})`;
  return [
    `Vents open; ${each}${short}, tightened again after ${amount(POUR_RULES.strapRetighten.value)} min`,
  ];
}

const plugTicks = ({ forces: { plugN } }: PreparedPour): string[] =>
  plugN === undefined || plugN === 0 ? [] : [`Plug in reach, vented, with what holds ${amount(plugN, 2)} N`];

function cupTick(prepared: PreparedPour, { cups }: SheetTold, show: Show): string {
  const mixes = mixesOf(prepared);
  const liquidCm3 = (1000 * mixes[0]!.totalG) / prepared.batch.liquidKgM3;
  const least = cups?.cupCm3 ?? liquidCm3 / (cups?.cupFillShare ?? POUR_RULES.cupFill.value);
  const size = formatVolume(Number(least.toPrecision(2)), show === 'us' ? 'us' : 'metric');
  return `${counted(mixes.length, 'mixing cup')} of ${size}${cups?.cupCm3 === undefined ? ' or more' : ''}`;
}

/** Color a cup, by mass; drops are a convenience. */
export function colorBlock(prepared: PreparedPour): string {
  const { color, batch } = prepared;
  if (color === undefined) return '';
  const share = mixesOf(prepared)[0]!.totalG / batch.totalG;
  const several = mixesOf(prepared).length > 1 ? ', each cup' : '';
  const items = color.items.map(
    ({ name, massG, drops }) =>
      `${escaped(name)} <b>${formatGrams(massG * share, COLOR_STEP_G)}</b> (${amount(Math.round(drops * share))} drops)`,
  );
  return `<section><h2>Color into B${several}</h2><p>${items.join(', ')}</p></section>`;
}

/** Color is weighed on a finer scale than the parts. Chosen here. */
const COLOR_STEP_G = 0.01;

/** Blanks for what only the pour can tell; the next batch learns from them. */
export const WEIGH_BACK = `<section><h2>Weigh back</h2>${[
  ['A weighed', 'g'],
  ['B weighed', 'g'],
  ['Left in the cup', 'g'],
  ['Trimmed off', 'g'],
  ['Casting', 'g'],
]
  .map(([what, unit]) => `<div class="back"><span>${what}</span><span>${blank(24)}&#160;${unit}</span></div>`)
  .join(
    '',
  )}<div class="back"><span>${BOX}filled</span><span>${BOX}short</span><span>skin 1 to 5 ${blank(8)}</span></div></section>`;
