import { TeamStopped } from '../parallel/team';
import type { FieldOptions } from './fieldOptions';
import { runFieldTask, RUN, TIMED, type FieldTask } from './fieldTask';
import { sharedBytes } from './fieldSurface';

/** Room for the times of the stages, one row a thread, when they are asked for. */
export function newTimings(options: FieldOptions, size: number, isShared: boolean): Float64Array | undefined {
  return options.onTimings === undefined
    ? undefined
    : new Float64Array(sharedBytes(8 * TIMED * size, isShared), 0, TIMED * size);
}

/** The caller wants no answer any more. */
class StoppedByCaller extends TeamStopped {}

/** Milliseconds after which progress is told and whether to stop is asked again. */
const LOOK_MS = 10;

/** Who looks on. */
export type Watched = Pick<FieldOptions, 'onProgress' | 'shouldStop'>;

/**
 * A function to be called at every small step of `expected`: tells the progress from the first share to the second, and throws when
 * the caller wants to stop.
 */
function watch(
  { onProgress, shouldStop }: Watched,
  [from, to]: readonly [number, number],
  expected: number,
): () => void {
  let taken = 0;
  let looked = 0;
  return () => {
    taken++;
    const now = Date.now();
    if (now - looked < LOOK_MS) return;
    looked = now;
    onProgress?.(from + (to - from) * Math.min(1, taken / expected));
    if (shouldStop?.() === true) throw new StoppedByCaller();
  };
}

/** Runs work that calls `onStep` about `expected` times; undefined when the caller stopped it. Other faults are thrown on. */
export function watched<T>(
  options: Watched,
  shares: readonly [number, number],
  expected: number,
  work: (onStep: () => void) => T,
): T | undefined {
  try {
    return work(watch(options, shares, expected));
  } catch (fault) {
    if (fault instanceof StoppedByCaller) return undefined;
    throw fault;
  }
}

/** Runs a task with the crew; false when the caller stopped it. */
export function runTogether(
  task: FieldTask,
  options: FieldOptions,
  shares: readonly [number, number],
): boolean {
  if (task.size > 1) options.crew!.begin(task);
  const isDone = watched(options, shares, stepsOf(task), (onStep) => {
    runFieldTask(task, 0, onStep);
    return true;
  });
  if (isDone === true && task.timings !== undefined) options.onTimings?.(task.kind, task.timings);
  return isDone === true;
}

/** About how often this thread looks up while it does its share. */
function stepsOf(task: FieldTask): number {
  if (task.kind === 'build') return 6 + (2 * task.triangles.length) / 3 / RUN / task.size;
  return ((task.kind === 'levels' ? 2 : 1) * task.field.grid.nz) / task.size;
}
