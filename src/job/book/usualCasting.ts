import { LEARN_RULES } from '../../yield';
import type { PourRow } from './bookRow';
import type { CheckedPour } from './checkedPours';

/** What a casting should weigh by the other weights of its pour. */
export interface UsualCasting {
  castingG: number;
  /** Pours that say how much gas and crumbs take, and that share of what is poured. */
  pours: number;
  lostShare: number;
  /** They are of the same foam. */
  isOfFoam: boolean;
}

/**
 * The casting that a pour's other weights leave, less what gas and crumbs took of the other pours: the mean share of what left the
 * cup, over pours of the same foam, else over all. Under three of them nothing is said.
 */
export function usualCasting(row: PourRow, pours: readonly CheckedPour[]): UsualCasting | undefined {
  const { mixedG, residueG, trimG } = row;
  if (mixedG === undefined || residueG === undefined || trimG === undefined) return undefined;
  const others = pours.filter((pour) => pour.row.id !== row.id && pour.row.isLeftOut !== true);
  const ofFoam = lostShares(others.filter(({ sound }) => sound.foam === row.foam));
  const isOfFoam = ofFoam.length >= LEARN_RULES.leastPours.value;
  const shares = isOfFoam ? ofFoam : lostShares(others);
  if (shares.length < LEARN_RULES.leastPours.value) return undefined;
  const lostShare = shares.reduce((sum, share) => sum + share, 0) / shares.length;
  const pouredG = mixedG - residueG;
  return { castingG: pouredG * (1 - lostShare) - trimG, pours: shares.length, lostShare, isOfFoam };
}

const lostShares = (pours: readonly CheckedPour[]): number[] =>
  pours.flatMap(({ sound: { mixedG, residueG, castingG, trimG } }) => {
    if (mixedG === undefined || residueG === undefined || castingG === undefined || trimG === undefined)
      return [];
    const pouredG = mixedG - residueG;
    return pouredG > 0 ? [(pouredG - castingG - trimG) / pouredG] : [];
  });
