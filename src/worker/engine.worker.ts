import type { Crew } from '../geometry';
import { answer, type Desk } from './answer';
import { startBrowserCrew } from './browserCrew';
import type { Answers, FromWorker, Kind, ToWorker } from './protocol';

/** The few things of a worker's own scope that are used here. */
interface WorkerScope {
  onmessage: ((event: MessageEvent<ToWorker>) => void) | null;
  postMessage(message: FromWorker, transfer?: Transferable[]): void;
  crossOriginIsolated: boolean;
  navigator: { hardwareConcurrency: number };
}

const scope = globalThis as unknown as WorkerScope;
let crew: Crew | undefined;
const desk: Desk = {
  // Started with the first measure that has a use for it: what nobody asks for costs a phone its battery.
  crew: () =>
    (crew ??= startBrowserCrew(
      () => new Worker(new URL('./fieldHelper.worker.ts', import.meta.url), { type: 'module' }),
      { isIsolated: scope.crossOriginIsolated, cores: scope.navigator.hardwareConcurrency },
    )),
};

scope.onmessage = ({ data: { id, request, stop } }) => {
  try {
    const onProgress = (share: number): void => scope.postMessage({ id, say: 'progress', share });
    const shouldStop = stop === undefined ? undefined : (): boolean => Atomics.load(stop, 0) !== 0;
    const result = answer(desk, request, onProgress, shouldStop);
    scope.postMessage({ id, say: 'answer', answer: result }, buffersOf(result));
  } catch (fault) {
    // An Error loses its class on the way to the page: only its message is sent.
    scope.postMessage({ id, say: 'failed', message: fault instanceof Error ? fault.message : String(fault) });
  }
};

function buffersOf(result: Answers[Kind]): Transferable[] {
  if (!result.ok || !('positions' in result.value)) return [];
  const { positions, normals, index, rims } = result.value;
  return [positions.buffer, normals.buffer, index.buffer, rims.buffer];
}
