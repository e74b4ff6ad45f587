import type { Estimate } from '../../estimate';
import { RULES } from '../rules';
import { COVER } from './checkVolume';

/** A mold by its water fill, held against what is known of its sculpt. */
export interface FillAgainst {
  /** How much more the mold holds than the sculpt, as a share of the sculpt; below 0 it is less. */
  share: number;
  /** A larger share either way is hard to explain. */
  allowedShare: number;
  isFar: boolean;
}

/**
 * A mold shrinks and its sculpt is closed, so the two never agree; but 19 times in 20 they should be as near as twice the doubts of
 * both and of what lies between sculpt and mold, `uScanToMold`, in quadrature (JCGM 100, 5.1.2). Both estimates hold the truth 95
 * times of 100.
 */
export function fillAgainst(sculpt: Estimate, fill: Estimate): FillAgainst {
  const share = fill.value / sculpt.value - 1;
  const allowedShare = COVER * Math.hypot(RULES.uScanToMold.value, uShareOf(sculpt), uShareOf(fill));
  return { share, allowedShare, isFar: Math.abs(share) > allowedShare };
}

const uShareOf = ({ value, low, high }: Estimate): number => (high - low) / 2 / COVER / value;
