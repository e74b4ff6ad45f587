import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkWarmth } from './checkWarmth';
import { WARMTH_RULES as R } from './rules';

/**
 * Warmth to bring a mass from one temperature to another, kJ (m c dT; below 0 when it must be taken away). Silicone unless
 * its heat capacity is given. Errors: bounds.
 */
export function energyKJ({
  massG,
  startTempC,
  targetTempC,
  heatCapacityJKgK = R.siliconeHeatCapacity.value,
}: {
  massG: number;
  startTempC: number;
  targetTempC: number;
  heatCapacityJKgK?: number;
}): Outcome<number> {
  const checked = checkWarmth({ massG, startTempC, targetTempC, heatCapacityJKgK });
  return checked.ok ? good((massG * heatCapacityJKgK * (targetTempC - startTempC)) / 1e6) : checked;
}

/**
 * The same for a heater: minutes it must run if only a share of its power stays in the rubber. Evening out inside the
 * rubber takes longer: see `warmWall`. Errors: bounds.
 */
export function heaterMin({
  powerW,
  arrivingShare = R.heatArriving.value,
  ...warm
}: Parameters<typeof energyKJ>[0] & { powerW: number; arrivingShare?: number }): Outcome<number> {
  const checked = checkWarmth({ powerW, arrivingShare });
  if (!checked.ok) return checked;
  const energy = energyKJ(warm);
  return energy.ok ? good((1000 * energy.value) / (powerW * arrivingShare) / 60) : energy;
}
