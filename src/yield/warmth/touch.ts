import { finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { checkWarmth } from './checkWarmth';
import { WARMTH_RULES as R } from './rules';

/** Cautions by key; the words for them are the words' business. */
export type WarmthCaution = 'heat-gun' | 'measure-then-touch';

/** Look when a surface gets, or is meant to get, over 50 C, Stop over 60 C. */
export function surfaceFindings(surfaceTempC: number): Problem[] {
  const [lookC, stopC] = [R.surfaceLook.value, R.surfaceStop.value];
  if (surfaceTempC <= lookC) return [];
  return [
    finding('WARM_SURFACE_HOT', surfaceTempC > stopC ? 'stop' : 'look', { surfaceTempC, lookC, stopC }),
  ];
}

/** `heat-gun` when one is used; `measure-then-touch` then too, and wherever a surface gets warm enough to burn. */
export function warmthCautions(hottestC: number, isHeatGun: boolean): WarmthCaution[] {
  if (isHeatGun) return ['heat-gun', 'measure-then-touch'];
  return hottestC > R.burnHours.value ? ['measure-then-touch'] : [];
}

/** How long a touch takes to burn, at the most. */
export type BurnsWithin = 'seconds' | 'a minute' | 'hours' | 'not known to burn';

/**
 * How soon a surface burns bare skin held on it: over 60 C in about 5 s, over 51 C in about a minute, over 44 C within
 * hours. The temperatures are from memory, not verified; the times are those that ASTM C1055 and ISO 13732-1 reckon with.
 * Rubber gives its heat off more slowly than metal, so this errs on the safe side. Error: INPUT_OUT_OF_BOUNDS.
 */
export function burnsWithin(surfaceTempC: number): Outcome<BurnsWithin> {
  const checked = checkWarmth({ surroundTempC: surfaceTempC });
  if (!checked.ok) return checked;
  if (surfaceTempC >= R.burnSeconds.value) return good('seconds');
  if (surfaceTempC >= R.burnMinute.value) return good('a minute');
  return good(surfaceTempC >= R.burnHours.value ? 'hours' : 'not known to burn');
}
