import { PRESSES, type BenchPlan, type BenchRun, type Press, type PressName } from '../../job/benchState';

/** Where the work at the bench stands. Nothing but presses and their undo changes it. */
export type BenchPhase = 'ready' | 'mix' | 'poured' | 'wait' | 'open';

const PHASES: readonly BenchPhase[] = ['ready', 'mix', 'poured', 'wait', 'open'];

export const benchPhase = ({ presses }: Pick<BenchRun, 'presses'>): BenchPhase => PHASES[presses.length]!;

/** What the one button stands for now; undefined once the mold is open. */
export const nextPress = ({ presses }: Pick<BenchRun, 'presses'>): PressName | undefined =>
  PRESSES[presses.length];

/** The clock runs from "I am mixing" until the mold is open. */
export const isRunning = (run: BenchRun): boolean => run.presses.length > 0 && run.presses.length < 4;

/** What was planned when the clock was started, while that holds; a run that was undone says nothing of what is poured after it. */
export const planAtBench = (
  { presses, plan }: Pick<BenchRun, 'presses' | 'plan'>,
  now: BenchPlan | undefined,
): BenchPlan | undefined => (presses.length === 0 ? now : (plan ?? now));

/** The run with one press more; the same run where another press is due. `plan`: what holds from "I am mixing" on. */
export function pressed(run: BenchRun, press: Press, plan?: BenchPlan): BenchRun {
  if (press.what !== nextPress(run)) return run;
  const { undone: _, plan: before, ...rest } = run;
  const kept = press.what === 'mixing' ? plan : before;
  return {
    ...rest,
    rev: run.rev + 1,
    presses: [...run.presses, press],
    ...(kept === undefined ? {} : { plan: kept }),
  };
}

/** The run without its last press. "I am mixing" is laid aside: the clock behind it can be taken up again. */
export function withoutLast(run: BenchRun): BenchRun {
  const last = run.presses.at(-1);
  if (last === undefined) return run;
  const left = { ...run, rev: run.rev + 1, presses: run.presses.slice(0, -1) };
  return last.what === 'mixing' ? { ...left, undone: last } : left;
}

/** The clock that was undone goes on as if it had not been. */
export function takenUpAgain(run: BenchRun): BenchRun {
  const { undone, ...rest } = run;
  return undone === undefined || run.presses.length > 0
    ? run
    : { ...rest, rev: run.rev + 1, presses: [undone] };
}

/** A second press within this time is a bounce of the first: a finger, a glove, a key. Of the interface's rules. */
export const BOUNCE_MS = 700;

export const isBounce = (lastMs: number | undefined, nowMs: number): boolean =>
  lastMs !== undefined && nowMs - lastMs < BOUNCE_MS;
