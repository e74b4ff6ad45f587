import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { normalCdf } from '../normal';
import { checkWarmth } from './checkWarmth';

/**
 * Share of a sudden rise at the surface that has arrived at a depth: erfc(x / (2 sqrt(alpha t))) (Carslaw & Jaeger).
 * Holds until warmth reaches the far face, about until `penetrationMm` is the thickness. Error: INPUT_OUT_OF_BOUNDS.
 */
export function stepShare({
  depthMm,
  minutes,
  diffusivityMm2S,
}: {
  depthMm: number;
  minutes: number;
  diffusivityMm2S: number;
}): Outcome<number> {
  const checked = checkWarmth({ depthMm, minutes, diffusivityMm2S });
  if (!checked.ok) return checked;
  if (depthMm === 0) return good(1);
  return good(minutes === 0 ? 0 : erfc(depthMm / (2 * Math.sqrt(diffusivityMm2S * 60 * minutes))));
}

/**
 * Share of the difference between air and rubber that has arrived at a depth, in a thick body under warm air: the
 * convective solution of Carslaw & Jaeger. Same limit and error as `stepShare`.
 */
export function convectiveShare({
  depthMm,
  minutes,
  diffusivityMm2S,
  conductivityWMK,
  hWM2K,
}: {
  depthMm: number;
  minutes: number;
  diffusivityMm2S: number;
  conductivityWMK: number;
  hWM2K: number;
}): Outcome<number> {
  const checked = checkWarmth({ depthMm, minutes, diffusivityMm2S, conductivityWMK, hWM2K });
  if (!checked.ok) return checked;
  const spreadMm = Math.sqrt(diffusivityMm2S * 60 * minutes);
  return good(riseShare(depthMm / spreadMm, (hWM2K * spreadMm) / 1000 / conductivityWMK, minutes));
}

/** How deep a change at the surface is felt, mm: sqrt(pi alpha t). Error: INPUT_OUT_OF_BOUNDS. */
export function penetrationMm({
  minutes,
  diffusivityMm2S,
}: {
  minutes: number;
  diffusivityMm2S: number;
}): Outcome<number> {
  const checked = checkWarmth({ minutes, diffusivityMm2S });
  return checked.ok ? good(Math.sqrt(Math.PI * diffusivityMm2S * 60 * minutes)) : checked;
}

/**
 * erfc(a) - exp(2 a b + b^2) erfc(a + b), a = depth / (2 spread), b = h spread / k, without the overflow of the product.
 * `depthPerSpread` is x / sqrt(alpha t).
 */
export function riseShare(depthPerSpread: number, b: number, time: number): number {
  if (time === 0) return 0;
  const a = depthPerSpread / 2;
  return erfc(a) - Math.exp(-a * a) * scaledErfc(a + b);
}

const erfc = (x: number): number => 2 * normalCdf(-x * Math.SQRT2);

/** exp(x^2) erfc(x), x >= 0: far out by the asymptotic series (Abramowitz & Stegun, 7.1.23), good to 1e-9 from 12 on. */
function scaledErfc(x: number): number {
  if (x < ASYMPTOTIC_FROM) return Math.exp(x * x) * erfc(x);
  const u = 1 / (2 * x * x);
  return (1 - u * (1 - 3 * u * (1 - 5 * u * (1 - 7 * u)))) / (x * Math.sqrt(Math.PI));
}

const ASYMPTOTIC_FROM = 12;
