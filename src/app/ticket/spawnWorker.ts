import type { WorkerLike } from '../../worker/engine';
import { watchedWorker } from '../../worker/lifeline';

export const spawnWorker = (): WorkerLike =>
  watchedWorker(
    new Worker(new URL('../../worker/engine.worker.ts', import.meta.url), { type: 'module' }),
    // On plain http there are none, whatever the types say.
    navigator.locks,
  );
