import { TeamStopped } from '../parallel/team';
import type { FieldOptions } from './fieldOptions';
import { runFieldTask, TIMED, type FieldTask } from './fieldTask';
import { sharedBytes } from './fieldSurface';

/** Room for the times of the stages, one row a thread, when they are asked for. */
export function newTimings(options: FieldOptions, size: number, isShared: boolean): Float64Array | undefined {
  return options.onTimings === undefined
    ? undefined
    : new Float64Array(sharedBytes(8 * TIMED * size, isShared), 0, TIMED * size);
}

/** Runs a task with the crew; false when it was stopped from outside. Faults of ours are thrown on. */
export function runTogether(
  task: FieldTask,
  options: FieldOptions,
  [from, to]: readonly [number, number],
): boolean {
  if (task.size > 1) options.crew!.begin(task);
  let taken = 0;
  let asked = 0;
  let isStopped = false;
  const expected = task.kind === 'build' ? 4 : task.field.grid.nz;
  try {
    runFieldTask(task, 0, () => {
      taken++;
      const now = Date.now();
      if (now - asked < 10) return;
      asked = now;
      options.onProgress?.(from + (to - from) * Math.min(1, taken / expected));
      if (options.shouldStop?.() === true) {
        isStopped = true;
        throw new TeamStopped();
      }
    });
  } catch (fault) {
    if (isStopped) return false;
    throw fault;
  }
  if (task.timings !== undefined) options.onTimings?.(task.kind, task.timings);
  return true;
}
