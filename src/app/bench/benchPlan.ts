import type { BenchPlan, PlannedTime } from '../../job/benchState';
import { POUR_RULES, shiftTime, type FoamCard, type ShiftedTime } from '../../yield';
import { amount } from '../../words/sentence';
import { freeFirstWords } from '../../words/sheetMoldWords';
import type { PourOnPage } from '../../worker/pour';
import { colorOfCupG, cupAtBench } from './cupAtBench';
import { cardUsed } from '../ticket/foamState';
import { openingNow } from '../ticket/now';
import { valueIn } from '../ticket/readField';
import type { Ticket } from '../ticket/state';

/** What the bench has to know of the plan as it stands: grams, times with their sources, and what is freed first. */
export function benchPlan(ticket: Ticket, pour: PourOnPage, foams: readonly FoamCard[]): BenchPlan {
  const { batch, cavityCm3, cups, times } = pour;
  const { exotherm } = times;
  const cup = cupAtBench(pour, valueIn(ticket.fields, 'bInCup'));
  const opening = openingOf(ticket);
  const places = openingNow(ticket).answer?.places;
  const freeFirst = places === undefined ? undefined : freeFirstWords(places, 'both');
  const pourBy = pourByOf(ticket, pour);
  const rise = riseOf(ticket, foams);
  return {
    partAG: cups.partAG,
    partBG: cups.partBG,
    totalG: cups.totalG,
    stepG: batch.stepG,
    packFactor: batch.packFactor,
    cavityCm3: cavityCm3.value,
    ...colorOf(pour),
    cups: cups.cups.length,
    cupAG: cup.partAG,
    scaleG: cup.totalG + colorOfCupG(pour),
    ...(pourBy === undefined ? {} : { pourBy }),
    ...(rise === undefined ? {} : { rise }),
    open: openOf(ticket, pour),
    ...(opening === undefined ? {} : { opening }),
    ...(exotherm.known ? { coreC: { low: exotherm.coreC.low, high: exotherm.coreC.high } } : {}),
    ...(freeFirst === undefined ? {} : { freeFirst }),
  };
}

/** Of all cups: it is weighed in, and found again in the casting. */
function colorOf(pour: PourOnPage): { colorG?: number } {
  const colorG = colorOfCupG(pour) * pour.cups.cups.length;
  return colorG > 0 ? { colorG } : {};
}

/** Whether the opening is closed after the pour, as far as anybody has said so. */
export function openingOf({ fields, pouring: { facts } }: Ticket): BenchPlan['opening'] {
  const plugCm2 = valueIn(fields, 'plugArea');
  if (plugCm2 !== undefined) return plugCm2 > 0 ? 'plug' : 'open';
  return facts.plugHeld === 'yes' || facts.plugVented === 'yes' ? 'plug' : undefined;
}

/** All poured before it creams: the early end of the cream time, less the margin, as the printed sheet has it. It is told too where mixing alone leaves no time to pour. */
function pourByOf(ticket: Ticket, { times: { window } }: PourOnPage): PlannedTime | undefined {
  const cream = window?.creamS ?? shiftedBlow(ticket, valueIn(ticket.fields, 'cream'));
  if (cream === undefined) return undefined;
  const { low, value, from } = cream;
  return {
    s: Math.max(0, low - POUR_RULES.pourMargin.value),
    from,
    ...heldAt(ticket, partsC(ticket)),
    by: `cream time ${amount(value, 2)} s${low < value ? `, ${amount(low, 2)} s at the least` : ''}, less ${amount(POUR_RULES.pourMargin.value)} s (${POUR_RULES.pourMargin.from})`,
  };
}

/** As typed in Mold, else of the shop's card, worked out for the temperature of the parts. */
function riseOf(ticket: Ticket, foams: readonly FoamCard[]): PlannedTime | undefined {
  const typed = valueIn(ticket.fields, 'riseTime');
  if (typed !== undefined) return { s: typed, from: 'given', by: 'as typed in Mold' };
  const card = foams.find(({ name }) => name.trim() === cardUsed(ticket.foam)?.name);
  const rise = shiftedBlow(ticket, card?.riseS);
  return rise === undefined
    ? undefined
    : { s: rise.value, from: rise.from, ...heldAt(ticket, partsC(ticket)) };
}

/** A time of the sheet for the warmth of the parts; with one temperature missing there is nothing to shift by. */
function shiftedBlow(ticket: Ticket, timeS: number | undefined): ShiftedTime | undefined {
  const atC = valueIn(ticket.fields, 'sheetTemp');
  const nowC = partsC(ticket);
  if (timeS === undefined) return undefined;
  const isBoth = atC !== undefined && nowC !== undefined;
  const shifted = shiftTime({ timeS, ...(isBoth ? { atC, nowC } : SAME), of: 'blow' });
  return shifted.ok ? shifted.value : undefined;
}

/** Any figure would do: it is shifted to itself. */
const SAME = { atC: 23, nowC: 23 };

/** The card's time, else the common range: its end is waited for, its beginning told. */
function openOf(
  ticket: Ticket,
  { times: { openMin, openCommonMin } }: PourOnPage,
): NonNullable<BenchPlan['open']> {
  if (openMin === undefined)
    return {
      s: 60 * openCommonMin.high,
      earliestS: 60 * openCommonMin.low,
      from: 'assumed',
      by: 'common practice, no source',
    };
  const nowC = valueIn(ticket.fields, 'moldTemp') ?? valueIn(ticket.fields, 'pourRoom');
  return { s: 60 * openMin.value, from: openMin.from, ...heldAt(ticket, nowC) };
}

const partsC = ({ fields }: Ticket): number | undefined =>
  valueIn(fields, 'ingredients') ?? valueIn(fields, 'pourRoom');

/** The temperature that a time of the sheet holds at, and for which it was worked out. */
function heldAt({ fields }: Ticket, nowC: number | undefined): { at: string } {
  const atC = valueIn(fields, 'sheetTemp');
  if (atC === undefined) return { at: 'temperature not said' };
  if (nowC === undefined || nowC === atC) return { at: `at ${amount(atC, 3)} °C` };
  return { at: `for ${amount(nowC, 3)} °C, from ${amount(atC, 3)} °C` };
}
