import { bad, finding, good } from '../problem';
import type { Outcome, Problem } from '../problem';
import { RULES } from './rules';

/** Densities in kg/m3; overpack as a share: 1.10 is 110 % of the minimum fill. */
export interface FillDensities {
  minFillKgM3: number;
  freeRiseKgM3: number;
}

/**
 * Pack factor (molded over free-rise density) from overpack (mass poured in over the least mass that just fills). Two
 * different terms: the minimum fill is denser than the free rise because of skin and flow losses.
 */
export function packFromOverpack({
  overpackShare,
  minFillKgM3,
  freeRiseKgM3,
}: FillDensities & { overpackShare: number }): number {
  return (overpackShare * minFillKgM3) / freeRiseKgM3;
}

/** The reverse: overpack as a share from the pack factor. */
export function overpackFromPack({
  packFactor,
  minFillKgM3,
  freeRiseKgM3,
}: FillDensities & { packFactor: number }): number {
  return (packFactor * freeRiseKgM3) / minFillKgM3;
}

/** Refuses a pack factor outside 1.0 to 2.5: below, the foam would not fill in the open; above, nothing is known. */
export function checkPack(packFactor: number): Outcome<number> {
  if (!Number.isFinite(packFactor))
    return bad('INPUT_NOT_A_NUMBER', { input: 'packFactor', value: String(packFactor) });
  const { low, high } = RULES.packFactor;
  if (packFactor >= low && packFactor <= high) return good(packFactor);
  return bad('PACK_REFUSED', { packFactor, low, high });
}

/** Nothing for 1.10 to 1.60, a look outside, a stop above 2.0. */
export function packFindings(packFactor: number): Problem[] {
  const { low, high } = RULES.packFine;
  if (packFactor >= low && packFactor <= high) return [];
  const stopAbove = RULES.packStopAbove.value;
  const status = packFactor > stopAbove ? 'stop' : 'look';
  return [finding('PACK_UNUSUAL', status, { packFactor, low, high, stopAbove })];
}
