import { RULES } from '../rules';
import { WARMTH_RULES } from '../warmth';
import { findConfounded } from './confounded';
import type { Confounding } from './confounded';
import { changeFrom, roundPack } from './oneChange';
import type { OneChange } from './oneChange';
import { LEARN_RULES as R } from './rules';
import { tellApart } from './tellApart';
import { isGood } from './triedPour';
import type { TriedPour } from './triedPour';

/** To be answered before more pack is spoken of. */
export type AskFirst = 'mold-warmth' | 'vents' | 'cup-test';

export interface NextPour {
  asks: AskFirst[];
  change?: OneChange;
}

export interface NextPourInputs {
  /** Of one foam, in the order they were poured. */
  pours: readonly TriedPour[];
  /** The piece that is to be cast next. */
  piece?: string;
  ventsChecked?: boolean;
  cupTestedToday?: boolean;
}

/**
 * One thing to change next. A short or bare casting: first the mold, then the mouth, and more pack only once the mold is warm, the vents
 * were looked at and a cup was tested today (until then that is asked). A good one: what moved together is told apart, in the emptier
 * corner of what was tried; where nothing did, a lighter pack. Undefined change: nothing to go by, or an answer is waited for.
 */
export function nextPour({ pours, piece, ventsChecked, cupTestedToday }: NextPourInputs): NextPour {
  const ofPiece = pours.filter(
    (pour) => piece === undefined || pour.piece === undefined || pour.piece === piece,
  );
  const last = ofPiece.at(-1) ?? pours.at(-1);
  if (last === undefined) return { asks: [] };
  const confounding = findConfounded(pours);
  const isPoor = isGood(last) === false;
  if (!isPoor) {
    const change = improve(pours, ofPiece, last, confounding);
    return change === undefined ? { asks: [] } : { asks: [], change };
  }
  const asks: AskFirst[] = [
    ...(last.moldC === undefined ? (['mold-warmth'] as const) : []),
    ...(ventsChecked === true ? [] : (['vents'] as const)),
    ...(cupTestedToday === true ? [] : (['cup-test'] as const)),
  ];
  const change = remedy(pours, last, confounding, asks.length === 0);
  return change === undefined ? { asks } : { asks, change };
}

function remedy(
  pours: readonly TriedPour[],
  last: TriedPour,
  confounding: Confounding,
  isAnswered: boolean,
): OneChange | undefined {
  const make = changeFrom(pours, last, confounding);
  const { low, value } = WARMTH_RULES.moldFine;
  if (last.moldC !== undefined && last.moldC < low) return make('moldC', value, 'mold-cold', [last.no]);
  if (last.opening === 'open') return make('opening', 1, 'opening-open', [last.no]);
  if (!isAnswered || last.packFactor === undefined) return undefined;
  const to = roundPack(last.packFactor + R.packStepNext.value);
  return to > RULES.packFine.high ? undefined : make('packFactor', to, 'still-poor', [last.no]);
}

function improve(
  pours: readonly TriedPour[],
  ofPiece: readonly TriedPour[],
  last: TriedPour,
  confounding: Confounding,
): OneChange | undefined {
  const base = lightestGood(ofPiece) ?? lightestGood(pours) ?? last;
  const make = changeFrom(pours, base, confounding);
  const told = tellApart(pours, base, confounding);
  if (told !== undefined) return told;
  if (base.packFactor === undefined || isGood(base) !== true) return undefined;
  const to = roundPack(base.packFactor - R.packStepNext.value);
  return to < RULES.packFine.low ? undefined : make('packFactor', to, 'try-lighter', [base.no]);
}

function lightestGood(pours: readonly TriedPour[]): TriedPour | undefined {
  const good = pours.filter((pour) => isGood(pour) === true && pour.packFactor !== undefined);
  return [...good].sort((one, other) => one.packFactor! - other.packFactor!)[0];
}
