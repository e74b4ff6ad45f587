import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { normalQuantile } from '../normal';
import { RULES } from '../rules';
import { checkLearn } from './checkLearn';
import { flatPrior, learnRows, predictAt, unknownsOf } from './normalInverseGamma';
import type { NormalInverseGamma } from './normalInverseGamma';
import { LEARN_RULES as R } from './rules';
import { studentRange } from './studentT';
import type { StudentT } from './studentT';

export interface WeighedResidue {
  mixedG: number;
  residueG: number;
}

/**
 * What stays in the cup: `line` = a + b x mixed mass; `mean` where the masses were too alike to tell a slope; `default` under three
 * pours. Ranges hold the truth 9 times of 10.
 */
export interface ResidueLine {
  way: 'line' | 'mean' | 'default';
  /** How many pours it was learned from; under three they were not used. */
  pours: number;
  /** a, in g, and b, in g of residue for a g of mix. */
  fixedG?: Estimate;
  perMixed?: Estimate;
  /** Standard deviation of the pours about it. */
  scatterG?: number;
  meanMixedG?: number;
  model?: NormalInverseGamma;
}

/**
 * Least squares through past residues. Its ranges count a scatter of 3 g as three more pours (`LEARN_RULES`): the line is that of
 * least squares all the same. Under three pours it falls back to the default hold-up and says so.
 */
export function learnResidue(rows: readonly WeighedResidue[]): Outcome<ResidueLine> {
  for (const { mixedG, residueG } of rows) {
    const sound = checkLearn({ mixedG, residueG });
    if (!sound.ok) return sound;
  }
  const pours = rows.length;
  if (pours < R.leastPours.value) return good({ way: 'default', pours });
  const meanMixedG = rows.reduce((sum, { mixedG }) => sum + mixedG, 0) / pours;
  const line = fit(rows, ({ mixedG }) => [1, mixedG]);
  // Masses a few grams apart give any slope, even one above 1: then their mean says all there is to say.
  if (line === undefined || line.uOf(1) > R.residueSlopeU.value) {
    const { model, scatterG, ranges } = fit(rows, () => [1])!;
    return good({ way: 'mean', pours, meanMixedG, model, scatterG, fixedG: ranges[0]! });
  }
  const { model, scatterG, ranges } = line;
  return good({
    way: 'line',
    pours,
    meanMixedG,
    model,
    scatterG,
    fixedG: ranges[0]!,
    perMixed: ranges[1]!,
  });
}

/** The residue to expect of so much mix, with the range of a single pour. */
export function residueAt(line: ResidueLine, mixedG: number): Estimate {
  const next = nextAt(line, mixedG);
  if (next === undefined) return defaultResidue();
  const [low, high] = studentRange(R.rangeShare.value, next);
  return {
    value: Math.max(0, next.location),
    low: Math.max(0, low),
    high: Math.max(0, high),
    from: 'learned',
  };
}

/** Standard uncertainty of that residue, in g. */
export function residueUG(line: ResidueLine, mixedG: number): number {
  const next = nextAt(line, mixedG);
  if (next === undefined) return RULES.uResidue.value;
  return next.scale * Math.sqrt(next.df / Math.max(1, next.df - 2));
}

function nextAt({ model, way, meanMixedG = Number.NaN }: ResidueLine, mixedG: number): StudentT | undefined {
  if (model === undefined) return undefined;
  if (way === 'line') return predictAt(model, [1, mixedG]);
  return Math.abs(mixedG / meanMixedG - 1) <= R.residueReach.value ? predictAt(model, [1]) : undefined;
}

function defaultResidue(): Estimate {
  const { value } = RULES.residue;
  const half = normalQuantile((1 + R.rangeShare.value) / 2) * RULES.uResidue.value;
  return { value, low: value - half, high: value + half, from: 'assumed' };
}

function fit(
  rows: readonly WeighedResidue[],
  xOf: (row: WeighedResidue) => number[],
):
  | { model: NormalInverseGamma; scatterG: number; ranges: Estimate[]; uOf: (unknown: number) => number }
  | undefined {
  const unknowns = xOf(rows[0]!).length;
  const worth = R.residueScatterWorth.value / 2;
  const flat = flatPrior(unknowns);
  const prior = { ...flat, shape: flat.shape + worth, rate: worth * R.residueScatter.value ** 2 };
  const model = learnRows(
    prior,
    rows.map((row) => ({ x: xOf(row), y: row.residueG })),
  );
  if (model === undefined) return undefined;
  const unknownsT = unknownsOf(model)!;
  const ranges = unknownsT.map((unknown): Estimate => {
    const [low, high] = studentRange(R.rangeShare.value, unknown);
    return { value: unknown.location, low, high, from: 'learned' };
  });
  const squares = 2 * (model.rate - prior.rate);
  return {
    model,
    scatterG: Math.sqrt(squares / (rows.length - unknowns)),
    ranges,
    uOf: (i) => unknownsT[i]!.scale,
  };
}
