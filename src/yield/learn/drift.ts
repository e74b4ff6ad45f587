import type { Estimate } from '../../estimate';
import { flatPrior, learnRows, unknownsOf } from './normalInverseGamma';
import { LEARN_RULES as R } from './rules';
import { studentRange } from './studentT';

/** One casting of a mold by its place in the mold's life, from 1, and what was seen of it. */
export interface LifePoint {
  place: number;
  seen: number;
}

/**
 * `moves`: the line through the points climbs or falls by more than their scatter explains, 9 times in 10. `still`: it does not.
 * `cannot-tell`: under six castings.
 */
export interface Drift {
  verdict: 'moves' | 'still' | 'cannot-tell';
  castings: number;
  /** For each casting more. */
  slope?: Estimate;
  /** Standard deviation about the line. */
  scatter?: number;
}

/** Whether something moves along a mold's life: least squares on the number of the casting. Points that all agree to the digit do not move. */
export function learnDrift(points: readonly LifePoint[]): Drift {
  const castings = points.length;
  const none: Drift = { verdict: 'cannot-tell', castings };
  if (castings < R.driftLeast.value) return none;
  const middle = points.reduce((sum, { place }) => sum + place, 0) / castings;
  const rows = points.map(({ place, seen }) => ({ x: [1, place - middle], y: seen }));
  const model = learnRows(flatPrior(2), rows);
  const slopeT = model === undefined ? undefined : unknownsOf(model)?.[1];
  if (model === undefined || slopeT === undefined) return none;
  const [low, high] = studentRange(R.rangeShare.value, slopeT);
  const slope: Estimate = { value: slopeT.location, low, high, from: 'learned' };
  const scatter = Math.sqrt((2 * model.rate) / (castings - 2));
  return { verdict: low > 0 || high < 0 ? 'moves' : 'still', castings, slope, scatter };
}
