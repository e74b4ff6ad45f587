import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkWarmth } from './checkWarmth';
import type { HeatShape } from './eigenvalues';
import { checkMaterial, diffusivityOf } from './heatMaterial';
import type { HeatMaterial } from './heatMaterial';
import { WARMTH_RULES } from './rules';
import { fading } from './shareLeft';

/** A body of one temperature that is put into air of another. */
export interface HeatedBody extends HeatMaterial {
  shape: HeatShape;
  /** Thickness of a slab, diameter of a cylinder or sphere. */
  thicknessMm: number;
  /** Of a slab: one face heated and the other insulated, or both heated (the default). Without meaning for the others. */
  sides?: 1 | 2;
  /** Heat transfer from air to surface, radiation included. */
  hWM2K: number;
  surroundTempC: number;
  startTempC: number;
}

/**
 * Temperature at a depth under the heated surface after a time, C; exact for constant properties, by the full series.
 * Errors: INPUT_OUT_OF_BOUNDS, INPUT_NOT_A_NUMBER.
 */
export function tempAtDepthC(
  body: HeatedBody,
  { depthMm, minutes }: { depthMm: number; minutes: number },
): Outcome<number> {
  const checked = checkBody(body, depthMm);
  if (!checked.ok) return checked;
  const timed = checkWarmth({ minutes });
  if (!timed.ok) return timed;
  const { startTempC, surroundTempC } = body;
  const left = shareLeftAt(body, depthMm, minutes);
  return good(surroundTempC + (startTempC - surroundTempC) * left);
}

/**
 * Time until a depth reaches a temperature, min. Errors: WARM_UNREACHABLE when the air can never bring it there,
 * and bounds.
 */
export function timeToReachMin(
  body: HeatedBody,
  { depthMm, targetTempC }: { depthMm: number; targetTempC: number },
): Outcome<number> {
  const checked = checkBody(body, depthMm);
  if (!checked.ok) return checked;
  const sound = checkWarmth({ bodyTempC: targetTempC });
  if (!sound.ok) return sound;
  const reach = shareToReach({ ...body, targetTempC });
  return reach.ok ? good(minutesToShare(body, depthMm, reach.value)) : reach;
}

/**
 * Time until a body is warm, min, taken as of one temperature throughout: (rho c V / (h A)) ln of the differences. Only
 * where Biot, h V / (A k), is under 0.1; otherwise WARM_LUMPED_WRONG, with the time it would have said and the true one
 * of the farthest point. `errorShare`: by how much it is off there.
 */
export function lumpedTimeMin(
  body: HeatedBody,
  targetTempC: number,
): Outcome<{ minutes: number; biot: number; errorShare: number }> {
  const exact = timeToReachMin(body, { depthMm: farthestMm(body), targetTempC });
  if (!exact.ok) return exact;
  const reach = shareToReach({ ...body, targetTempC });
  if (!reach.ok) return reach;
  const biot = lumpedBiot(body);
  const limit = WARMTH_RULES.lumpedBiot.value;
  const minutes = lumpedMinutes(body, reach.value);
  if (biot >= limit) {
    return bad('WARM_LUMPED_WRONG', { biot, limit, lumpedMin: minutes, exactMin: exact.value });
  }
  return good({ minutes, biot, errorShare: minutes / exact.value - 1 });
}

/** The distance from the heated surface to the point that is reached last, mm. */
export const farthestMm = ({ shape, thicknessMm, sides = 2 }: HeatedBody): number =>
  shape === 'slab' && sides === 1 ? thicknessMm : thicknessMm / 2;

/** h L / k with L the way to the farthest point: the Biot number of the series. */
export const seriesBiot = (body: HeatedBody): number =>
  (body.hWM2K * farthestMm(body)) / 1000 / body.conductivityWMK;

export const shareLeftAt = (body: HeatedBody, depthMm: number, minutes: number): number =>
  fading(body.shape, seriesBiot(body)).shareLeft(depthShare(body, depthMm), minutes / lengthMinutes(body));

export const minutesToShare = (body: HeatedBody, depthMm: number, share: number): number =>
  fading(body.shape, seriesBiot(body)).fourierAt(depthShare(body, depthMm), share) * lengthMinutes(body);

export const lumpedMinutes = (body: HeatedBody, share: number): number =>
  timeConstantMin(body) * Math.log(1 / share);

/** rho c V / (h A), min. */
export const timeConstantMin = (body: HeatedBody): number =>
  (body.densityKgM3 * body.heatCapacityJKgK * volumePerAreaMm(body)) / 1000 / body.hWM2K / 60;

/** Which share of the first difference to the air is left at the target; WARM_UNREACHABLE when the air does not lead there. */
export function shareToReach(temps: {
  startTempC: number;
  surroundTempC: number;
  targetTempC: number;
}): Outcome<number> {
  const { startTempC, surroundTempC, targetTempC } = temps;
  const share = (targetTempC - surroundTempC) / (startTempC - surroundTempC);
  return startTempC !== surroundTempC && share > 0 && share < 1
    ? good(share)
    : bad('WARM_UNREACHABLE', { startTempC, airTempC: surroundTempC, targetTempC });
}

function checkBody(body: HeatedBody, depthMm: number): Outcome<true> {
  const { thicknessMm, hWM2K, surroundTempC, startTempC } = body;
  const checked = checkWarmth(
    { thicknessMm, hWM2K, surroundTempC, bodyTempC: startTempC, depthMm },
    { sides: body.sides },
  );
  if (!checked.ok) return checked;
  const material = checkMaterial(body);
  if (!material.ok) return material;
  const biot = checkWarmth({ biot: seriesBiot(body) });
  if (!biot.ok) return biot;
  const high = body.shape === 'slab' ? thicknessMm : thicknessMm / 2;
  return depthMm <= high
    ? good(true)
    : bad('INPUT_OUT_OF_BOUNDS', { input: 'depthMm', value: depthMm, low: 0, high, unit: 'mm' });
}

/** A depth beyond the middle of a slab heated on both faces is as far from the other face. */
const depthShare = (body: HeatedBody, depthMm: number): number => {
  const share = depthMm / farthestMm(body);
  return share > 1 ? 2 - share : share;
};

/** L^2 / alpha, min: one unit of the Fourier number. */
const lengthMinutes = (body: HeatedBody): number => farthestMm(body) ** 2 / diffusivityOf(body) / 60;

const lumpedBiot = (body: HeatedBody): number =>
  (body.hWM2K * volumePerAreaMm(body)) / 1000 / body.conductivityWMK;

const volumePerAreaMm = (body: HeatedBody): number => farthestMm(body) / DIMENSIONS[body.shape];

const DIMENSIONS: Readonly<Record<HeatShape, number>> = { slab: 1, cylinder: 2, sphere: 3 };
