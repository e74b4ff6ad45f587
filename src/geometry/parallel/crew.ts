/**
 * Threads that stand ready to help. The engine does not know how they are started: the command line gives worker threads, the page's
 * worker gives workers of its own. Each runs `helpWith(task, id)` for every task it is sent.
 */
export interface Crew {
  /** Helpers, not counting the thread that asks. */
  helpers: number;
  /** Sends one task to `task.size - 1` helpers, at once and without waiting; their ids count from 1. */
  begin(task: { size: number }): void;
}

/** True where this thread may share memory with others. */
export const canShareMemory = (): boolean => typeof SharedArrayBuffer !== 'undefined';
