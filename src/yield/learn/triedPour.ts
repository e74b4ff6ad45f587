import type { OpeningKind } from './openingKeeps';
import { LEARN_RULES as R } from './rules';

/** A past pour as far as its settings and its looks go. What was not written down is left out. */
export interface TriedPour {
  no: number;
  foam?: string;
  piece?: string;
  packFactor?: number;
  moldC?: number;
  roomC?: number;
  opening?: OpeningKind;
  /** From 1 to 5. */
  skin?: number;
  short?: boolean;
}

/** What a shop can change from one pour to the next. */
export const FACTORS = ['packFactor', 'moldC', 'opening', 'roomC'] as const;
export type Factor = (typeof FACTORS)[number];

/** As a number: a plug is 1, an open mouth 0. */
export function settingOf(pour: TriedPour, factor: Factor): number | undefined {
  if (factor !== 'opening') return pour[factor];
  return pour.opening === undefined ? undefined : Number(pour.opening === 'plug');
}

/** Good skin on a full casting. Undefined where nobody noted the skin. */
export function isGood({ skin, short }: TriedPour): boolean | undefined {
  if (short === true) return false;
  return skin === undefined ? undefined : skin >= R.goodSkin.value;
}
