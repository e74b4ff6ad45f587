import type { Estimate, Source } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { cloudOf, cloudQuantiles, DRAWS } from './beliefCloud';
import type { BeliefCloud, UpperBound } from './beliefCloud';
import { checkLearn } from './checkLearn';
import { fillBelief, fillRow } from './fillPrior';
import type { FillPrior } from './fillPrior';
import { learnRows } from './normalInverseGamma';
import type { LearnedRow, NormalInverseGamma } from './normalInverseGamma';
import { LEARN_RULES as R } from './rules';

/**
 * A pour and what came of it. `pouredG` left the cup: mixed less residue. `short`: stopped `shortShare` of the cavity before full, so
 * what it filled it just filled. `overflowed`: full and open, the surplus `trimG` left at little pressure. `full`: capped; less might do.
 */
export interface FillPour {
  outcome: 'short' | 'overflowed' | 'full';
  cavityCm3: number;
  pouredG: number;
  shortShare?: number;
  trimG?: number;
}

export interface FillModel {
  /** `learned`, or that of the prior where there are under three pours. */
  from: Source;
  pours: number;
  exact: number;
  bounds: number;
  /** Under three pours: they were not used. */
  fellBack: boolean;
  /** The pours contradict what was known before: ask about them. */
  atOdds: boolean;
  belief: NormalInverseGamma;
  cloud: BeliefCloud;
}

/**
 * The least mass that fills, learned from past pours of one foam. Short pours and open overflows are exact rows of a conjugate
 * normal model; a full, capped pour is an upper bound only, and weighs the draws of that model (`cloudOf`). A pour that overflowed
 * with its trim not weighed is such a bound too. Under three pours the prior stands alone and `fellBack` says so.
 */
export function learnFill(prior: FillPrior, pours: readonly FillPour[]): Outcome<FillModel> {
  const before = fillBelief(prior);
  if (!before.ok) return before;
  for (const { cavityCm3, pouredG, shortShare, trimG } of pours) {
    const sound = checkLearn({ cavityCm3, pouredG }, { shortShare, trimG });
    if (!sound.ok) return sound;
  }
  const fellBack = pours.length < R.leastPours.value;
  const rows = fellBack ? [] : pours.flatMap(exactRow);
  const bounds = fellBack ? [] : pours.filter((pour) => exactRow(pour).length === 0).map(boundOf);
  const belief = learnRows(before.value, rows)!;
  const cloud = cloudOf(belief, bounds);
  return good({
    from: fellBack ? prior.from : 'learned',
    pours: pours.length,
    exact: rows.length,
    bounds: bounds.length,
    fellBack,
    atOdds: cloud.worth < LEAST_WORTH * DRAWS || isFarOff(before.value, belief),
    belief,
    cloud,
  });
}

/** A twentieth of the draws: the bounds lie where the belief hardly goes. */
const LEAST_WORTH = 0.05;

/** Rows that ask for over twice the scatter that was thought of. */
const isFarOff = (before: NormalInverseGamma, after: NormalInverseGamma): boolean =>
  after.rate / after.shape > 4 * (before.rate / before.shape);

function exactRow(pour: FillPour): LearnedRow[] {
  const { outcome, cavityCm3, pouredG, shortShare = 0, trimG } = pour;
  if (outcome === 'short') {
    const filledCm3 = cavityCm3 * (1 - shortShare);
    return [{ x: fillRow(filledCm3), y: (1000 * pouredG) / filledCm3 }];
  }
  if (outcome === 'full' || trimG === undefined) return [];
  return [{ x: fillRow(cavityCm3), y: (1000 * (pouredG - trimG)) / cavityCm3 }];
}

const boundOf = ({ cavityCm3, pouredG }: FillPour): UpperBound => ({
  x: fillRow(cavityCm3),
  most: (1000 * pouredG) / cavityCm3,
});

/** What must be poured in to fill: middle and range of a single pour (9 times of 10), and what fills with the wanted chance. */
export interface FillAt {
  leastG: Estimate;
  pouredG: number;
}

/** `extraUG` is further doubt in g, as of the residue. Errors: INPUT_OUT_OF_BOUNDS. */
export function fillAt(
  { cloud, from }: FillModel,
  { cavityCm3, chance, extraUG = 0 }: { cavityCm3: number; chance: number; extraUG?: number },
): Outcome<FillAt> {
  const sound = checkLearn({ cavityCm3, fillChance: chance });
  if (!sound.ok) return sound;
  const liters = cavityCm3 / 1000;
  const tail = (1 - R.rangeShare.value) / 2;
  const densities = cloudQuantiles(cloud, fillRow(cavityCm3), extraUG / liters, [
    tail,
    0.5,
    1 - tail,
    chance,
  ]);
  const [low, value, high, pouredG] = densities.map((density) => Math.max(0, density * liters)) as [
    number,
    number,
    number,
    number,
  ];
  return good({ leastG: { value, low, high, from }, pouredG });
}
