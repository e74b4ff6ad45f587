import { good } from '../../problem';
import type { Outcome } from '../../problem';
import type { Batch } from '../batch';
import { mixedMassG } from '../mixedMass';
import { shortFillChance } from '../shortFill';
import { checkPour } from './checkPour';
import { POUR_RULES as R } from './rules';

/** In the shop's own money. `failurePrice`: what a failed casting costs beside its mix (hours, mold wear, a missed day). */
export interface PourPrices {
  aPerKg: number;
  bPerKg: number;
  failurePrice?: number;
}

export interface PackCost {
  /** Of A and B as weighed. */
  mixPrice: number;
  /** A casting that must be made again: its mix and what else it costs. */
  failurePrice: number;
  /** That, times the chance of a short fill. */
  expectedFailurePrice: number;
  /** What 5 % more pack costs in mix. */
  morePackPrice: number;
  /** What it takes off the expected failure: beside `morePackPrice` it says whether it pays. */
  morePackSaves: number;
}

/**
 * What a pack costs and what its failures cost. Only the short fill counts as a failure here: a pack so high that the mold leaks or
 * the foam tears is not priced. Errors: INPUT_OUT_OF_BOUNDS.
 */
export function packCost(batch: Batch, { aPerKg, bPerKg, failurePrice = 0 }: PourPrices): Outcome<PackCost> {
  for (const prices of [{ partPrice: aPerKg }, { partPrice: bPerKg }, { failurePrice }]) {
    const sound = checkPour(prices);
    if (!sound.ok) return sound;
  }
  const mixPrice = (batch.partAG * aPerKg + batch.partBG * bPerKg) / 1000;
  const packFactor = batch.packFactor * (1 + R.morePack.value);
  const moreG = mixedMassG({ ...batch.inputs, packFactor }) - batch.mixedG;
  const { leastPack, packSigmaShare: sigmaShare } = batch;
  const chanceAfter = shortFillChance({ packFactor, leastPack, sigmaShare });
  const failed = mixPrice + failurePrice;
  return good({
    mixPrice,
    failurePrice: failed,
    expectedFailurePrice: batch.shortFillChance * failed,
    morePackPrice: (moreG * mixPrice) / batch.totalG,
    morePackSaves: (batch.shortFillChance - chanceAfter) * failed,
  });
}
