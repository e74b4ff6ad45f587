import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { checkWarmth } from './checkWarmth';
import { diffusivityOf, SILICONE_HEAT } from './heatMaterial';
import type { HeatMaterial } from './heatMaterial';
import { WARMTH_RULES as R } from './rules';
import { surfaceFindings, warmthCautions } from './touch';
import type { WarmthCaution } from './touch';
import { shareLeftAt } from './transient';
import { checkWall, farDepthMm, reachShare, spread } from './wall';
import type { WallInAir } from './wall';
import { surfaceAfterC } from './warmWall';

export interface HeatGunPass {
  surfaceTempC: Estimate;
  deepTempC: Estimate;
  /**
   * Seconds on one spot until the surface is at the Look limit of 50 C: move on before the early end. 0 when it is there
   * already, undefined when this air never brings it there.
   */
  secondsToLook: Estimate | undefined;
  /** L^2 / alpha, min: wait so long for the warmth to even out, then measure again. */
  waitMin: number;
  findings: Problem[];
  cautions: WarmthCaution[];
}

/**
 * What a heat gun held on one spot does to a wall of silicone: surface and back after so many seconds, by the slab series
 * with the back insulated. The air is taken as 200 C where it meets the rubber unless it is given. Errors: bounds.
 */
export function heatGunPass({
  seconds,
  airTempC = R.heatGunAir.value,
  ...rest
}: {
  seconds: number;
  wallMm: number;
  startTempC: number;
  airTempC?: number;
  hWM2K?: number;
  properties?: Partial<HeatMaterial>;
}): Outcome<HeatGunPass> {
  const wall: WallInAir = { ...rest, airTempC, sides: 1, surroundings: 'heat gun' };
  const checked = checkWall(wall);
  if (!checked.ok) return checked;
  const timed = checkWarmth({ seconds });
  if (!timed.ok) return timed;
  const minutes = seconds / 60;
  const surfaceTempC = surfaceAfterC(wall, minutes);
  const { startTempC } = wall;
  const deepTempC = spread(
    wall,
    (body) => airTempC + (startTempC - airTempC) * shareLeftAt(body, farDepthMm(wall, body), minutes),
  );
  return good({
    surfaceTempC,
    deepTempC,
    secondsToLook: secondsToLook(wall),
    waitMin: wall.wallMm ** 2 / diffusivityOf({ ...SILICONE_HEAT, ...wall.properties }) / 60,
    findings: surfaceFindings(surfaceTempC.value),
    cautions: warmthCautions(surfaceTempC.value, true),
  });
}

function secondsToLook(wall: WallInAir): Estimate | undefined {
  const { startTempC, airTempC } = wall;
  const lookC = R.surfaceLook.value;
  if (startTempC >= lookC) return { value: 0, low: 0, high: 0, from: 'given' };
  if (airTempC <= lookC) return undefined;
  const { value, low, high, from } = reachShare(wall, (lookC - airTempC) / (startTempC - airTempC)).nearMin;
  return { value: 60 * value, low: 60 * low, high: 60 * high, from };
}
