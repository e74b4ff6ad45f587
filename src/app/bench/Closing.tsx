import type { BenchPlan } from '../../job/benchState';
import { closeTitle, closeWords } from '../../words/benchWords';
import type { PourClock } from './clock';
import { Counting } from './Mixing';

/** It is poured: the opening is closed, or left open, as the plan has it. */
export function Closing({ clock, plan }: { clock: PourClock; plan: BenchPlan | undefined }) {
  return (
    <>
      <h1 tabIndex={-1}>{closeTitle(plan?.opening)}</h1>
      <Counting elapsedMs={clock.elapsedMs} />
      <p className="why lead">{closeWords(plan?.opening)}</p>
    </>
  );
}
