import jstat from 'jstat';

/**
 * Share of a standard normal distribution below z, 0..1. jstat's own series is good to about 1e-16 absolute, which is
 * nothing in a far tail: below z = -5 the continued fraction takes over, to the last digits until a double ends at -38.
 */
export function normalCdf(z: number): number {
  if (z < TAIL_FROM) return tailBelow(-z);
  return Math.min(1, Math.max(0, jstat.normal.cdf(z, 0, 1)));
}

const TAIL_FROM = -5;
const TAIL_TERMS = 60;

/** phi(x) / (x + 1/(x + 2/(x + 3/(x + ...)))) (Abramowitz and Stegun, 26.2.14). */
function tailBelow(x: number): number {
  let fraction = x;
  for (let term = TAIL_TERMS; term > 0; term -= 1) fraction = x + term / fraction;
  return Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI) / fraction;
}

/** The z below which a share p of a standard normal distribution lies; p strictly between 0 and 1. */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new Error(`normalQuantile: expected 0 < p < 1, got ${p}`);
  return jstat.normal.inv(p, 0, 1);
}
