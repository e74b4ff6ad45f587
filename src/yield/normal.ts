import jstat from 'jstat';

/**
 * Share of a standard normal distribution below z, 0..1. jstat's own series is good to about 1e-16 absolute, so a
 * tail below 1e-12 has no correct digits left; it is far below any chance shown here.
 */
export function normalCdf(z: number): number {
  return Math.min(1, Math.max(0, jstat.normal.cdf(z, 0, 1)));
}

/** The z below which a share p of a standard normal distribution lies; p strictly between 0 and 1. */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new Error(`normalQuantile: expected 0 < p < 1, got ${p}`);
  return jstat.normal.inv(p, 0, 1);
}
