import { ENGINE_WORDS } from '../words/engineWords';
import type { WorkerLike } from './engine';
import type { FromWorker } from './protocol';

/** A worker that has begun, and the lock that it holds as long as it lives. */
export interface Here {
  say: 'here';
  lock: string;
}

/** The part of `navigator.locks` that is used; plain http has none. */
export type Locks = Pick<LockManager, 'request'>;

/**
 * Called by a worker: takes a lock that it never gives back, and says so. A worker tells nobody that it has ended, but then the browser
 * takes its locks from it (Web Locks API, 2.4). Over once the lock is held, or where there is none to be had.
 */
export function holdLifeline(locks: Locks | undefined, say: (here: Here) => void): Promise<void> {
  if (locks === undefined) return Promise.resolve();
  const lock = `risewright: a thread, ${crypto.getRandomValues(new Uint32Array(4)).join('-')}`;
  return new Promise((held) => {
    const asked = locks.request(lock, () => {
      say({ say: 'here', lock });
      held();
      return new Promise<never>(() => undefined);
    });
    asked.catch(() => held());
  });
}

/** The page's end of it: a worker whose end, by whatever cause, is heard of. */
export function watchedWorker(
  worker: Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror' | 'onmessageerror'>,
  locks: Locks | undefined,
): WorkerLike {
  const over = new AbortController();
  const like: WorkerLike = {
    onmessage: null,
    onfault: null,
    postMessage: (message, transfer) => worker.postMessage(message, transfer),
    terminate: () => {
      over.abort();
      worker.terminate();
    },
  };
  const waitForEnd = (lock: string): void => {
    const asked = locks?.request(lock, { signal: over.signal }, () => like.onfault?.(ENGINE_WORDS.ended));
    // Given up, because the worker was ended from here.
    asked?.catch(() => undefined);
  };
  worker.onmessage = (event: MessageEvent<FromWorker | Here>) => {
    if (event.data.say === 'here') waitForEnd(event.data.lock);
    else like.onmessage?.(event as MessageEvent<FromWorker>);
  };
  // Of a script that could not be loaded there is nothing but that.
  worker.onerror = (event: ErrorEvent) => like.onfault?.(event.message ?? ENGINE_WORDS.notLoaded);
  worker.onmessageerror = () => like.onfault?.(ENGINE_WORDS.unread);
  return like;
}
