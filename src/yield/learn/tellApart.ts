import { RULES } from '../rules';
import { WARMTH_RULES } from '../warmth';
import type { Confounding } from './confounded';
import { emptierCorner } from './emptierCorner';
import { changeFrom, roundPack } from './oneChange';
import type { OneChange } from './oneChange';
import { LEARN_RULES as R } from './rules';
import { settingOf } from './triedPour';
import type { Factor, TriedPour } from './triedPour';

/**
 * Of settings that moved together the easiest one, changed alone from a good pour, to where least was tried. Undefined where nothing
 * moved together or nothing sensible is left to try.
 */
export function tellApart(
  pours: readonly TriedPour[],
  base: TriedPour,
  confounding: Confounding,
): OneChange | undefined {
  const { changeNext: easiest, groups } = confounding;
  const group = groups.find((one) => easiest !== undefined && one.includes(easiest));
  if (group === undefined || easiest === undefined) return undefined;
  const make = changeFrom(pours, base, confounding);
  for (const factor of [easiest, ...group.filter((one) => one !== easiest)]) {
    const spot = emptierCorner(pours, base, factor, offered(pours, base, factor));
    if (spot === undefined) continue;
    const change = make(
      factor,
      spot.to,
      'tell-apart',
      pours.map(({ no }) => no),
    );
    const apartFrom = group.filter((one) => one !== factor);
    const nearest = { no: spot.nearestNo, distance: spot.distance };
    if (change !== undefined) return { ...change, apartFrom, nearest };
  }
  return undefined;
}

/**
 * Values to try: the mold by degrees, within the common band and within what was tried (beyond it is no corner but a leap); the pack
 * never denser; a mouth may be plugged but not opened, as that gives the pack away; the room is what it is.
 */
function offered(pours: readonly TriedPour[], base: TriedPour, factor: Factor): number[] {
  const from = settingOf(base, factor);
  if (from === undefined || factor === 'roomC') return [];
  if (factor === 'opening') return from === 0 ? [1] : [];
  if (factor === 'packFactor') {
    const lighter = [1, 2].map((steps) => roundPack(from - steps * R.packStepNext.value));
    return lighter.filter((pack) => pack >= RULES.packFine.low);
  }
  const tried = pours.map(({ moldC }) => moldC).filter((tempC) => tempC !== undefined);
  const low = Math.max(WARMTH_RULES.moldFine.low, Math.ceil(Math.min(...tried)));
  const high = Math.min(WARMTH_RULES.moldFine.high, Math.floor(Math.max(...tried)));
  const degrees = Array.from({ length: Math.max(0, high - low + 1) }, (_, i) => low + i);
  return degrees.filter((tempC) => Math.abs(tempC - from) >= R.moldStepLeast.value);
}
