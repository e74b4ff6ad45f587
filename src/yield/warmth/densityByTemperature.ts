import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkWarmth } from './checkWarmth';
import { WARMTH_RULES } from './rules';

/**
 * By which factor the free-rise density changes when the ingredients are so many kelvin warmer (below 0: colder) than
 * where it was measured: 2 to 5 % heavier for each 5 K colder, compounding. Common practice, no source; the gas law alone
 * gives 1.4 % (ideal gas, 298 to 303 K), the rest is slower reaction and thicker liquid. Only within 20 K. A cup test of
 * the same day and room has it inside already: then 1, and nothing is corrected twice. Error: bounds.
 */
export function densityFactorByTemperature({
  warmerK,
  isCupOfToday,
}: {
  warmerK: number;
  isCupOfToday: boolean;
}): Outcome<Estimate> {
  const checked = checkWarmth({ warmerK });
  if (!checked.ok) return checked;
  if (isCupOfToday) return good({ value: 1, low: 1, high: 1, from: 'cup-test' });
  const factor = (per5K: number): number => (1 + per5K) ** (-warmerK / 5);
  const { value, low, high } = WARMTH_RULES.densityPer5K;
  const [least, most] = warmerK > 0 ? [high, low] : [low, high];
  return good({ value: factor(value), low: factor(least), high: factor(most), from: 'assumed' });
}
