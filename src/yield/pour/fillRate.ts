import jstat from 'jstat';
import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkPour } from './checkPour';

/** How often castings of a level filled. */
export interface FillRate {
  poured: number;
  filled: number;
  /** Mean and lower 5 % bound of the chance that the next one fills; flat prior, Beta(1 + filled, 1 + short). */
  mean: number;
  low: number;
}

/**
 * Chance of filling from castings that did and did not (Bayes with a flat prior; beta distribution by jstat). Eight castings
 * with one short still leave anything from 57 %: counts say little, masses say more.
 */
export function fillRate({ poured, filled }: { poured: number; filled: number }): Outcome<FillRate> {
  const sound = checkPour({ poured, filled });
  if (!sound.ok) return sound;
  if (filled > poured) {
    return bad('INPUT_OUT_OF_BOUNDS', { input: 'filled', value: filled, low: 0, high: poured, unit: '' });
  }
  const short = poured - filled;
  const mean = (1 + filled) / (2 + poured);
  return good({ poured, filled, mean, low: jstat.beta.inv(0.05, 1 + filled, 1 + short) });
}
