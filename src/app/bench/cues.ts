import type { BenchPlan } from '../../job/benchState';
import type { BenchPhase } from './phase';

/** A moment that is told with sound, a shake and words. */
export type Cue = 'pour soon' | 'pour by' | 'rise' | 'open';

/** So long before the end of the time to pour it is told once. Of the interface's rules. */
export const SOON_S = 10;

/** The moments of a phase, s since A went in: to pour while it is mixed, the rest while it is waited for. */
function cuesOf(phase: BenchPhase, plan: BenchPlan | undefined): { atS: number; cue: Cue }[] {
  const { pourBy, rise, open } = plan ?? {};
  if (phase === 'mix')
    return pourBy === undefined
      ? []
      : [
          { atS: pourBy.s - SOON_S, cue: 'pour soon' as const },
          { atS: pourBy.s, cue: 'pour by' as const },
        ];
  if (phase !== 'poured' && phase !== 'wait') return [];
  return [
    ...(rise === undefined ? [] : [{ atS: rise.s, cue: 'rise' as const }]),
    ...(open === undefined ? [] : [{ atS: open.s, cue: 'open' as const }]),
  ];
}

/** The last moment that came after `fromS` and is here by `toS`: a page that stood still for long tells what matters now, once. */
export function cueBetween(
  phase: BenchPhase,
  plan: BenchPlan | undefined,
  { fromS, toS }: { fromS: number; toS: number },
): Cue | undefined {
  return cuesOf(phase, plan)
    .filter(({ atS }) => atS > fromS && atS <= toS)
    .at(-1)?.cue;
}
