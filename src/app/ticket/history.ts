import { merge } from '../../job/merge';
import type { FieldName } from './fields';
import type { Word } from './said';
import type { Words } from './words';

/** What was done, for a name: `scan` is another file. */
export interface What {
  do: Word['do'] | 'scan';
  field?: FieldName;
}

/** What was done in one go, and both sides of it. */
interface Step {
  what: What;
  /** Steps of one run are one: letter by letter into the same box. */
  run: string | undefined;
  before: Words;
  after: Words;
}

export interface History {
  past: readonly Step[];
  future: readonly Step[];
}

export const NO_HISTORY: History = { past: [], future: [] };

/** As far back as anyone reads. Chosen here. */
const MOST_STEPS = 200;

/** The history with one more step; what was undone can no longer be done again. */
export function withStep({ past }: History, step: Step): History {
  const last = past.at(-1);
  const isSameRun = last !== undefined && step.run !== undefined && last.run === step.run;
  const steps = isSameRun ? [...past.slice(0, -1), { ...last, after: step.after }] : [...past, step];
  return { past: steps.slice(-MOST_STEPS), future: [] };
}

/** What is typed next into the same box is a step of its own. */
export const runEnded = ({ past, future }: History): History => {
  const last = past.at(-1);
  return last?.run === undefined
    ? { past, future }
    : { past: [...past.slice(0, -1), { ...last, run: undefined }], future };
};

/**
 * Takes the last step back from what stands now, or does again what was taken back. Only what the step changed goes: what
 * another tab has said since stays.
 */
export function stepped(
  { past, future }: History,
  now: Words,
  way: 'undo' | 'redo',
): { history: History; words: Words } | undefined {
  const step = way === 'undo' ? past.at(-1) : future.at(-1);
  if (step === undefined) return undefined;
  const [from, to] = way === 'undo' ? [step.after, step.before] : [step.before, step.after];
  return {
    history:
      way === 'undo'
        ? { past: past.slice(0, -1), future: [...future, step] }
        : { past: [...past, step], future: future.slice(0, -1) },
    words: merge({ base: from, mine: to, theirs: now }),
  };
}
