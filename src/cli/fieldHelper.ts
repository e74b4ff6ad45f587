import { parentPort, workerData } from 'node:worker_threads';
import { runFieldTask, type FieldTask } from '../geometry';

/** A helping thread of the command line: says that it is there, then does its part of every task it is sent. */
const { there, place } = workerData as { there: Int32Array; place: number };

parentPort!.on('message', ({ task, id }: { task: FieldTask; id: number }) => {
  try {
    runFieldTask(task, id);
  } catch {
    // The thread that asked finds the team stopped.
  }
});
Atomics.store(there, place, 1);
Atomics.notify(there, place);
