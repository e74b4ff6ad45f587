import type { Estimate } from '../estimate';
import { bad, finding, good } from '../problem';
import type { Outcome, Problem } from '../problem';
import { checkWithin } from './checkInput';
import { normalQuantile } from './normal';
import { INPUT_BOUNDS, RULES } from './rules';
import { waterGPerCm3 } from './water';

/** Masses on the scale in g: the cup full of trimmed foam, the empty cup, the water that fills it to the rim. */
export interface CupWeights {
  fullG: number;
  cupG: number;
  waterG: number;
  waterTempC: number;
}

export interface CupResult {
  freeRiseKgM3: number;
  foamG: number;
  cupCm3: number;
}

/**
 * Free-rise density from one cup trimmed flush with its rim, its volume from a water fill (after the cup test of
 * ASTM D7487). The wall skin makes it read a little above the density of a core cut from a block.
 */
export function freeRiseFromCup({ fullG, cupG, waterG, waterTempC }: CupWeights): Outcome<CupResult> {
  for (const [input, value] of Object.entries({ fullG, cupG, waterG, waterTempC })) {
    if (!Number.isFinite(value)) return bad('INPUT_NOT_A_NUMBER', { input, value: String(value) });
  }
  if (cupG < 0 || waterG <= 0 || fullG <= cupG) return bad('CUP_WEIGHTS', { fullG, cupG, waterG });
  if (waterTempC < WATER_C.low || waterTempC > WATER_C.high) {
    return bad('INPUT_OUT_OF_BOUNDS', { input: 'waterTempC', value: waterTempC, ...WATER_C, unit: 'C' });
  }
  const cupCm3 = waterG / waterGPerCm3(waterTempC);
  const foamG = fullG - cupG;
  return good({ freeRiseKgM3: (1000 * foamG) / cupCm3, foamG, cupCm3 });
}

export interface CupsResult {
  freeRiseKgM3: number;
  /** Relative standard uncertainty of the mean. */
  uShare: number;
  cups: number;
  findings: Problem[];
}

/**
 * Mean of the cups of one day. Its uncertainty is s / sqrt(n), but not below what few cups can tell: 3 % / sqrt(n) for
 * one or two, 1.5 % for three and more, 4 % where a cup holds less than 100 g (common practice, no source).
 */
export function freeRiseFromCups(weights: readonly CupWeights[]): Outcome<CupsResult> {
  const results: CupResult[] = [];
  for (const cup of weights) {
    const result = freeRiseFromCup(cup);
    if (!result.ok) return result;
    results.push(result.value);
  }
  const cups = results.length;
  if (cups === 0) return bad('INPUT_NOT_A_NUMBER', { input: 'cups', value: 'none' });
  const freeRiseKgM3 = results.reduce((sum, cup) => sum + cup.freeRiseKgM3, 0) / cups;
  const squares = results.reduce((sum, cup) => sum + (cup.freeRiseKgM3 - freeRiseKgM3) ** 2, 0);
  const scatterShare = cups < 2 ? 0 : Math.sqrt(squares / (cups - 1) / cups) / freeRiseKgM3;
  const smallestG = Math.min(...results.map((cup) => cup.foamG));
  const small = smallestG < RULES.smallCup.value;
  const floorShare = cups < 3 ? RULES.cupToCup.value / Math.sqrt(cups) : RULES.uFreeRiseCup.value;
  const uShare = Math.max(scatterShare, floorShare, small ? RULES.uSmallCup.value : 0);
  const findings = small
    ? [finding('CUP_TEST_SMALL', 'look', { foamG: smallestG, wantedG: RULES.smallCup.value, uShare })]
    : [];
  return good({ freeRiseKgM3, uShare, cups, findings });
}

/** The free rise of a day, kg/m3, with the range that holds it 9 times of 10; its relative standard uncertainty; and each cup. */
export interface CupTest {
  freeRiseKgM3: Estimate;
  uShare: number;
  cups: CupResult[];
  findings: Problem[];
}

/** Upper end of a range that holds 9 times of 10. */
const NINE_OF_TEN = 0.95;

/**
 * What the cups of one day come to: their mean with its range. A density that no foam has comes of a slip, and is refused. Errors: those
 * of `freeRiseFromCups`, INPUT_OUT_OF_BOUNDS.
 */
export function cupTest(weights: readonly CupWeights[]): Outcome<CupTest> {
  const mean = freeRiseFromCups(weights);
  if (!mean.ok) return mean;
  const cups: CupResult[] = [];
  for (const one of weights) {
    const cup = freeRiseFromCup(one);
    if (!cup.ok) return cup;
    const dense = checkWithin(cup.value.freeRiseKgM3, INPUT_BOUNDS.freeRiseKgM3, 'freeRiseKgM3');
    if (!dense.ok) return dense;
    cups.push(cup.value);
  }
  const { freeRiseKgM3: value, uShare, findings } = mean.value;
  const half = normalQuantile(NINE_OF_TEN) * uShare * value;
  const freeRiseKgM3: Estimate = {
    value,
    low: Math.max(0, value - half),
    high: value + half,
    from: 'cup-test',
  };
  return good({ freeRiseKgM3, uShare, cups, findings });
}

const WATER_C = { low: 1, high: 40 };
