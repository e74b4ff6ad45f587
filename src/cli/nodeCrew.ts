import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Crew } from '../geometry';

/** Beyond this many threads the memory they take side by side outweighs what they save. Chosen here. */
const MOST_THREADS = 4;

/** Starts helping threads, so many that with this one there are `threads` (all cores, up to four, when it is not said). */
export function startCrew(threads?: number): Crew & { end(): void } {
  const wanted = threads ?? Math.min(MOST_THREADS, availableParallelism());
  const workers = Array.from(
    { length: wanted - 1 },
    (_, i) => new Worker(new URL('./field-helper.js', import.meta.url), { workerData: i + 1 }),
  );
  for (const worker of workers) worker.unref();
  return {
    helpers: workers.length,
    begin: (task) => {
      for (const worker of workers.slice(0, task.size - 1)) worker.postMessage(task);
    },
    end: () => {
      for (const worker of workers) void worker.terminate();
    },
  };
}
