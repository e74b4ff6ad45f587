import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkPack } from '../packFactor';
import { checkPour } from './checkPour';
import { POUR_RULES as R } from './rules';

/**
 * How many times stiffer a foam of one pack is than one of another: (k2/k1)^n, n = 2, range 1.5 to 2.5 (Gibson and Ashby,
 * Cellular Solids). Only within one formulation: another foam of the same density can be harder or softer. Show "about 1.4
 * times", never newtons.
 */
export function stiffnessRatio({
  packFactor,
  referencePack,
  stiffnessPower = R.stiffnessPower.value,
}: {
  packFactor: number;
  referencePack: number;
  stiffnessPower?: number;
}): Outcome<Estimate> {
  const sound = checkPour({ stiffnessPower });
  if (!sound.ok) return sound;
  for (const pack of [packFactor, referencePack]) {
    const checked = checkPack(pack);
    if (!checked.ok) return checked;
  }
  const denser = packFactor / referencePack;
  const ends = [R.stiffnessPower.low, R.stiffnessPower.high, stiffnessPower].map((n) => denser ** n);
  return good({
    value: denser ** stiffnessPower,
    low: Math.min(...ends),
    high: Math.max(...ends),
    from: 'assumed',
  });
}
