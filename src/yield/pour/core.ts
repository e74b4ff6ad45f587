import type { Estimate } from '../../estimate';
import { bad, finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { RULES } from '../rules';
import { checkPour } from './checkPour';

/** A volume with what it may be; low and high may be left out where it is known. */
export interface VolumeGiven {
  value: number;
  low?: number;
  high?: number;
}

export interface HollowParts {
  outerCm3: VolumeGiven;
  coreCm3?: VolumeGiven;
  armatureCm3?: VolumeGiven;
}

/**
 * What the foam fills, cm3: outer - core - armature. The half ranges, taken as independent, add in quadrature; that of the small
 * difference can be large, which is the point. Errors: CORE_FILLS_MOLD when nothing is left, INPUT_OUT_OF_BOUNDS.
 */
export function hollowCavityCm3({
  outerCm3,
  coreCm3 = NOTHING,
  armatureCm3 = NOTHING,
}: HollowParts): Outcome<Estimate> {
  const ranges = [
    ['shellCm3', outerCm3],
    ['coreCm3', coreCm3],
    ['armatureCm3', armatureCm3],
  ] as const;
  for (const [input, { value, low = value, high = value }] of ranges) {
    for (const one of [value, low, high]) {
      const sound = checkPour({ [input]: one });
      if (!sound.ok) return sound;
    }
    if (low > value || high < value) {
      return bad('INPUT_OUT_OF_BOUNDS', {
        input: `${input} within its own range`,
        value,
        low,
        high,
        unit: '',
      });
    }
  }
  const value = outerCm3.value - coreCm3.value - armatureCm3.value;
  if (value <= 0) {
    const taken = { coreCm3: coreCm3.value, armatureCm3: armatureCm3.value };
    return bad('CORE_FILLS_MOLD', { outerCm3: outerCm3.value, ...taken });
  }
  const below = Math.hypot(down(outerCm3), up(coreCm3), up(armatureCm3));
  const above = Math.hypot(up(outerCm3), down(coreCm3), down(armatureCm3));
  return good({ value, low: Math.max(0, value - below), high: value + above, from: 'given' });
}

const NOTHING: VolumeGiven = { value: 0 };
const down = ({ value, low = value }: VolumeGiven): number => value - low;
const up = ({ value, high = value }: VolumeGiven): number => high - value;

export interface FloatingCore {
  coreCm3: number;
  /** With its armature; leave it out if unknown. */
  coreG?: number;
  liquidKgM3: number;
  moldedKgM3: number;
  /** Peak gauge pressure, and the area with which the core passes through the wall of the mold, where nothing pushes back. */
  gaugeKPa?: number;
  neckCm2?: number;
}

export interface CoreLift {
  /** Once foam surrounds it. */
  inFoamN: number;
  /** If liquid mix covered all of it: no lift can be larger. */
  inLiquidN: number;
  /** Pressure on a neck through the wall, outward. */
  neckN: number;
  /** What must hold it down: the largest of lift, plus the neck. */
  holdN: number;
}

/**
 * Does the core float, N: (rho V - m) g in the foam, and at most so much in the liquid mix that is poured first (Archimedes). Foam
 * that flows past drags it too, so fix a core both ways in any case. Of unknown mass it is "Not checked".
 */
export function coreLift(core: FloatingCore): Outcome<{ lift?: CoreLift; findings: Problem[] }> {
  const { coreCm3, coreG, liquidKgM3, moldedKgM3, gaugeKPa, neckCm2 } = core;
  const sound = checkPour({ coreCm3, liquidKgM3, moldedKgM3 }, { coreG, gaugeKPa, neckCm2 });
  if (!sound.ok) return sound;
  if (coreG === undefined) {
    const needG = (liquidKgM3 * coreCm3) / 1000;
    return good({ findings: [finding('CORE_MASS_UNKNOWN', 'unknown', { coreCm3, needG })] });
  }
  const liftN = (kgM3: number): number => (((kgM3 * coreCm3) / 1000 - coreG) / 1000) * RULES.gravity.value;
  const inFoamN = liftN(moldedKgM3);
  const inLiquidN = liftN(liquidKgM3);
  const neckN = ((gaugeKPa ?? 0) * (neckCm2 ?? 0)) / 10;
  const holdN = Math.max(0, inFoamN, inLiquidN) + neckN;
  const floats = finding('CORE_FLOATS', 'look', {
    inFoamN,
    inLiquidN,
    neckN,
    holdN,
    safety: RULES.clampSafety.value,
    advisedN: RULES.clampSafety.value * holdN,
  });
  return good({ lift: { inFoamN, inLiquidN, neckN, holdN }, findings: holdN > 0 ? [floats] : [] });
}
