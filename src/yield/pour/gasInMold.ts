import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { RULES } from '../rules';
import { checkPour } from './checkPour';
import type { PackedFoam } from './pressure';
import { POUR_RULES as R } from './rules';

/**
 * Energy of the gas that is let go when a mold bursts, J: (p - p0) V / (gamma - 1), Brode's formula (from memory, not
 * verified). kPa times cm3 are mJ.
 */
export function storedEnergyJ({
  gaugeKPa,
  gasCm3,
  gasGamma = R.gasGamma.value,
}: {
  gaugeKPa: number;
  gasCm3: number;
  gasGamma?: number;
}): Outcome<number> {
  const sound = checkPour({ gaugeKPa, gasCm3, gasGamma });
  return sound.ok ? good((gaugeKPa * gasCm3) / 1000 / (gasGamma - 1)) : sound;
}

/** Gas in a full mold, cm3: all of the cavity that is not liquid turned solid. */
export const gasInMoldCm3 = ({
  freeRiseKgM3,
  liquidKgM3,
  packFactor,
  cavityCm3,
}: PackedFoam & { cavityCm3: number }): number => cavityCm3 * (1 - (packFactor * freeRiseKgM3) / liquidKgM3);

/**
 * What is left of a trapped pocket of air when the foam presses on it, cm3: V p0/(p0 + p) (Boyle). 20 kPa leave 83.5 % of it:
 * pressure does not cure a trap.
 */
export function residualTrapCm3({
  trappedCm3,
  gaugeKPa,
  ambientKPa = RULES.standardPressure.value,
}: {
  trappedCm3: number;
  gaugeKPa: number;
  ambientKPa?: number;
}): Outcome<number> {
  const sound = checkPour({ trappedCm3, gaugeKPa, ambientKPa });
  return sound.ok ? good((trappedCm3 * ambientKPa) / (ambientKPa + gaugeKPa)) : sound;
}
