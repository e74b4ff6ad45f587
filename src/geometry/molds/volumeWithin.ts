import { planeFraction } from '../field/planeFraction';
import type { Sheared } from './sheared';

export interface Within {
  volumeMm3: number;
  /** Of the level surface above the base, mm2. */
  areaMm2: number;
}

/** A voxel whose middle is farther than this many steps from a level is whole: half its diagonal, and half a step for the second difference. */
const CLOSE_STEPS = 0.87 + 0.5;

/** Gradients shorter than this have no direction. */
const FLAT = 1e-6;

/**
 * Volume where a swept or plain distance (`values`, laid as `sheared`) is at most `levelMm`, above the base. Plane fractions by the gradient of the
 * distance, scaled to length 1 in space, and the correction by their second difference that `levelVolume.ts` derives.
 */
export function volumeWithin(sheared: Sheared, values: Float32Array, levelMm: number): Within {
  const { nu, nv, nw, spacingMm: step, slopeU, slopeV, height } = sheared;
  const plane = nu * nv;
  const close = CLOSE_STEPS * step * Math.sqrt(1 + slopeU * slopeU + slopeV * slopeV);
  let full = 0;
  let share = 0;
  let bend = 0;
  let slope = 0;
  for (let k = 1; k < nw - 1; k++) {
    for (let j = 1; j < nv - 1; j++) {
      let over = height === undefined ? 1 : height.atZero + height.perV * j + height.perW * k;
      const perU = height === undefined ? 0 : height.perU;
      over += perU;
      for (let i = 1, v = k * plane + j * nu + 1; i < nu - 1; i++, v++, over += perU) {
        // The part of the voxel above the base; the base itself lies at -0.5.
        if (over <= -1) continue;
        const weight = over >= 0 ? 1 : over + 1;
        const far = values[v]! - levelMm;
        if (far >= close) continue;
        if (far <= -close) {
          full += weight;
          continue;
        }
        const gu = (values[v + 1]! - values[v - 1]!) / 2;
        const gv = (values[v + nu]! - values[v - nu]!) / 2;
        const gw = (values[v + plane]! - values[v - plane]!) / 2;
        // Against the real axis of the planes, the sheared one runs along the pull.
        const gz = gw - slopeU * gu - slopeV * gv;
        const real = Math.sqrt(gu * gu + gv * gv + gz * gz);
        if (real < FLAT * step) {
          if (far <= 0) full += weight;
          continue;
        }
        const length = Math.sqrt(gu * gu + gv * gv + gw * gw);
        // One step over in the array, along the array's gradient, changes the distance by this much.
        const perStep = (step * length) / real;
        const [a, b, c] = [gu / length, gv / length, gw / length];
        const middle = planeFraction(far / perStep, a, b, c);
        const more = planeFraction((far - step / 2) / perStep, a, b, c);
        const less = planeFraction((far + step / 2) / perStep, a, b, c);
        share += weight * middle;
        bend += weight * (more + less - 2 * middle);
        slope += weight * (more - less);
      }
    }
  }
  return {
    volumeMm3: (full + share - bend / 6) * step ** 3,
    areaMm2: slope * step * step,
  };
}

/** Share of one voxel within a level, its part below the base not taken off. */
export function fractionAt(sheared: Sheared, values: Float32Array, v: number, levelMm: number): number {
  const { nu, nv, spacingMm: step, slopeU, slopeV } = sheared;
  const plane = nu * nv;
  const far = values[v]! - levelMm;
  const close = CLOSE_STEPS * step * Math.sqrt(1 + slopeU * slopeU + slopeV * slopeV);
  if (far >= close) return 0;
  if (far <= -close) return 1;
  const gu = (values[v + 1]! - values[v - 1]!) / 2;
  const gv = (values[v + nu]! - values[v - nu]!) / 2;
  const gw = (values[v + plane]! - values[v - plane]!) / 2;
  const real = Math.hypot(gu, gv, gw - slopeU * gu - slopeV * gv);
  if (real < FLAT * step) return far <= 0 ? 1 : 0;
  const length = Math.hypot(gu, gv, gw);
  return planeFraction((far * real) / (step * length), gu / length, gv / length, gw / length);
}
