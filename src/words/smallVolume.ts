import { CM3_PER_IN3, type Show } from '../units';
import { amount } from './sentence';

/** A pocket of air, to two digits; in cubic inches beside, as fluid ounces of a thimbleful say nothing. */
export function smallVolume(volumeCm3: number, show: Show): string {
  const metric = `${amount(volumeCm3, 2)} cm\u00b3`;
  const us = `${amount(volumeCm3 / CM3_PER_IN3, 2)} cu in`;
  return show === 'metric' ? metric : show === 'us' ? us : `${metric} (${us})`;
}
