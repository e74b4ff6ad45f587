import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { RULES } from '../rules';
import { checkPour } from './checkPour';
import { POUR_RULES as R } from './rules';

/** From one pack to another in steps, both ends in; or a list. */
export interface PackLevels {
  from?: number;
  to?: number;
  step?: number;
  list?: readonly number[];
}

/**
 * The packs to compare, each once, the least first: 1.10 to 1.60 in steps of 0.10 when nothing is said. A pack that no foam can
 * have stays in the list: its column says why it is refused. Errors: PACK_LEVELS, INPUT_OUT_OF_BOUNDS, INPUT_NOT_A_NUMBER.
 */
export function packLevels({
  from = RULES.packFine.low,
  to = RULES.packFine.high,
  step = STEP,
  list,
}: PackLevels): Outcome<number[]> {
  const most = R.mostLevels.value;
  if (list !== undefined) {
    const levels = [...new Set(list)].sort((a, b) => a - b);
    return levels.length >= 1 && levels.length <= most
      ? good(levels)
      : bad('PACK_LEVELS', { levels: levels.length, most });
  }
  const sound = checkPour({ packStep: step });
  if (!sound.ok) return sound;
  for (const [input, value] of Object.entries({ packFrom: from, packTo: to })) {
    if (!Number.isFinite(value)) return bad('INPUT_NOT_A_NUMBER', { input, value: String(value) });
  }
  // 0.1 five times is a hair under 0.5: that is no reason to leave out the last level.
  const levels = Math.floor((to - from) / step + 1e-9) + 1;
  if (levels < 1 || levels > most) return bad('PACK_LEVELS', { levels: Math.max(0, levels), most });
  return good(Array.from({ length: levels }, (_, index) => Number((from + index * step).toPrecision(12))));
}

const STEP = 0.1;
