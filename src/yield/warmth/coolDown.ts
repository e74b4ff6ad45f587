import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkWarmth } from './checkWarmth';
import { checkWall, reachShare, shareOnTheWay } from './wall';
import type { WallInAir } from './wall';

export interface CoolDown {
  /** When the face in the air has cooled to that temperature, and when the rubber farthest from it has. */
  surfaceMin: Estimate;
  deepFaceMin: Estimate;
  /** Foam touches the surface, so that counts, and the early end of what is assumed. */
  pourWithinMin: number;
}

/**
 * How long a warm mold stays warm once it is out, min, by the slab series: the other way round from `warmWall`, with the
 * same limits. `startTempC` is that of the warm mold, the same throughout. Errors: WARM_UNREACHABLE (it never cools so
 * far in this air), WARM_ALREADY_THERE, and bounds.
 */
export function coolDown({ toTempC, ...wall }: WallInAir & { toTempC: number }): Outcome<CoolDown> {
  const checked = checkWall(wall);
  if (!checked.ok) return checked;
  const target = checkWarmth({ targetTempC: toTempC });
  if (!target.ok) return target;
  const share = shareOnTheWay(wall, toTempC, false);
  if (!share.ok) return share;
  const { nearMin, farMin } = reachShare(wall, share.value);
  return good({ surfaceMin: nearMin, deepFaceMin: farMin, pourWithinMin: nearMin.low });
}
