import { runFieldTask, type FieldTask } from '../geometry';

/** A helping thread of the page's worker: says that it is ready, then does its part of every task it is sent. */
interface HelperScope {
  onmessage: ((event: MessageEvent<{ task: FieldTask; id: number }>) => void) | null;
  postMessage(message: 'ready'): void;
}

const scope = globalThis as unknown as HelperScope;

scope.onmessage = ({ data: { task, id } }) => {
  try {
    runFieldTask(task, id);
  } catch {
    // The thread that asked finds the team stopped.
  }
};
scope.postMessage('ready');
