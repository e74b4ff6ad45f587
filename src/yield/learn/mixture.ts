import { normalQuantile } from '../normal';
import { shareBelow } from './fastNormal';

/** Normal distributions with weights. */
export interface Mixture {
  middle: Float64Array;
  sd: Float64Array;
  weight: Float64Array;
}

/** The values that these shares lie below: Newton's steps, halving where one would leave the bracket. */
export function mixtureQuantiles(mixture: Mixture, shares: readonly number[]): number[] {
  const moments = momentsOf(mixture);
  return shares.map((share) => turnAround(mixture, share, moments));
}

function momentsOf({ middle, sd, weight }: Mixture): { mean: number; sd: number } {
  const total = weight.reduce((sum, one) => sum + one, 0);
  const mean = middle.reduce((sum, one, i) => sum + weight[i]! * one, 0) / total;
  const variance =
    middle.reduce((sum, one, i) => sum + weight[i]! * ((one - mean) ** 2 + sd[i]! ** 2), 0) / total;
  return { mean, sd: Math.sqrt(variance) };
}

function turnAround(mixture: Mixture, share: number, { mean, sd }: { mean: number; sd: number }): number {
  let low = mean - FAR * sd;
  let high = mean + FAR * sd;
  let y = mean + normalQuantile(share) * sd;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const { below, density } = mixtureAt(mixture, y);
    if (below < share) low = y;
    else high = y;
    const newton = y - (below - share) / density;
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - y) < NEAR * sd) return next;
    y = next;
  }
  return y;
}

const FAR = 30;
/** Newton's last step squares this. */
const NEAR = 1e-4;
const MOST_STEPS = 60;

function mixtureAt({ middle, sd, weight }: Mixture, y: number): { below: number; density: number } {
  let total = 0;
  let below = 0;
  let density = 0;
  for (let i = 0; i < middle.length; i += 1) {
    const z = (y - middle[i]!) / sd[i]!;
    total += weight[i]!;
    below += weight[i]! * shareBelow(z);
    density += (weight[i]! * Math.exp((-z * z) / 2)) / sd[i]!;
  }
  return { below: below / total, density: density / total / Math.sqrt(2 * Math.PI) };
}
