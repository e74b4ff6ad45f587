import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { normalQuantile } from '../normal';
import { checkLearn } from './checkLearn';
import { LEARN_RULES as R } from './rules';

export type OpeningKind = 'open' | 'plug';

/** A pour that filled. The pack is the one it was planned with. */
export interface TrimmedPour {
  opening: OpeningKind;
  packFactor: number;
  freeRiseKgM3: number;
  uFreeRiseShare?: number;
  cavityCm3: number;
  /** Left out when nobody weighed it. */
  trimG?: number;
}

export interface KeptByOpening {
  opening: OpeningKind;
  /** Share of the overpack that stayed; the range holds what single pours say, doubt of the free rise included. */
  keptShare: Estimate;
  pours: number;
}

/**
 * How much of the overpack an opening keeps: of the (pack - 1) x free rise x cavity poured in beyond the free rise, the trim is what
 * left. Doubt of the free rise counts 1/(pack - 1) times over, so light packs say little. Pours without overpack or without a weighed
 * trim say nothing and are left out.
 */
export function openingKeeps(pours: readonly TrimmedPour[]): Outcome<KeptByOpening[]> {
  for (const { packFactor, freeRiseKgM3, uFreeRiseShare, cavityCm3, trimG } of pours) {
    const sound = checkLearn({ packFactor, freeRiseKgM3, cavityCm3 }, { uFreeRiseShare, trimG });
    if (!sound.ok) return sound;
  }
  const kinds: OpeningKind[] = ['open', 'plug'];
  return good(
    kinds.flatMap((opening) => {
      const rows = pours.filter((pour) => pour.opening === opening).flatMap(rowOf);
      return rows.length === 0 ? [] : [{ opening, keptShare: together(rows), pours: rows.length }];
    }),
  );
}

interface Row {
  overpackG: number;
  trimG: number;
  low: number;
  high: number;
}

function rowOf({ packFactor, freeRiseKgM3, uFreeRiseShare, cavityCm3, trimG }: TrimmedPour): Row[] {
  if (trimG === undefined || packFactor <= 1) return [];
  const overpackG = ((packFactor - 1) * freeRiseKgM3 * cavityCm3) / 1000;
  const z = normalQuantile((1 + R.rangeShare.value) / 2);
  const doubt = (z * (uFreeRiseShare ?? R.keptDensityU.value)) / (packFactor - 1);
  const kept = (grams: number): number => (grams <= 0 ? 0 : clamp(1 - trimG / grams));
  return [{ overpackG, trimG, low: kept(overpackG * (1 - doubt)), high: kept(overpackG * (1 + doubt)) }];
}

const clamp = (share: number): number => Math.min(1, Math.max(0, share));

function together(rows: readonly Row[]): Estimate {
  const sum = (of: (row: Row) => number): number => rows.reduce((all, row) => all + of(row), 0);
  return {
    value: clamp(1 - sum(({ trimG }) => trimG) / sum(({ overpackG }) => overpackG)),
    low: Math.min(...rows.map(({ low }) => low)),
    high: Math.max(...rows.map(({ high }) => high)),
    from: 'learned',
  };
}
