import { LEARN_RULES } from './rules';

/** What a pour must share with another before the one says anything of the other. */
export interface PourGroup {
  foam?: string;
  roomC?: number;
}

/** The same foam in a room within 8 K. What nobody wrote down sets nothing apart. */
export function sameGroup(one: PourGroup, other: PourGroup): boolean {
  if (one.foam !== undefined && other.foam !== undefined && one.foam !== other.foam) return false;
  if (one.roomC === undefined || other.roomC === undefined) return true;
  return Math.abs(one.roomC - other.roomC) <= LEARN_RULES.groupK.value;
}
