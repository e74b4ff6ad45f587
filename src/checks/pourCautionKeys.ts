import { WARMTH_RULES } from '../yield';
import type { CheckFacts } from './facts';

/** Cautions that stand on the sheet only where they apply. All others always do. */
export type PourCautionWhere = 'damp-mold' | 'cold-mold' | 'drill' | 'plug-force';

/**
 * The cautions that apply to a pour by its facts. While a fact is not known its caution stays: of two mistakes the one that
 * warns too much is the smaller.
 */
export function pourCautionKeys(facts: CheckFacts): PourCautionWhere[] {
  const { moldWater, moldTempC, mixingMethod, plugN } = facts;
  const applies: Readonly<Record<PourCautionWhere, boolean>> = {
    'damp-mold': moldWater !== 'none',
    'cold-mold': moldTempC === undefined || moldTempC < WARMTH_RULES.moldFine.low,
    drill: mixingMethod !== 'hand',
    'plug-force': plugN !== 0,
  };
  return (Object.keys(applies) as PourCautionWhere[]).filter((key) => applies[key]);
}
