import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import type { BatchAssumption } from '../settleBatch';
import { noteIn } from '../settleBatch';
import { checkPour } from './checkPour';
import { POUR_RULES as R } from './rules';

/** Size of a casting and what is taken of its skin. The skin's depth is the knob: 0.5 to 2 mm, to be tuned on own castings. */
export interface SkinnedPart {
  castingCm2: number;
  cavityCm3: number;
  skinMm?: number;
  skinOverCore?: number;
  packMargin?: number;
}

export interface SizeAwarePack {
  /** Pack that the skin alone takes: with less, the core is lighter than the free rise or the mold is not filled. */
  leastPack: Estimate;
  /** The same with a margin: an advice, never taken silently. */
  advisedPack: Estimate;
  assumptions: BatchAssumption[];
}

/**
 * Pack advice by size: k_min = 1 + (skin/core density - 1) x skin depth x area/volume, a mass balance of ours; advice =
 * k_min + 0.20. A small part is all skin and needs more. Range: skin of 0.5 to 2 mm unless it was given. Holds while the skin is
 * thin against the part; a part that is all skin is counted as such and no further.
 */
export function sizeAwarePack(part: SkinnedPart): Outcome<SizeAwarePack> {
  const { castingCm2, cavityCm3, skinMm, skinOverCore, packMargin } = part;
  const sound = checkPour({ castingCm2, cavityCm3 }, { skinMm, skinOverCore, packMargin });
  if (!sound.ok) return sound;
  const assumptions: BatchAssumption[] = [];
  const note = noteIn(assumptions);
  const depthMm = skinMm ?? note('skin_depth_mm', R.skinDepth);
  const denser = (skinOverCore ?? note('skin_over_core', R.skinOverCore)) - 1;
  const margin = packMargin ?? note('pack_margin', R.packMargin);
  // cm2 x mm are 0.1 cm3.
  const least = (mm: number): number => 1 + denser * Math.min(1, (mm * castingCm2) / 10 / cavityCm3);
  const [lowMm, highMm] = skinMm === undefined ? [R.skinDepth.low, R.skinDepth.high] : [depthMm, depthMm];
  const from = skinMm === undefined ? 'assumed' : 'given';
  const leastPack: Estimate = { value: least(depthMm), low: least(lowMm), high: least(highMm), from };
  const advisedPack: Estimate = {
    value: leastPack.value + margin,
    low: leastPack.low + margin,
    high: leastPack.high + margin,
    from,
  };
  return good({ leastPack, advisedPack, assumptions });
}

/** Mass of the skin beyond what core of that volume would weigh, as a mean density on the part, kg/m3. */
export const skinAddsKgM3 = ({
  skinKgM3,
  coreKgM3,
  skinMm,
  castingCm2,
  cavityCm3,
}: {
  skinKgM3: number;
  coreKgM3: number;
  skinMm: number;
  castingCm2: number;
  cavityCm3: number;
}): number => ((skinKgM3 - coreKgM3) * skinMm * castingCm2) / 10 / cavityCm3;
