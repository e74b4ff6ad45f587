import { HelperMissing, needs3mf, type Crew } from '../geometry';
import { faultOf } from '../words/engineWords';
import { answer, type Desk } from './answer';
import { startBrowserCrew } from './browserCrew';
import { holdLifeline, type Here, type Locks } from './lifeline';
import type { Answers, FromWorker, Kind, Request, ToWorker } from './protocol';

/** The few things of a worker's own scope that are used here. */
interface WorkerScope {
  onmessage: ((event: MessageEvent<ToWorker>) => void) | null;
  postMessage(message: FromWorker | Here, transfer?: Transferable[]): void;
  crossOriginIsolated: boolean;
  navigator: { hardwareConcurrency: number; locks?: Locks };
}

const scope = globalThis as unknown as WorkerScope;
let crew: Crew | undefined;
/** A helper was found missing: from then on this thread does all of it alone. */
let isAlone = false;
const desk: Desk = {
  // Started with the first measure that has a use for it: what nobody asks for costs a phone its battery.
  crew: () =>
    isAlone
      ? undefined
      : (crew ??= startBrowserCrew(
          () => new Worker(new URL('./fieldHelper.worker.ts', import.meta.url), { type: 'module' }),
          { isIsolated: scope.crossOriginIsolated, cores: scope.navigator.hardwareConcurrency },
        )),
};

/** What came before is answered first, also where a reader has to be fetched for it. The lifeline before all: an end in the first request is heard of too. */
let before: Promise<void> = holdLifeline(scope.navigator.locks, (here) => scope.postMessage(here));
scope.onmessage = ({ data }) => {
  before = before.then(() => handle(data));
};

async function handle({ id, request, stop }: ToWorker): Promise<void> {
  try {
    await fetchReader(request);
    const onProgress = (share: number): void => scope.postMessage({ id, say: 'progress', share });
    const shouldStop = stop === undefined ? undefined : (): boolean => Atomics.load(stop, 0) !== 0;
    const result = withoutMissing(() => answer(desk, request, onProgress, shouldStop));
    scope.postMessage({ id, say: 'answer', answer: result }, buffersOf(result));
  } catch (fault) {
    // An Error loses its class on the way to the page: only its message is sent.
    scope.postMessage({ id, say: 'failed', message: faultOf(fault) });
  }
}

/** An XML parser comes with the reader of 3MF, so it is fetched with the first archive. */
async function fetchReader(request: Request): Promise<void> {
  if (!('bytes' in request) || !needs3mf(new Uint8Array(request.bytes))) return;
  desk.read3mf ??= (await import('../geometry/io/read3mf')).read3mf;
}

/** Once more and alone, where a helper did not come. */
function withoutMissing(work: () => Answers[Kind]): Answers[Kind] {
  try {
    return work();
  } catch (fault) {
    if (!(fault instanceof HelperMissing)) throw fault;
    isAlone = true;
    // What was measured so far counts on the helper.
    delete desk.measured;
    return work();
  }
}

/** What is handed over instead of copied: all of it was made for this answer. */
function buffersOf(result: Answers[Kind]): Transferable[] {
  if (!result.ok) return [];
  const { value } = result;
  if ('rims' in value)
    return [value.positions.buffer, value.normals.buffer, value.index.buffer, value.rims.buffer];
  if ('thicknessMm' in value) return [value.thicknessMm.buffer];
  if ('faces' in value) return value.faces.flatMap(({ outlines }) => outlines.map(({ buffer }) => buffer));
  if ('parts' in value)
    return value.parts.flatMap(({ surface: { positions, normals, index } }) => [
      positions.buffer,
      normals.buffer,
      index.buffer,
    ]);
  return [];
}
