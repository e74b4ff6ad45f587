import { RULES, type BatchAssumption } from '../yield';
import { assumedOf } from './fillAssumed';

/** Where the doubt of a cup test is that of common practice, which it is; where the cups themselves scatter more, nothing is assumed. */
export function doubtOfCups({ uShare, cups }: { uShare: number; cups: number }): BatchAssumption[] {
  const few = { ...RULES.cupToCup, value: RULES.cupToCup.value / Math.sqrt(cups) };
  const rule = [RULES.uSmallCup, RULES.uFreeRiseCup, few].find(({ value }) => value === uShare);
  return rule === undefined ? [] : [assumedOf('u_free_rise', rule)];
}
