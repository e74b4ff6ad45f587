import jstat from 'jstat';

/** A Student t distribution moved and stretched. */
export interface StudentT {
  df: number;
  location: number;
  scale: number;
}

/** The value below which a share p lies; p strictly between 0 and 1. jstat's t quantile is good to about 1e-7 of itself. */
export function studentQuantile(p: number, { df, location, scale }: StudentT): number {
  if (!(p > 0 && p < 1)) throw new Error(`studentQuantile: expected 0 < p < 1, got ${p}`);
  return location + scale * jstat.studentt.inv(p, df);
}

/** The middle range that holds this share of it. */
export function studentRange(share: number, t: StudentT): [low: number, high: number] {
  const tail = (1 - share) / 2;
  return [studentQuantile(tail, t), studentQuantile(1 - tail, t)];
}
