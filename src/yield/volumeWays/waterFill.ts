import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { RULES } from '../rules';
import { scaleReadingUG } from '../scaleCheck';
import { waterGPerCm3 } from '../water';
import { checkVolume, COVER } from './checkVolume';
import { VOLUME_RULES as R } from './rules';

/** Water that fills the mold to the rim, weighed; its temperature, if anyone measured it. */
export interface FillingWater {
  waterG: number;
  waterTempC?: number;
  stepG?: number;
}

/**
 * Cavity from the water that fills it, cm3: its mass over the density of water at its temperature (Tanaka et al., Metrologia 38 (2001)
 * 301; see `waterGPerCm3`). The range is meant for 95 of 100: scale, temperature, rim and bubbles in quadrature. A mold that bulges
 * under the water reads high, which no range can know.
 */
export function waterFill(water: FillingWater): Outcome<Estimate> {
  return volumeOfWater(water, R.waterFillU.value);
}

/** The same with another doubt of how it was done, as a share. */
export function volumeOfWater(
  { waterG, waterTempC, stepG = RULES.scaleStep.value }: FillingWater,
  wayU: number,
): Outcome<Estimate> {
  const sound = checkVolume({ fillWaterG: waterG, scaleStepG: stepG }, { waterTempC });
  if (!sound.ok) return sound;
  const value = waterG / waterGPerCm3(waterTempC ?? R.waterTemp.value);
  const [colder, warmer] =
    waterTempC === undefined
      ? [R.waterTemp.low, R.waterTemp.high]
      : [waterTempC - R.waterTempU.value, waterTempC + R.waterTempU.value];
  const ends = [colder, warmer].map((tempC) => waterG / waterGPerCm3(Math.max(0, tempC)) - value);
  const uShare = Math.hypot(wayU, scaleReadingUG(stepG) / waterG);
  const down = Math.hypot(COVER * uShare * value, Math.min(0, ...ends));
  const up = Math.hypot(COVER * uShare * value, Math.max(0, ...ends));
  return good({ value, low: Math.max(0, value - down), high: value + up, from: 'water-fill' });
}
