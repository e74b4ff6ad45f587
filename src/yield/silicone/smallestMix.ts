import { finding } from '../../problem';
import type { Problem } from '../../problem';
import type { SiliconeRatio } from './checkSilicone';
import { SILICONE_RULES } from './rules';

/**
 * The smallest mix, g, whose smaller part is off by at most `errorShare` when the scale is off by one step:
 * step x (base + catalyst) / (catalyst x error). 220 g for 10:1, 1 g and 5 %. Derived, no source needed.
 */
export function smallestMixG({
  ratio: { base, catalyst },
  stepG,
  errorShare = SILICONE_RULES.scaleErrorShare.value,
}: {
  ratio: SiliconeRatio;
  stepG: number;
  errorShare?: number;
}): number {
  return (stepG * (base + catalyst)) / (Math.min(base, catalyst) * errorShare);
}

/** Look when a mix is so small that the scale alone may spoil its ratio. */
export function smallMixFindings({
  mixG,
  ratio,
  stepG,
}: {
  mixG: number;
  ratio: SiliconeRatio;
  stepG: number;
}): Problem[] {
  const errorShare = SILICONE_RULES.scaleErrorShare.value;
  const smallestG = smallestMixG({ ratio, stepG, errorShare });
  if (mixG >= smallestG * (1 - 1e-12)) return [];
  return [finding('MIX_BELOW_SCALE', 'look', { mixG, smallestMixG: smallestG, stepG, errorShare })];
}
