import { choleskyOf, inverseSymmetric, solveSymmetric } from './cholesky';
import type { Matrix } from './cholesky';
import { studentQuantile } from './studentT';
import type { StudentT } from './studentT';

/**
 * What is believed of a straight model y = x . b + e: b | s2 normal about `mean` with covariance s2 / `precision`, and s2 inverse
 * gamma of `shape` and `rate`. `rows` counts what it was learned from.
 */
export interface NormalInverseGamma {
  mean: readonly number[];
  precision: Matrix;
  shape: number;
  rate: number;
  rows: number;
}

export interface LearnedRow {
  x: readonly number[];
  y: number;
}

/** Knows nothing: a model learned from it is that of ordinary least squares (precision 0, shape -p/2, rate 0). */
export const flatPrior = (unknowns: number): NormalInverseGamma => ({
  mean: Array.from({ length: unknowns }, () => 0),
  precision: Array.from({ length: unknowns }, () => Array.from({ length: unknowns }, () => 0)),
  shape: -unknowns / 2,
  rate: 0,
  rows: 0,
});

/**
 * The same belief after more rows (Gelman et al., Bayesian Data Analysis, 3rd edition, chapter 14, from memory; checked against
 * certified least-squares values): Pn = P0 + X'X, Pn mn = P0 m0 + X'y, an = a0 + n/2, and bn from residuals,
 * b0 + (|y - X mn|^2 + (mn - m0)' P0 (mn - m0)) / 2, since the textbook y'y - mn' Pn mn loses its digits. Undefined where the rows
 * and the prior together do not settle every unknown.
 */
export function learnRows(
  prior: NormalInverseGamma,
  rows: readonly LearnedRow[],
): NormalInverseGamma | undefined {
  const precision = prior.precision.map((line, i) =>
    line.map((value, j) => rows.reduce((sum, { x }) => sum + x[i]! * x[j]!, value)),
  );
  let mean: number[] = [...prior.mean];
  for (let pass = 0; pass < REFINEMENTS; pass += 1) {
    const step = solveSymmetric(precision, pullAt(mean, prior, rows));
    if (step === undefined) return undefined;
    mean = mean.map((value, i) => value + step[i]!);
  }
  const shape = prior.shape + rows.length / 2;
  const moved = mean.map((value, i) => value - prior.mean[i]!);
  const squares = rows.reduce((sum, { x, y }) => sum + (y - dot(x, mean)) ** 2, 0);
  const rate = prior.rate + (squares + dot(moved, times(prior.precision, moved))) / 2;
  return { mean, precision, shape, rate, rows: prior.rows + rows.length };
}

/** The first solves, the others take back what rounding did to it. */
const REFINEMENTS = 3;

/** X'(y - X b) + P0 (m0 - b): nothing at the answer. */
function pullAt(b: readonly number[], prior: NormalInverseGamma, rows: readonly LearnedRow[]): number[] {
  const home = prior.mean.map((value, i) => value - b[i]!);
  return times(prior.precision, home).map((value, i) =>
    rows.reduce((sum, { x, y }) => sum + x[i]! * (y - dot(x, b)), value),
  );
}

/** Where the next y at x will lie: Student t of 2 an degrees, scale sqrt(bn/an (1 + x' Pn^-1 x)). Undefined below one degree. */
export function predictAt(model: NormalInverseGamma, x: readonly number[]): StudentT | undefined {
  const spread = solveSymmetric(model.precision, x);
  if (spread === undefined || model.shape < HALF_A_DEGREE) return undefined;
  const scale = Math.sqrt((model.rate / model.shape) * (1 + dot(x, spread)));
  return { df: 2 * model.shape, location: dot(x, model.mean), scale };
}

const HALF_A_DEGREE = 0.5;

/** How well each unknown is known: standard deviation of its t distribution's scale, sqrt(bn/an diag Pn^-1). */
export function unknownsOf(model: NormalInverseGamma): StudentT[] | undefined {
  const covariance = inverseSymmetric(model.precision);
  if (covariance === undefined || model.shape < HALF_A_DEGREE) return undefined;
  const s2 = model.rate / model.shape;
  return model.mean.map((location, i) => ({
    df: 2 * model.shape,
    location,
    scale: Math.sqrt(s2 * covariance[i]![i]!),
  }));
}

/** The y that the next pour at x stays under with the wanted chance, such as the mass that fills 95 times of 100. */
export function amountForChance(
  model: NormalInverseGamma,
  x: readonly number[],
  chance: number,
): number | undefined {
  const next = predictAt(model, x);
  return next === undefined ? undefined : studentQuantile(chance, next);
}

/** Lower triangle of the covariance of the unknowns without its s2. */
export function spreadOf({ precision }: NormalInverseGamma): number[][] | undefined {
  const covariance = inverseSymmetric(precision);
  return covariance === undefined ? undefined : choleskyOf(covariance);
}

export const dot = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, value, i) => sum + value * other[i]!, 0);

const times = (matrix: Matrix, v: readonly number[]): number[] => matrix.map((row) => dot(row, v));
