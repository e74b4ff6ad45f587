import { parentPort, workerData } from 'node:worker_threads';
import { runFieldTask, type FieldTask } from '../geometry';

/** A helping thread of the command line: does its part of every task it is sent. */
const id = workerData as number;
parentPort!.on('message', (task: FieldTask) => {
  try {
    runFieldTask(task, id);
  } catch {
    // The thread that asked finds the team stopped, and tells why.
  }
});
