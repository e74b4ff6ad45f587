import jstat from 'jstat';
import { normalQuantile } from '../normal';
import { logShareBelow } from './fastNormal';
import { mixtureQuantiles } from './mixture';
import type { Mixture } from './mixture';
import { spreadOf } from './normalInverseGamma';
import type { NormalInverseGamma } from './normalInverseGamma';

/** y at x is at most `most`: a row of which only that is known. */
export interface UpperBound {
  x: readonly number[];
  most: number;
}

/** Draws of a belief, column by column, with the weight that the bounds leave each. */
export interface BeliefCloud {
  unknowns: readonly Float64Array[];
  sigma: Float64Array;
  weight: Float64Array;
  /** How many draws count as it were: low where the bounds contradict the belief. */
  worth: number;
}

/**
 * A belief under upper bounds has no closed form. It is drawn from (3 dimensions of Halton's even points, Numerische Mathematik 2
 * (1960) 84), each draw weighted by the chance that every bound holds under it: importance sampling from the exact rows' own
 * posterior (Gelman et al., Bayesian Data Analysis, 3rd edition, 10.4; both from memory). The points are fixed: same rows, same answer.
 */
export function cloudOf(belief: NormalInverseGamma, bounds: readonly UpperBound[]): BeliefCloud {
  const spread = spreadOf(belief)!;
  const sigma = gammaDraws(belief.shape).map((gamma) => Math.sqrt(belief.rate / gamma));
  const unknowns = belief.mean.map((mean, k) =>
    sigma.map((one, i) => {
      let away = 0;
      for (let j = 0; j <= k; j += 1) away += spread[k]![j]! * normalDraws()[j]![i]!;
      return mean + one * away;
    }),
  );
  const logs = new Float64Array(DRAWS);
  for (const bound of bounds) weigh(logs, bound, unknowns, sigma);
  const most = Math.max(...logs);
  const weight = logs.map((log) => Math.exp(log - most));
  const sum = weight.reduce((all, one) => all + one, 0);
  const squares = weight.reduce((all, one) => all + one * one, 0);
  return { unknowns, sigma, weight, worth: (sum * sum) / squares };
}

function weigh(
  logs: Float64Array,
  { x, most }: UpperBound,
  unknowns: readonly Float64Array[],
  sigma: Float64Array,
): void {
  const y = placesAt(x, unknowns);
  for (let i = 0; i < y.length; i += 1) logs[i]! += logShareBelow((most - y[i]!) / sigma[i]!);
}

/** x . unknowns, draw by draw. */
function placesAt(x: readonly number[], unknowns: readonly Float64Array[]): Float64Array {
  const y = new Float64Array(DRAWS);
  for (const [k, column] of unknowns.entries()) {
    for (let i = 0; i < y.length; i += 1) y[i]! += x[k]! * column[i]!;
  }
  return y;
}

export const DRAWS = 1000;

/** The n-th number of van der Corput's sequence of a base, in 0..1. */
function vanDerCorput(n: number, base: number): number {
  let value = 0;
  let place = 1;
  for (let rest = n; rest > 0; rest = Math.floor(rest / base)) {
    place /= base;
    value += (rest % base) * place;
  }
  return value;
}

const evenly = (base: number): Float64Array =>
  Float64Array.from({ length: DRAWS }, (_, i) => vanDerCorput(i + 1, base));

/** Made when first asked for. */
let normals: Float64Array[] | undefined;
const normalDraws = (): Float64Array[] =>
  (normals ??= [evenly(3).map(normalQuantile), evenly(5).map(normalQuantile)]);

/** Shapes come in halves and few: each is drawn once. */
const drawn = new Map<number, Float64Array>();

function gammaDraws(shape: number): Float64Array {
  const known = drawn.get(shape);
  if (known !== undefined) return known;
  const draws = evenly(2).map((chi) => jstat.gamma.inv(chi, shape, 1));
  drawn.set(shape, draws);
  return draws;
}

/** The values that these shares lie below, of the pour to come at x with its scatter and `extraU` on top. */
export function cloudQuantiles(
  { unknowns, sigma, weight }: BeliefCloud,
  x: readonly number[],
  extraU: number,
  shares: readonly number[],
): number[] {
  const mixture: Mixture = {
    middle: placesAt(x, unknowns),
    sd: sigma.map((one) => Math.sqrt(one * one + extraU * extraU)),
    weight,
  };
  return mixtureQuantiles(mixture, shares);
}
