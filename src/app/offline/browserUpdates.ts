import { createUpdates, type Updates, type UpdateWorld } from './updates';
import { readVersion, runningVersion, type Version } from './version';

/** A page that stays open asks again when it is looked at, not more often than this. Chosen here. */
const ASK_AGAIN_MS = 3_600_000;

let made: Updates | undefined;

/** The one of this page; started with its first use, when the first screen stands. */
export function browserUpdates(): Updates {
  if (made !== undefined) return made;
  const updates = createUpdates(browserWorld());
  made = updates;
  whenIdle(() => void updates.start());
  let asked = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - asked < ASK_AGAIN_MS) return;
    asked = Date.now();
    void updates.check();
  });
  return updates;
}

function browserWorld(): UpdateWorld {
  const running = runningVersion();
  // On plain http a browser has none, whatever its types say; the dev server has nothing to keep.
  const container = navigator.serviceWorker as ServiceWorkerContainer | undefined;
  const hasCopy = container !== undefined && running.build !== 'dev';
  return {
    running,
    ask: askHost,
    reload: () => location.reload(),
    ...(hasCopy ? { workers: workersOf(container) } : {}),
  };
}

const workersOf = (container: ServiceWorkerContainer): NonNullable<UpdateWorld['workers']> => ({
  get controller() {
    return container.controller;
  },
  ready: container.ready,
  register: (script) => container.register(script, { scope: './', updateViaCache: 'none' }),
  addEventListener: (kind, heard) => container.addEventListener(kind, heard),
});

async function askHost(): Promise<Version | undefined> {
  try {
    const answer = await fetch('./version.json', { cache: 'no-store' });
    return answer.ok ? readVersion(await answer.json()) : undefined;
  } catch {
    return undefined;
  }
}

/** Copying the page takes network and disk, which the first screen needs first. */
function whenIdle(run: () => void): void {
  const later = (): void => {
    if ('requestIdleCallback' in window) requestIdleCallback(run, { timeout: 3000 });
    else setTimeout(run, 1000);
  };
  if (document.readyState === 'complete') later();
  else addEventListener('load', later, { once: true });
}
