import type { Estimate } from '../../estimate';
import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { KELVIN_AT_0_C } from '../../units';
import type { BatchAssumption } from '../settleBatch';
import { noteIn } from '../settleBatch';
import { checkPour } from './checkPour';
import { POUR_RULES as R } from './rules';

/** `blow`: cream and rise. `gel`: string, tack-free, opening the mold. */
export type Reaction = 'blow' | 'gel';

/**
 * How many times faster a reaction is at `nowC` than at `atC`: exp(Ea/R (1/T1 - 1/T2)), Arrhenius, with 27.04 kJ/mol for blowing
 * and 35.14 for gelling (one published system; a catalyzed mix may differ).
 */
export const quickening = ({ atC, nowC, of }: { atC: number; nowC: number; of: Reaction }): number =>
  Math.exp(
    ((1000 * (of === 'gel' ? R.gelActivation : R.blowActivation).value) / R.gasConstant.value) *
      (1 / (atC + KELVIN_AT_0_C) - 1 / (nowC + KELVIN_AT_0_C)),
  );

export interface ShiftedTime extends Estimate {
  /** What "halves in 10 degrees" would say, and how far that is off ours: below 0 where it is shorter. */
  folk: number;
  folkDifferenceShare: number;
}

/**
 * A time of the data sheet at another temperature, in the unit it was given in. The range is that of 1.4 to 2.0 times in 10 K,
 * and never leaves out the value. Errors: INPUT_OUT_OF_BOUNDS.
 */
export function shiftTime({
  timeS,
  atC,
  nowC,
  of,
}: {
  timeS: number;
  atC: number;
  nowC: number;
  of: Reaction;
}): Outcome<ShiftedTime> {
  const sound = checkPour({ timeS, statedAtC: atC, nowC });
  if (!sound.ok) return sound;
  const value = timeS / quickening({ atC, nowC, of });
  const byRule = (in10K: number): number => timeS / in10K ** ((nowC - atC) / 10);
  const ends = [value, byRule(R.quickening.low), byRule(R.quickening.high)];
  const folk = byRule(R.folkQuickening.value);
  return good({
    value,
    low: Math.min(...ends),
    high: Math.max(...ends),
    from: atC === nowC ? 'data-sheet' : 'assumed',
    folk,
    folkDifferenceShare: folk / value - 1,
  });
}

/** Cream time as stated, with the temperature it holds at and that of the ingredients; hands are what the rest is about. */
export interface PourWindowInputs {
  creamS: number;
  atC?: number;
  nowC?: number;
  mixS?: number;
  carryS?: number;
  marginS?: number;
}

export interface PourWindow {
  /** What is left to pour in; its low end may be 0. */
  pourWindowS: Estimate;
  creamS: ShiftedTime;
  assumptions: BatchAssumption[];
}

/**
 * What is left for pouring, s: cream time, shifted to the ingredients' temperature, less mixing, carrying and a margin. A
 * warm day shortens it. Errors: POUR_WINDOW_NONE when nothing is left, INPUT_OUT_OF_BOUNDS.
 */
export function pourWindow({
  creamS,
  atC,
  nowC,
  mixS,
  carryS,
  marginS,
}: PourWindowInputs): Outcome<PourWindow> {
  const sound = checkPour({ creamS }, { mixS, carryS, marginS });
  if (!sound.ok) return sound;
  const assumptions: BatchAssumption[] = [];
  const note = noteIn(assumptions);
  const shift = shiftFrom({ atC, nowC });
  const cream = shiftTime({ timeS: creamS, ...shift, of: 'blow' });
  if (!cream.ok) return cream;
  const mixing = mixS ?? note('mixing_time', R.mixTime);
  const carrying = carryS ?? note('carrying_time', R.carryTime);
  const takenS = mixing + carrying + (marginS ?? note('pour_margin', R.pourMargin));
  const { value, low, high, from } = cream.value;
  if (value <= takenS) return bad('POUR_WINDOW_NONE', { creamS: value, takenS, mixS: mixing });
  const window = { value: value - takenS, low: Math.max(0, low - takenS), high: high - takenS, from };
  return good({ pourWindowS: window, creamS: cream.value, assumptions });
}

/** When the mold may be opened, min: the stated time shifted by the gelling reaction. Skin, not core, decides: touch first. */
export function openTimeMin({
  openMin,
  atC,
  nowC,
}: {
  openMin: number;
  atC?: number;
  nowC?: number;
}): Outcome<ShiftedTime> {
  const sound = checkPour({ openMin });
  return sound.ok ? shiftTime({ timeS: openMin, ...shiftFrom({ atC, nowC }), of: 'gel' }) : sound;
}

/** With one temperature missing there is nothing to shift by. */
const shiftFrom = ({
  atC,
  nowC,
}: {
  atC: number | undefined;
  nowC: number | undefined;
}): { atC: number; nowC: number } => {
  const same = nowC ?? atC ?? ROOM_C;
  return atC === undefined || nowC === undefined ? { atC: same, nowC: same } : { atC, nowC };
};

/** Any figure would do: it is shifted to itself. */
const ROOM_C = 23;
