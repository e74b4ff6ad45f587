import { useEffect, useRef } from 'react';
import type { BenchPlan } from '../../job/benchState';
import { cueBetween } from './cues';
import type { BenchPhase } from './phase';
import { shake, sound, unlockSound } from './sound';

/** Sounds and shakes at the moments of the plan. What was over before the screen was opened is not told again. */
export function useCues(
  phase: BenchPhase,
  plan: BenchPlan | undefined,
  { elapsedS, isSoundOff }: { elapsedS: number; isSoundOff: boolean },
): void {
  const toldS = useRef<number | undefined>(undefined);
  useEffect(() => {
    const fromS = toldS.current ?? elapsedS;
    toldS.current = elapsedS;
    const cue = cueBetween(phase, plan, { fromS, toS: elapsedS });
    if (cue === undefined) return;
    if (!isSoundOff) sound(cue);
    shake(cue);
  }, [phase, plan, elapsedS, isSoundOff]);
  useEffect(() => {
    addEventListener('pointerdown', unlockSound);
    addEventListener('keydown', unlockSound);
    return () => {
      removeEventListener('pointerdown', unlockSound);
      removeEventListener('keydown', unlockSound);
    };
  }, []);
}
