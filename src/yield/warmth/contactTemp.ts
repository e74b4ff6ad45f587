import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkWarmth } from './checkWarmth';
import { checkMaterial, effusivityOf, MIX_HEAT, SILICONE_HEAT } from './heatMaterial';
import type { HeatMaterial } from './heatMaterial';

/**
 * Temperature where foam mix meets the mold, C, at once and while neither feels its far side: the mean of both weighted by
 * effusivity (Carslaw & Jaeger, from memory, not verified). Of the mold's excess over the mix only about half arrives at
 * the layer that makes the skin when the mold is silicone, nearly all when it is metal. The heat of reaction is left out.
 * Errors: bounds.
 */
export function contactTempC({
  moldTempC,
  mixTempC,
  mold = SILICONE_HEAT,
  mix = MIX_HEAT,
}: {
  moldTempC: number;
  mixTempC: number;
  mold?: HeatMaterial;
  mix?: HeatMaterial;
}): Outcome<number> {
  const checked = checkWarmth({ moldTempC, mixTempC });
  if (!checked.ok) return checked;
  for (const material of [mold, mix]) {
    const sound = checkMaterial(material);
    if (!sound.ok) return sound;
  }
  const [moldB, mixB] = [effusivityOf(mold), effusivityOf(mix)];
  return good((mixB * mixTempC + moldB * moldTempC) / (mixB + moldB));
}
