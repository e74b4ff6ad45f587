import type { Estimate } from '../../estimate';
import { finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { checkWarmth } from './checkWarmth';
import { WARMTH_RULES as R } from './rules';
import { surfaceFindings, warmthCautions } from './touch';
import type { WarmthCaution } from './touch';
import { shareLeftAt } from './transient';
import { checkWall, reachShare, shareOnTheWay, spread } from './wall';
import type { WallInAir } from './wall';

export interface WarmUp {
  /** When the heated face has the target, and when the rubber farthest from it has; the range holds all that is assumed. */
  heatedFaceMin: Estimate;
  deepFaceMin: Estimate;
  /** What the shortcut of one temperature throughout would say, and how much of the true time of the deep face that is. */
  lumpedMin: number;
  lumpedShare: number;
  /** h L / k. At 0.1 and more the shortcut does not hold. */
  biot: number;
  isLumpedFair: boolean;
  timeConstantMin: number;
  /** The warmest surface in the air when the deep face has the target: rubber, or the jacket when that is outside. */
  surfaceAtEndC: Estimate;
  findings: Problem[];
  cautions: WarmthCaution[];
}

/**
 * How long a wall of the mold takes to warm, min, by the slab series. Starts at one temperature, in air of one
 * temperature; the sculpt's curves are left out, and a hollow inside warms later than this, an edge sooner. Errors:
 * WARM_UNREACHABLE (the air is not warmer than the target), WARM_ALREADY_THERE, and bounds.
 */
export function warmWall({ targetTempC, ...wall }: WallInAir & { targetTempC: number }): Outcome<WarmUp> {
  const checked = checkWall(wall);
  if (!checked.ok) return checked;
  const target = checkWarmth({ targetTempC });
  if (!target.ok) return target;
  const share = shareOnTheWay(wall, targetTempC, true);
  if (!share.ok) return share;
  const reach = reachShare(wall, share.value);
  const { nearMin, farMin, lumpedMin, biot, timeConstantMin } = reach;
  const surfaceAtEndC = surfaceAfterC(wall, farMin.value);
  const isHeatGun = wall.surroundings === 'heat gun';
  return good({
    heatedFaceMin: nearMin,
    deepFaceMin: farMin,
    lumpedMin,
    lumpedShare: lumpedMin / farMin.value,
    biot,
    isLumpedFair: biot < R.lumpedBiot.value,
    timeConstantMin,
    surfaceAtEndC,
    findings: [...surfaceFindings(surfaceAtEndC.value), ...jacketFindings(wall, share.value, farMin.value)],
    cautions: warmthCautions(surfaceAtEndC.high, isHeatGun),
  });
}

/** Temperature of the surface in the air after a time, C, with the range of what is assumed. */
export const surfaceAfterC = (wall: WallInAir, minutes: number): Estimate => {
  const { airTempC, startTempC } = wall;
  return spread(wall, (body) => airTempC + (startTempC - airTempC) * shareLeftAt(body, 0, minutes));
};

/** Look when a jacket left on makes it much longer than the bare wall. */
function jacketFindings({ jacket, ...bare }: WallInAir, share: number, withMin: number): Problem[] {
  if (jacket === undefined) return [];
  const withoutMin = reachShare(bare, share).farMin.value;
  const isSlow = withMin > R.jacketLook.value * withoutMin;
  return isSlow ? [finding('WARM_JACKET_ON', 'look', { withMin, withoutMin })] : [];
}
