import { finding } from '../problem';
import type { Problem } from '../problem';
import type { BatchInputs } from './batchInputs';
import type { ChosenPack } from './choosePack';

/** The minimum fill is not known, so the chance is too rosy; or it is known, and impossibly light. */
export function minFillFindings(
  { minFillKgM3, freeRiseKgM3 }: BatchInputs,
  { packFactor, chancePack }: ChosenPack,
): Problem[] {
  const freeRise = freeRiseKgM3.value;
  if (minFillKgM3 === undefined) {
    const values = chancePack === undefined ? {} : { chancePack, packFactor };
    return [finding('MIN_FILL_UNKNOWN', 'unknown', { freeRiseKgM3: freeRise, ...values })];
  }
  if (minFillKgM3.value >= freeRise) return [];
  return [
    finding('MIN_FILL_BELOW_FREE_RISE', 'look', { minFillKgM3: minFillKgM3.value, freeRiseKgM3: freeRise }),
  ];
}
