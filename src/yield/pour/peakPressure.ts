import type { Estimate } from '../../estimate';
import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { RULES } from '../rules';
import { checkPour } from './checkPour';
import { idealGasGaugeKPa } from './pressure';
import type { PackedFoam } from './pressure';
import { POUR_RULES as R } from './rules';

/**
 * What the ideal-gas figure leaves out, by key; the words are the words' business. The first three drive the real pressure
 * above it, the last two below.
 */
export const PRESSURE_CAVEATS = [
  'gas-kept-in',
  'unvented-air',
  'hot-core',
  'open-mouth',
  'gas-dissolved',
] as const;
export type PressureCaveat = (typeof PRESSURE_CAVEATS)[number];

/** A peak that was measured in this mold with this foam, and the pack it was measured at. */
export interface MeasuredPeak {
  packFactor: number;
  peakKPa: number;
}

export interface PeakPressure extends Estimate {
  /** What a clamp is made for, before the safety factor: the figure, but not under 20 kPa unless a peak was measured. */
  designKPa: number;
  caveats: readonly PressureCaveat[];
}

/**
 * Peak gauge pressure, kPa, to plan a clamp with: the ideal-gas figure, a factor of two either way, or a measured peak
 * carried to this pack in the proportion of the ideal-gas figures, 25 % either way. Errors as `idealGasGaugeKPa`; the pack of
 * a measured peak must be above 1.
 */
export function peakPressure(foam: PackedFoam, measured?: MeasuredPeak): Outcome<PeakPressure> {
  const ideal = idealGasGaugeKPa(foam);
  if (!ideal.ok) return ideal;
  if (measured === undefined) {
    const value = ideal.value;
    const factor = R.pressureFactor.value;
    const designKPa = Math.max(value, RULES.minClampPressure.value);
    const range = { low: value / factor, high: value * factor };
    return good({ value, ...range, from: 'assumed', designKPa, caveats: PRESSURE_CAVEATS });
  }
  const { packFactor, peakKPa } = measured;
  const sound = checkPour({ peakKPa });
  if (!sound.ok) return sound;
  const then = idealGasGaugeKPa({ ...foam, packFactor });
  if (!then.ok) return then;
  if (then.value <= 0) {
    return bad('INPUT_OUT_OF_BOUNDS', { ...MEASURED_PACK, value: packFactor });
  }
  const value = peakKPa * (ideal.value / then.value);
  const doubt = R.measuredPeakDoubt.value;
  const range = { low: value * (1 - doubt), high: value * (1 + doubt) };
  return good({ value, ...range, from: 'given', designKPa: value, caveats: MEASURED_CAVEATS });
}

const MEASURED_PACK = { input: 'measuredPackFactor', low: 1.01, high: RULES.packFactor.high, unit: '' };

/** A measured peak holds for that mold with its vents as they were. */
const MEASURED_CAVEATS: readonly PressureCaveat[] = ['unvented-air', 'open-mouth'];
