import type { Ended, Engine, WorkerLike } from '../../worker/engine';
import { watchedWorker } from '../../worker/lifeline';
import type { Answers } from '../../worker/protocol';
import type { Ask } from './asks';
import type { JobName } from './reducer';

export const spawnWorker = (): WorkerLike =>
  watchedWorker(
    new Worker(new URL('../../worker/engine.worker.ts', import.meta.url), { type: 'module' }),
    // On plain http there are none, whatever the types say.
    navigator.locks,
  );

/** Asks what the ticket wants to know. */
export function askEngine(engine: Engine, request: Ask['request']): Promise<Ended<Answers[JobName]>> {
  switch (request.kind) {
    case 'size':
      return engine.size(request.wish);
    case 'mold':
      return engine.mold(request.wish, request.ask);
    case 'opening':
      return engine.opening(request.wish, request.ask);
    case 'bestUp':
      return engine.bestUp(request.wish, request.ask);
    case 'pour':
      return engine.pour(request.ask);
    case 'picture':
      return engine.picture(request.place);
    case 'ladder':
      return engine.ladder(request.wish, request.ask);
    case 'shells':
      return engine.shells(request.wish, request.ask);
    case 'cutFaces':
      return engine.cutFaces(request.wish, request.ask);
    case 'paint':
      return engine.paint(request.wish, request.place, request.base);
  }
}
