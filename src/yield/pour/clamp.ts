import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { RULES } from '../rules';
import { checkPour } from './checkPour';

export interface ClampLoad {
  /** Gauge pressure to design for. */
  gaugeKPa: number;
  /** Shadow of cavity and wetted flange along the opening direction, not their surface. */
  projectedCm2: number;
  safety?: number;
  /** What lies on top and helps to hold it shut. */
  lidG?: number;
}

export interface Clamp {
  /** What the foam pushes with, no safety in it. */
  pushN: number;
  /** What the clamps together must hold; 0 where the lid's own weight is enough. */
  clampN: number;
}

/**
 * Force that opens a mold and what the clamps must hold, N: p A, times a safety factor of 2, less the weight of the lid
 * (statics). The weight is counted off once, after the safety, since it is known.
 */
export function clampForce({
  gaugeKPa,
  projectedCm2,
  safety = RULES.clampSafety.value,
  lidG = 0,
}: ClampLoad): Outcome<Clamp> {
  const sound = checkPour({ gaugeKPa, projectedCm2, safety, lidG });
  if (!sound.ok) return sound;
  const pushN = pushOnN({ gaugeKPa, areaCm2: projectedCm2 });
  const weightN = (lidG / 1000) * RULES.gravity.value;
  return good({ pushN, clampN: Math.max(0, pushN * safety - weightN) });
}

/** Push on a plug or lid of that area, N: it must be held, vented, and nobody stands over it. */
export function lidForceN({ gaugeKPa, lidCm2 }: { gaugeKPa: number; lidCm2: number }): Outcome<number> {
  const sound = checkPour({ gaugeKPa, lidCm2 });
  return sound.ok ? good(pushOnN({ gaugeKPa, areaCm2: lidCm2 })) : sound;
}

/** 1 kPa on 1 cm2 is 0.1 N. */
const pushOnN = ({ gaugeKPa, areaCm2 }: { gaugeKPa: number; areaCm2: number }): number =>
  (gaugeKPa * areaCm2) / 10;
