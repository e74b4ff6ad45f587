import { bad, finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { RULES } from '../rules';
import { checkSilicone } from './checkSilicone';
import { SILICONE_BOUNDS, SILICONE_RULES } from './rules';

/**
 * How many times its volume a mix swells to under vacuum: 1 + air x (room pressure / pressure - 1), the stirred-in air at
 * constant temperature, none of it leaving. 4.15 for 10 % of air at 3.12 kPa. Derived from Boyle's law. Error:
 * INPUT_OUT_OF_BOUNDS.
 */
export function frothRatio({
  pressureKPa,
  entrainedAirShare = SILICONE_RULES.entrainedAir.value,
  ambientKPa = RULES.standardPressure.value,
}: {
  /** Absolute. */
  pressureKPa: number;
  entrainedAirShare?: number;
  ambientKPa?: number;
}): Outcome<number> {
  const sound = checkSilicone({ pressureKPa, entrainedAirShare, ambientKPa });
  if (!sound.ok) return sound;
  if (pressureKPa > ambientKPa) return aboveAmbient('pressureKPa', pressureKPa, ambientKPa);
  return good(1 + entrainedAirShare * (ambientKPa / pressureKPa - 1));
}

/**
 * Absolute pressure, kPa, from what a vacuum gauge reads below the room's. Where the air is thinner the gauge of an equally
 * good vacuum reads less: only the absolute pressure says how good it is. Error: INPUT_OUT_OF_BOUNDS.
 */
export function absolutePressureKPa({
  vacuumKPa,
  ambientKPa = RULES.standardPressure.value,
}: {
  vacuumKPa: number;
  ambientKPa?: number;
}): Outcome<number> {
  const sound = checkSilicone({ vacuumKPa, ambientKPa });
  if (!sound.ok) return sound;
  const absoluteKPa = ambientKPa - vacuumKPa;
  const { low } = SILICONE_BOUNDS.pressureKPa;
  return absoluteKPa >= low ? good(absoluteKPa) : aboveAmbient('vacuumKPa', vacuumKPa, ambientKPa - low);
}

/**
 * Air pressure at a height above the sea, kPa: the standard atmosphere up to 11 km (ISO 2533), without the weather. Only to
 * judge a gauge when no barometer is at hand.
 */
export const ambientAtHeightKPa = (heightM: number): number =>
  RULES.standardPressure.value * (1 - (LAPSE_K_PER_M * heightM) / SEA_LEVEL_K) ** ATMOSPHERE_EXPONENT;

const SEA_LEVEL_K = 288.15;
const LAPSE_K_PER_M = 0.0065;
/** g / (gas constant of air x lapse rate), ISO 2533. */
const ATMOSPHERE_EXPONENT = 5.25588;

/** The most a cup takes, g, so that the froth does not spill: density x cup / froth ratio. 550 g for 2 L and 4. */
export const containerLimitG = ({
  containerCm3,
  densityKgM3,
  frothRatio: ratio = SILICONE_RULES.frothRatio.value,
}: {
  containerCm3: number;
  densityKgM3: number;
  frothRatio?: number;
}): number => ((densityKgM3 / 1000) * containerCm3) / ratio;

/** Look when the vacuum only swells bubbles and does not break them. */
export function degasFindings(pressureKPa: number): Problem[] {
  const wantedKPa = SILICONE_RULES.degasPressure.value;
  return pressureKPa <= wantedKPa ? [] : [finding('DEGAS_WEAK', 'look', { pressureKPa, wantedKPa })];
}

const aboveAmbient = (input: string, value: number, high: number): ReturnType<typeof bad> =>
  bad('INPUT_OUT_OF_BOUNDS', { input, value, low: 0, high, unit: 'kPa' });
