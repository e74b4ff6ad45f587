import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { RULES } from '../rules';
import { checkPour } from './checkPour';
import { POUR_RULES as R } from './rules';
import { ventAreaMm2 } from './vents';
import type { VentedRise } from './vents';

export interface VentCount {
  /** Area of all vents together at that pressure before them. */
  areaMm2: number;
  ventPressurePa: number;
  needed: number;
  placed: number;
  isEnough: boolean;
}

/** Six vents that are just enough stay six, whatever the last digit of a double says. */
const SAME = 1e-9;

/**
 * How many round vents of one width the air needs (`ventAreaMm2`, 200 Pa when left out), beside those placed. Places count too: each
 * high spot wants a vent of its own, whatever the sum of areas says.
 */
export function ventsNeeded({
  ventMm = RULES.ventDiameter.value,
  ventsPlaced,
  ventPressurePa = R.ventPressure.value,
  ...rise
}: VentedRise & { ventsPlaced: number; ventMm?: number; ventPressurePa?: number }): Outcome<VentCount> {
  const sound = checkPour({ ventMm, ventsPlaced });
  if (!sound.ok) return sound;
  const area = ventAreaMm2({ ...rise, ventPressurePa });
  if (!area.ok) return area;
  const needed = Math.max(0, Math.ceil(area.value / ((Math.PI * ventMm ** 2) / 4) - SAME));
  return good({
    areaMm2: area.value,
    ventPressurePa,
    needed,
    placed: ventsPlaced,
    isEnough: ventsPlaced >= needed,
  });
}
