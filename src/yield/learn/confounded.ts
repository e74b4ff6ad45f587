import { LEARN_RULES as R } from './rules';
import { FACTORS, isGood, settingOf } from './triedPour';
import type { Factor, TriedPour } from './triedPour';

/** Two settings that were changed together: `r` is their correlation over the pours that know both. */
export interface MovedTogether {
  one: Factor;
  other: Factor;
  r: number;
  pours: number;
}

/** Two pours of the same pack, one good and one not: `differ` is what else was changed between them. */
export interface SamePackPair {
  good: number;
  bad: number;
  packFactor: number;
  differ: Factor[];
}

export interface Confounding {
  /** `cannot-tell`: settings moved together. `too-few`: under three pours. `apart`: each moved by itself. */
  verdict: 'cannot-tell' | 'too-few' | 'apart';
  pours: number;
  pairs: MovedTogether[];
  /** Settings hanging together, directly or through another one. */
  groups: Factor[][];
  /** Never changed, or known of fewer than three pours: nothing can be said of them. */
  still: Factor[];
  /** Of a group: the one to change next while the others hold still. */
  changeNext?: Factor;
  /** Shows that the pack alone is not enough. */
  samePack: SamePackPair[];
  /** What every good casting had; left out where there is none. */
  goodOnlyWith?: { leastPack?: number; coldestMoldC?: number; plugged: boolean; pours: number[] };
}

/**
 * Which settings moved together in the log, so that it cannot say which of them did it: Pearson correlations of at least 0.7 between
 * pack, mold, opening (a plug counts 1) and room. Whatever the skin did, the log holds no more than that.
 */
export function findConfounded(pours: readonly TriedPour[]): Confounding {
  const still = FACTORS.filter((factor) => spreadOf(pours, factor) === 0);
  const moved = FACTORS.filter((factor) => !still.includes(factor));
  const pairs = moved.flatMap((one, i) =>
    moved.slice(i + 1).flatMap((other): MovedTogether[] => {
      const both = knownBoth(pours, one, other);
      const r = correlation(both);
      return Math.abs(r) >= R.togetherR.value ? [{ one, other, r, pours: both.length }] : [];
    }),
  );
  const groups = groupsOf(pairs);
  const changeNext = EASIEST.find((factor) => groups.some((group) => group.includes(factor)));
  const goodOnlyWith = whatGoodHad(pours);
  return {
    verdict: pours.length < R.leastPours.value ? 'too-few' : pairs.length > 0 ? 'cannot-tell' : 'apart',
    pours: pours.length,
    pairs,
    groups,
    still,
    ...(changeNext === undefined ? {} : { changeNext }),
    samePack: samePackPairs(pours),
    ...(goodOnlyWith === undefined ? {} : { goodOnlyWith }),
  };
}

/** Chosen here: a mold can be set to the degree and costs no foam; an open mouth wastes some; a room is the hardest to set. */
const EASIEST: readonly Factor[] = ['moldC', 'opening', 'packFactor', 'roomC'];

const knownBoth = (pours: readonly TriedPour[], one: Factor, other: Factor): [number, number][] =>
  pours.flatMap((pour) => {
    const x = settingOf(pour, one);
    const y = settingOf(pour, other);
    return x === undefined || y === undefined ? [] : [[x, y] as [number, number]];
  });

/** Largest less smallest; 0 where under three pours know it. */
function spreadOf(pours: readonly TriedPour[], factor: Factor): number {
  const known = pours.map((pour) => settingOf(pour, factor)).filter((value) => value !== undefined);
  return known.length < R.leastPours.value ? 0 : Math.max(...known) - Math.min(...known);
}

function correlation(rows: readonly [number, number][]): number {
  if (rows.length < R.leastPours.value) return 0;
  const mean = (of: 0 | 1): number => rows.reduce((sum, row) => sum + row[of], 0) / rows.length;
  const means = [mean(0), mean(1)] as const;
  const about = (i: 0 | 1, j: 0 | 1): number =>
    rows.reduce((sum, row) => sum + (row[i] - means[i]) * (row[j] - means[j]), 0);
  const both = Math.sqrt(about(0, 0) * about(1, 1));
  return both > 0 ? about(0, 1) / both : 0;
}

function groupsOf(pairs: readonly MovedTogether[]): Factor[][] {
  let groups: Factor[][] = [];
  for (const { one, other } of pairs) {
    const touched = groups.filter((group) => group.includes(one) || group.includes(other));
    const joined = [...new Set([...touched.flat(), one, other])];
    groups = [...groups.filter((group) => !touched.includes(group)), joined];
  }
  return groups.map((group) => FACTORS.filter((factor) => group.includes(factor)));
}

function samePackPairs(pours: readonly TriedPour[]): SamePackPair[] {
  const good = pours.filter((pour) => isGood(pour) === true);
  const bad = pours.filter((pour) => isGood(pour) === false);
  return good.flatMap((one) =>
    bad.flatMap((other): SamePackPair[] => {
      const { packFactor } = one;
      if (packFactor === undefined || other.packFactor === undefined || one.foam !== other.foam) return [];
      if (Math.abs(packFactor - other.packFactor) > R.samePack.value + 1e-9) return [];
      const differ = FACTORS.filter(
        (factor) => factor !== 'packFactor' && settingOf(one, factor) !== settingOf(other, factor),
      );
      return [{ good: one.no, bad: other.no, packFactor, differ }];
    }),
  );
}

function whatGoodHad(pours: readonly TriedPour[]): Confounding['goodOnlyWith'] {
  const good = pours.filter((pour) => isGood(pour) === true);
  if (good.length === 0) return undefined;
  const least = (factor: 'packFactor' | 'moldC'): number | undefined => {
    const known = good.map((pour) => pour[factor]).filter((value) => value !== undefined);
    return known.length === 0 ? undefined : Math.min(...known);
  };
  const leastPack = least('packFactor');
  const coldestMoldC = least('moldC');
  return {
    ...(leastPack === undefined ? {} : { leastPack }),
    ...(coldestMoldC === undefined ? {} : { coldestMoldC }),
    plugged: good.every(({ opening }) => opening === 'plug'),
    pours: good.map(({ no }) => no),
  };
}
