import { good } from '../../problem';
import type { Outcome, Status } from '../../problem';
import { RULES } from '../rules';
import { scaleReadingUG } from '../scaleCheck';
import { checkLearn } from './checkLearn';
import { LEARN_RULES as R } from './rules';

/** Weights after a pour; what was not weighed is left out. */
export interface WeighBack {
  mixedG?: number;
  residueG?: number;
  castingG?: number;
  trimG?: number;
}

export type WeighedPart = keyof WeighBack;

export interface MassBalance {
  /** `fine`: 0 to 3 % of the mix is missing. `look`: more, or more was found than was mixed. `unknown`: a weight is. */
  status: Status;
  notWeighed: WeighedPart[];
  foundG: number;
  mixedG?: number;
  missingG?: number;
  missingShare?: number;
  /** `over`: more found than mixed. `short`: over 3 % missing. */
  off?: 'over' | 'short';
  /** The one weight that is missing, as the others leave it. */
  wouldBeG?: { part: WeighedPart; low: number; high: number };
}

const FOUND: readonly WeighedPart[] = ['residueG', 'castingG', 'trimG'];

/**
 * Mixed against found, live as the weights come in: residue, casting and trim should add up to the mix but for 0 to 3 % of gas and
 * crumbs (common practice, no source). The steps of the scale are allowed on top, twice their standard uncertainty. With one weight
 * missing the others say within what it must lie; more found than mixed is told even then.
 */
export function massBalance(weights: WeighBack, stepG: number = RULES.scaleStep.value): Outcome<MassBalance> {
  const { mixedG, residueG, castingG, trimG } = weights;
  const sound = checkLearn({ scaleStepG: stepG }, { mixedG, residueG, castingG, trimG });
  if (!sound.ok) return sound;
  const notWeighed = ([...FOUND, 'mixedG'] as const).filter((part) => weights[part] === undefined);
  const foundG = FOUND.reduce((sum, part) => sum + (weights[part] ?? 0), 0);
  const slackG = 2 * scaleReadingUG(stepG) * Math.sqrt(4 - notWeighed.length);
  if (mixedG === undefined) {
    const wouldBeG = { part: 'mixedG' as const, low: foundG, high: foundG / (1 - R.balanceMost.value) };
    return good({ status: 'unknown', notWeighed, foundG, ...(notWeighed.length === 1 ? { wouldBeG } : {}) });
  }
  const missingG = mixedG - foundG;
  const known = { notWeighed, foundG, mixedG, missingG, missingShare: missingG / mixedG };
  if (missingG < -slackG) return good({ status: 'look', off: 'over', ...known });
  const [part, ...more] = notWeighed;
  if (part === undefined) {
    const isShort = missingG > R.balanceMost.value * mixedG + slackG;
    return good(isShort ? { status: 'look', off: 'short', ...known } : { status: 'fine', ...known });
  }
  const least = Math.max(0, missingG - R.balanceMost.value * mixedG);
  const wouldBeG = { part, low: least, high: Math.max(0, missingG) };
  return good({ status: 'unknown', ...known, ...(more.length === 0 ? { wouldBeG } : {}) });
}
