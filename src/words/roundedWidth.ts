import { MM_PER_IN, type Show } from '../units';
import { atLeast, atMost } from './roundedMm';
import { amount } from './sentence';

/** The narrowest and the widest that is advised, rounded to the safe side in both systems. */
export const leastWidth = (mm: number, show: Show): string =>
  shown(atLeast(mm), Math.ceil(hundredths(mm) - SLACK), show);
export const mostWidth = (mm: number, show: Show): string =>
  shown(atMost(mm), Math.floor(hundredths(mm) + SLACK), show);

const hundredths = (mm: number): number => (100 * mm) / MM_PER_IN;

/** A width of just so many hundredths stays that, whatever its last digit in a double is. */
const SLACK = 1e-6;

function shown(metric: string, hundredthsIn: number, show: Show): string {
  const us = `${amount(hundredthsIn / 100)} in`;
  return show === 'metric' ? metric : show === 'us' ? us : `${metric} (${us})`;
}
