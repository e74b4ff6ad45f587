import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import type { BatchAssumption } from '../settleBatch';
import { noteIn } from '../settleBatch';
import { checkPour } from './checkPour';
import { POUR_RULES as R } from './rules';

/**
 * Tension in each of n straps around a round mold that opens along its axis plane, N: p D h / (2 n), a thin ring cut in
 * half. D is the chord of the cavity across which the pressure acts, not of the jacket.
 */
export function ringStrapN({
  gaugeKPa,
  chordMm,
  strapHeightMm,
  straps,
}: {
  gaugeKPa: number;
  chordMm: number;
  strapHeightMm: number;
  straps: number;
}): Outcome<number> {
  const sound = checkPour({ gaugeKPa, chordMm, strapHeightMm, straps });
  // kPa x mm2 are mN.
  return sound.ok ? good((gaugeKPa * chordMm * strapHeightMm) / 1000 / (2 * straps)) : sound;
}

/** Share of a strap's tension left beyond so many degrees of wrap: exp(-mu theta), the capstan equation (Euler). */
export function tensionLeftShare({
  strapWrapDegrees,
  strapFriction = R.strapFriction.value,
}: {
  strapWrapDegrees: number;
  strapFriction?: number;
}): Outcome<number> {
  const sound = checkPour({ strapWrapDegrees, strapFriction });
  return sound.ok ? good(Math.exp(-strapFriction * (strapWrapDegrees / 180) * Math.PI)) : sound;
}

/** What to tighten a strap to so that `strapN` is left after it has crept, N: T / (1 - loss). */
export function pretensionN({
  strapN,
  strapLossShare = R.strapLoss.value,
}: {
  strapN: number;
  strapLossShare?: number;
}): Outcome<number> {
  const sound = checkPour({ strapN, strapLossShare });
  return sound.ok ? good(strapN / (1 - strapLossShare)) : sound;
}

/** Tension of a strap around a round jacket that carries a band of that width, N: p r x pitch (hoop of a thin ring). */
export function hoopStrapN({ gaugeKPa, radiusMm, pitchMm }: Hoop & { pitchMm: number }): Outcome<number> {
  const sound = checkPour({ gaugeKPa, radiusMm, pitchMm });
  return sound.ok ? good((gaugeKPa * radiusMm * pitchMm) / 1000) : sound;
}

/** The widest pitch such a strap carries, mm: T / (p r). A mold without pressure takes any pitch: refused. */
export function largestPitchMm({ gaugeKPa, radiusMm, strapN }: Hoop & { strapN: number }): Outcome<number> {
  const sound = checkPour({ peakKPa: gaugeKPa, radiusMm, strapN });
  return sound.ok ? good((1000 * strapN) / (gaugeKPa * radiusMm)) : sound;
}

export interface Hoop {
  gaugeKPa: number;
  radiusMm: number;
}

/** Loops over the parting. `strapN` is what one is tightened to at its buckle; left out, that of a hand cam buckle. */
export interface StrapSettings {
  strapN?: number;
  strapFriction?: number;
  /** Wrap between the buckle and the crossing farthest from it. */
  strapWrapDegrees?: number;
  strapLossShare?: number;
  /** As many as there are; left out, as many as it takes. */
  straps?: number;
}

export interface StrapPlan {
  /** How many loops it takes at that tension. */
  strapsNeeded: number;
  /** How many are used: those there are, else those needed. */
  straps: number;
  /** What each crossing of the parting must hold. */
  crossingN: number;
  /** What each is tightened to at its buckle, so that friction and creep leave that much at the far crossing. */
  buckleN: number;
  /** What one can be tightened to. */
  strapN: number;
  holds: boolean;
  assumptions: BatchAssumption[];
}

/**
 * Loops that cross the parting twice and hold a clamp force together: n = ceil(F / (2 T)), T what is left of a strap beyond
 * its corners (exp(-mu theta)) and after an hour of creep. Tighten, wait 5 min, tighten again, then pour; buckles on
 * alternate sides. Errors: INPUT_OUT_OF_BOUNDS, STRAPS_TOO_MANY.
 */
export function planStraps(clampN: number, settings: StrapSettings = {}): Outcome<StrapPlan> {
  const sound = checkPour({ forceN: clampN }, settings);
  if (!sound.ok) return sound;
  const assumptions: BatchAssumption[] = [];
  const note = noteIn(assumptions);
  const strapN = settings.strapN ?? note('strap_tension', R.strapTension);
  const strapFriction = settings.strapFriction ?? note('strap_friction', R.strapFriction);
  const strapWrapDegrees = settings.strapWrapDegrees ?? note('strap_wrap_degrees', R.strapWrap);
  const lossShare = settings.strapLossShare ?? note('strap_loss', R.strapLoss);
  const left = tensionLeftShare({ strapWrapDegrees, strapFriction });
  if (!left.ok) return left;
  const keptShare = left.value * (1 - lossShare);
  // A force that is a whole number of straps but for the last digit is no reason for one more.
  const strapsNeeded = Math.max(1, Math.ceil((clampN / (2 * strapN * keptShare)) * (1 - 1e-12)));
  if (strapsNeeded > MOST_STRAPS) return bad('STRAPS_TOO_MANY', { clampN, strapN, strapsNeeded });
  const straps = settings.straps ?? strapsNeeded;
  const crossingN = clampN / (2 * straps);
  const buckleN = crossingN / keptShare;
  const holds = straps >= strapsNeeded;
  return good({ strapsNeeded, straps, crossingN, buckleN, strapN, holds, assumptions });
}

/** The largest number of straps that can be typed, too. */
const MOST_STRAPS = 1000;
