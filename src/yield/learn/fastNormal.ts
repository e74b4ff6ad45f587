import { normalCdf } from '../normal';

/** Normal distribution to 7.5e-8, many times faster than the exact one (Abramowitz and Stegun, 26.2.17). */
export function shareBelow(z: number): number {
  if (z > 6) return 1;
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const series =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (series * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
  return z < 0 ? tail : 1 - tail;
}

/** Its logarithm, good in the far tail too, where many bounds together would leave nothing that a double could hold. */
export function logShareBelow(z: number): number {
  if (z > -3) return Math.log(shareBelow(z));
  if (z > -30) return Math.log(normalCdf(z));
  return (-z * z) / 2 - Math.log(-z * Math.sqrt(2 * Math.PI));
}
