import { finding } from '../../problem';
import type { Problem } from '../../problem';
import { MOLDMAKING_RULES } from './rules';

/** Is this more than one person should lift? A mold is gripped badly and must not be set down hard. */
export function liftFindings(massG: number): Problem[] {
  const massKg = massG / 1000;
  const lookKg = MOLDMAKING_RULES.liftLook.value;
  return massKg > lookKg ? [finding('LIFT_HEAVY', 'look', { massKg, lookKg })] : [];
}
