import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkRatioParts, checkSilicone } from './checkSilicone';
import type { SiliconeRatio } from './checkSilicone';

/** A lot in the shop; what is left out is not there. */
export interface SiliconeStock {
  baseKg?: number;
  catalystKg?: number;
}

export interface BeyondStock {
  /** Mixed mass that must be bought. */
  needKg: number;
  /** Mixed mass that the stock could make. */
  usableKg: number;
  /** The part that runs out first; the rest of the other makes no rubber by itself. */
  scarcer: 'base' | 'catalyst' | 'neither';
  /** What stays on the shelf once the stock is used for this order. */
  leftBaseKg: number;
  leftCatalystKg: number;
}

/**
 * What must be bought beyond the stock: the stock makes as much as its scarcer part allows. Lots are added up. Errors:
 * INPUT_OUT_OF_BOUNDS.
 */
export function needBeyondStock({
  mixedKg,
  ratio,
  stock,
}: {
  mixedKg: number;
  ratio: SiliconeRatio;
  stock: readonly SiliconeStock[];
}): Outcome<BeyondStock> {
  const sound = checkStock(mixedKg, ratio, stock);
  if (!sound.ok) return sound;
  const baseKg = stock.reduce((sum, lot) => sum + (lot.baseKg ?? 0), 0);
  const catalystKg = stock.reduce((sum, lot) => sum + (lot.catalystKg ?? 0), 0);
  const baseShare = ratio.base / (ratio.base + ratio.catalyst);
  const fromBaseKg = baseKg / baseShare;
  const fromCatalystKg = catalystKg / (1 - baseShare);
  const usableKg = Math.min(fromBaseKg, fromCatalystKg);
  const usedKg = Math.min(mixedKg, usableKg);
  return good({
    needKg: tidy(mixedKg - usedKg),
    usableKg: tidy(usableKg),
    scarcer: scarcerOf(fromBaseKg, fromCatalystKg),
    leftBaseKg: tidy(baseKg - usedKg * baseShare),
    leftCatalystKg: tidy(catalystKg - usedKg * (1 - baseShare)),
  });
}

function scarcerOf(fromBaseKg: number, fromCatalystKg: number): BeyondStock['scarcer'] {
  if (Math.abs(fromBaseKg - fromCatalystKg) <= 1e-9 * fromBaseKg) return 'neither';
  return fromBaseKg < fromCatalystKg ? 'base' : 'catalyst';
}

function checkStock(mixedKg: number, ratio: SiliconeRatio, stock: readonly SiliconeStock[]): Outcome<true> {
  const parts = checkRatioParts(ratio);
  if (!parts.ok) return parts;
  const need = checkSilicone({ needKg: mixedKg });
  if (!need.ok) return need;
  for (const { baseKg, catalystKg } of stock) {
    for (const stockKg of [baseKg, catalystKg]) {
      const sound = checkSilicone({}, { stockKg });
      if (!sound.ok) return sound;
    }
  }
  return good(true);
}

/** To the microgram: 2.2 - 1.1 x 2 is nothing to buy. */
const tidy = (massKg: number): number => Math.max(0, Number(massKg.toFixed(9)));
