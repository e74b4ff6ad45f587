import { finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { RULES } from '../rules';
import { checkSilicone } from './checkSilicone';

/**
 * What an unthickened rubber leaves on an upright wall, mm, at `heightMm` below the upper edge after `drainS`:
 * sqrt(mu z / (rho g t)) (Jeffreys 1930, from memory, not verified). It is why such a coat stays under half a millimeter.
 * Holds while the rubber has not begun to set. Error: INPUT_OUT_OF_BOUNDS.
 */
export function drainedFilmMm({
  viscosityPaS,
  heightMm,
  densityKgM3,
  drainS,
}: {
  viscosityPaS: number;
  heightMm: number;
  densityKgM3: number;
  drainS: number;
}): Outcome<number> {
  const sound = checkSilicone({ viscosityPaS, heightMm, densityKgM3, drainS });
  if (!sound.ok) return sound;
  const weightPaPerM = densityKgM3 * RULES.gravity.value;
  return good(1000 * Math.sqrt((viscosityPaS * heightMm) / 1000 / (weightPaPerM * drainS)));
}

/**
 * The thickest coat of a thickened rubber that stays on an upright wall, mm: yield stress / (density x g), the balance of
 * weight and shear at the wall. Derived. Error: INPUT_OUT_OF_BOUNDS.
 */
export function standingCoatMm({
  yieldStressPa,
  densityKgM3,
}: {
  yieldStressPa: number;
  densityKgM3: number;
}): Outcome<number> {
  const sound = checkSilicone({ yieldStressPa, densityKgM3 });
  return sound.ok ? good((1000 * yieldStressPa) / (densityKgM3 * RULES.gravity.value)) : sound;
}

/** The yield stress, Pa, of a paste that stays so thick on an upright stick for a minute. Error: INPUT_OUT_OF_BOUNDS. */
export function yieldStressFromStickPa({
  staysMm,
  densityKgM3,
}: {
  staysMm: number;
  densityKgM3: number;
}): Outcome<number> {
  const sound = checkSilicone({ staysMm, densityKgM3 });
  return sound.ok ? good((densityKgM3 * RULES.gravity.value * staysMm) / 1000) : sound;
}

/** Look when a coat is brushed thicker than what stays on an upright wall. */
export const sagFindings = ({ coatMm, staysMm }: { coatMm: number; staysMm: number }): Problem[] =>
  coatMm <= staysMm ? [] : [finding('COAT_SAGS', 'look', { coatMm, staysMm })];
