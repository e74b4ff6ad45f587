import type { Estimate, Source } from '../../estimate';
import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { RULES } from '../rules';
import { checkLearn } from './checkLearn';
import { logShareBelow } from './fastNormal';
import { LEARN_RULES as R } from './rules';
import { sameGroup } from './sameGroup';
import type { PourGroup } from './sameGroup';

/** One cup test. Its doubt is 3 % when left out. */
export interface FreeRiseCup extends PourGroup {
  freeRiseKgM3: number;
  uFreeRiseShare?: number;
}

/** `short`: what rose into so much of the mold and no further. `full`: what a full, capped mold holds. */
export interface FreeRisePour extends PourGroup {
  outcome: 'short' | 'full';
  /** In the mold: the casting, with what was trimmed off it. */
  castingG: number;
  filledCm3: number;
}

export interface FreeRiseEvidence {
  cups: readonly FreeRiseCup[];
  pours: readonly FreeRisePour[];
  /** The data sheet; 8 % when its doubt is left out. */
  sheet?: { freeRiseKgM3: number; uFreeRiseShare?: number };
  /** Foam and room of the pour to come. */
  at?: PourGroup;
}

export interface LearnedFreeRise {
  freeRiseKgM3: Estimate;
  uShare: number;
  cups: number;
  shortPours: number;
  /** Full pours, taken as upper bounds only. */
  bounds: number;
  /** Of another foam, or in a room more than 8 K away. */
  leftOut: number;
}

/**
 * Free rise from cups and short pours. A full, capped pour would have filled with less, so it only says that the foam of that
 * day rose to no more than its density: regressing it as exact makes the estimate, then the next pour, then the estimate climb
 * for ever. It enters as a left-censored row (Tobin, Econometrica 26 (1958) 24, from memory): a short pour counts by the normal
 * density, a full one by the normal distribution below its density. Posterior on a grid of the free rise and of the scatter
 * from pour to pour (2 to 4 %); pours in a mold carry a skin of 0 to 10 %. Prior: the data sheet. The range holds the truth 9
 * times of 10. Errors: INPUT_NOT_A_NUMBER when nothing at all is known.
 */
export function learnFreeRise(evidence: FreeRiseEvidence): Outcome<LearnedFreeRise> {
  const sound = checkEvidence(evidence);
  if (!sound.ok) return sound;
  const { at = {}, sheet } = evidence;
  const cups = evidence.cups.filter((cup) => sameGroup(cup, at));
  const pours = evidence.pours.filter((pour) => sameGroup(pour, at));
  const shorts = pours.filter(({ outcome }) => outcome === 'short');
  if (sheet === undefined && cups.length + shorts.length === 0)
    return bad('INPUT_NOT_A_NUMBER', { input: 'freeRiseKgM3', value: 'none' });
  const logs = gridAround([
    ...(sheet === undefined ? [] : [sheet.freeRiseKgM3]),
    ...cups.map(({ freeRiseKgM3 }) => freeRiseKgM3),
    ...shorts.map(leastKgM3),
  ]);
  const used: Used = sheet === undefined ? { cups, pours } : { sheet, cups, pours };
  const likelihoods = logs.map((log) => logLikelihood(Math.exp(log), used));
  const most = Math.max(...likelihoods);
  const weights = likelihoods.map((log) => Math.exp(log - most));
  const { value, low, high, uShare } = summary(logs, weights);
  const from: Source = cups.length > 0 ? 'cup-test' : shorts.length > 0 ? 'learned' : 'data-sheet';
  return good({
    freeRiseKgM3: { value, low, high, from },
    uShare,
    cups: cups.length,
    shortPours: shorts.length,
    bounds: pours.length - shorts.length,
    leftOut: evidence.cups.length + evidence.pours.length - cups.length - pours.length,
  });
}

/** Density of what is in the mold, with its skin. */
const moldedKgM3 = ({ castingG, filledCm3 }: FreeRisePour): number => (1000 * castingG) / filledCm3;
const leastKgM3 = (pour: FreeRisePour): number => moldedKgM3(pour) / (1 + R.skinInLeast.value);

type Used = Pick<FreeRiseEvidence, 'sheet' | 'cups' | 'pours'>;

/** In logarithms: evidence at odds with itself would leave nothing that a double could hold. */
function logLikelihood(freeRiseKgM3: number, { sheet, cups, pours }: Used): number {
  const off = (seenKgM3: number, uShare: number): number =>
    Math.log(seenKgM3 / freeRiseKgM3) / Math.max(uShare, SMALLEST_U);
  let log = sheet === undefined ? 0 : logBell(off(sheet.freeRiseKgM3, uOfSheet(sheet)));
  for (const cup of cups) log += logBell(off(cup.freeRiseKgM3, cup.uFreeRiseShare ?? RULES.cupToCup.value));
  const byScatter = SCATTERS.map((scatter) => {
    const u = Math.hypot(scatter, SKIN_U);
    return pours.reduce((sum, pour) => {
      const z = off(leastKgM3(pour), u);
      return sum + (pour.outcome === 'short' ? logBell(z) - Math.log(u) : logShareBelow(z));
    }, 0);
  });
  const most = Math.max(...byScatter);
  return log + most + Math.log(byScatter.reduce((sum, one) => sum + Math.exp(one - most), 0));
}

const logBell = (z: number): number => (-z * z) / 2;
const uOfSheet = ({ uFreeRiseShare }: { uFreeRiseShare?: number }): number =>
  uFreeRiseShare ?? RULES.uFreeRiseLabel.value;

const SMALLEST_U = 1e-3;
/** Every value of the range alike. */
const SKIN_U = (R.skinInLeast.high - R.skinInLeast.low) / Math.sqrt(12);
const SCATTERS = [R.pourScatter.low, R.pourScatter.value, R.pourScatter.high];

/** Even steps of the logarithm of the density, well past all that was seen. */
function gridAround(seenKgM3: readonly number[]): number[] {
  const from = Math.log(Math.min(...seenKgM3)) - GRID_PAST;
  const to = Math.log(Math.max(...seenKgM3)) + GRID_PAST;
  return Array.from({ length: GRID_POINTS }, (_, i) => from + ((to - from) * i) / (GRID_POINTS - 1));
}

/** Four times the doubt of a data sheet. */
const GRID_PAST = 0.32;
const GRID_POINTS = 401;

function summary(
  logs: readonly number[],
  weights: readonly number[],
): { value: number; low: number; high: number; uShare: number } {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = logs.reduce((sum, log, i) => sum + log * weights[i]!, 0) / total;
  const variance = logs.reduce((sum, log, i) => sum + (log - mean) ** 2 * weights[i]!, 0) / total;
  const tail = (1 - R.rangeShare.value) / 2;
  const at = (share: number): number => Math.exp(quantileOf(logs, weights, share * total));
  return { value: Math.exp(mean), low: at(tail), high: at(1 - tail), uShare: Math.sqrt(variance) };
}

function quantileOf(logs: readonly number[], weights: readonly number[], wanted: number): number {
  let sum = 0;
  for (const [i, weight] of weights.entries()) {
    if (sum + weight >= wanted) {
      const step = logs[1]! - logs[0]!;
      return logs[i]! + step * ((wanted - sum) / weight - 0.5);
    }
    sum += weight;
  }
  return logs.at(-1)!;
}

function checkEvidence({ cups, pours, sheet }: FreeRiseEvidence): Outcome<true> {
  for (const { freeRiseKgM3, uFreeRiseShare } of [...cups, ...(sheet === undefined ? [] : [sheet])]) {
    const sound = checkLearn({ freeRiseKgM3 }, { uFreeRiseShare });
    if (!sound.ok) return sound;
  }
  for (const { castingG, filledCm3 } of pours) {
    const sound = checkLearn({ castingG, filledCm3, freeRiseKgM3: (1000 * castingG) / filledCm3 });
    if (!sound.ok) return sound;
  }
  return good(true);
}
