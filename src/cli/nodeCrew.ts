import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Crew } from '../geometry';

/** Beyond this many threads the memory they take side by side outweighs what they save. Chosen here. */
const MOST_THREADS = 4;

/** A helper that has not said it is there by then is done without: it cannot start here. Chosen here. */
const START_MS = 3000;

/**
 * Starts helping threads, so many that with this one there are `threads` (all cores, up to four, when it is not said). `helper` is the
 * bundled fieldHelper.ts.
 */
export function startCrew(
  threads?: number,
  helper: URL = new URL('./field-helper.js', import.meta.url),
): Crew & { end(): void } {
  const wanted = threads ?? Math.min(MOST_THREADS, availableParallelism());
  const started = performance.now();
  const there = new Int32Array(new SharedArrayBuffer(4 * wanted));
  const workers = Array.from({ length: wanted - 1 }, (_, i) => {
    const worker = new Worker(helper, {
      workerData: { there, place: i },
    });
    worker.unref();
    // Its absence is noticed below; an unheard error would end the program.
    worker.on('error', () => undefined);
    return worker;
  });
  let ready: Worker[] | undefined;
  const readyWorkers = (): Worker[] => {
    if (ready !== undefined) return ready;
    for (let i = 0; i < workers.length; i++) {
      const left = START_MS - (performance.now() - started);
      if (Atomics.load(there, i) === 0 && left > 0) Atomics.wait(there, i, 0, left);
    }
    return (ready = workers.filter((_, i) => Atomics.load(there, i) === 1));
  };
  return {
    get helpers() {
      return readyWorkers().length;
    },
    begin: (task) => {
      readyWorkers()
        .slice(0, task.size - 1)
        .forEach((worker, i) => worker.postMessage({ task, id: i + 1 }));
    },
    end: () => {
      for (const worker of workers) void worker.terminate();
    },
  };
}
