import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkLearn } from './checkLearn';
import { LEARN_RULES as R } from './rules';

/** An open riser and what was trimmed off it. */
export interface TrimmedRiser {
  sprueMm: number;
  sprueLengthMm: number;
  riserTrimG: number;
  moldedKgM3: number;
  /** From full to still. */
  riseS: number;
  /** In the mold while it flowed. */
  gaugeKPa: number;
}

/**
 * Apparent viscosity of the foam near gel from what left through the riser, Pa s: pi D^4 p t rho / (128 L m) (Hagen and Poiseuille,
 * turned around). Only an order of magnitude: the range is 4 times either way, since neither the pressure nor the time of flow is
 * known to better than 2 times. A
 * riser without trim says nothing: refused by its bounds.
 */
export function riserViscosityPaS(riser: TrimmedRiser): Outcome<Estimate> {
  const { sprueMm, sprueLengthMm, riserTrimG, moldedKgM3, riseS, gaugeKPa } = riser;
  const sound = checkLearn({ sprueMm, sprueLengthMm, riserTrimG, moldedKgM3, riseS, gaugeKPa });
  if (!sound.ok) return sound;
  const value =
    (Math.PI * (sprueMm / 1000) ** 4 * 1000 * gaugeKPa * riseS * moldedKgM3) /
    (128 * (sprueLengthMm / 1000) * (riserTrimG / 1000));
  const times = R.riserFactor.value;
  return good({ value, low: value / times, high: value * times, from: 'learned' });
}
