import { workerOf, type Version } from './version';

/**
 * `unavailable`: this page keeps no copy of itself (plain http, the dev server, a browser that does not), so a reload is what brings the newest.
 * `waiting`: the host has another build, of which nothing was fetched yet. `taking`: it is being fetched. `refused`: that failed.
 */
export interface Update {
  state: 'none' | 'waiting' | 'taking' | 'refused' | 'unavailable';
  /** All of the page is kept here: it starts without network. */
  isKept: boolean;
  next?: Version;
}

/** The parts of a browser that are used, so that a test can stand in for them. */
export interface UpdateWorld {
  /** Left out where the browser keeps it back. */
  workers?: WorkersLike;
  running: Version;
  /** What the host has now; undefined without network or answer. */
  ask: () => Promise<Version | undefined>;
  reload: () => void;
}

export interface WorkersLike {
  controller: { scriptURL: string } | null;
  ready: Promise<unknown>;
  register(script: string): Promise<RegistrationLike | undefined>;
  addEventListener(kind: 'controllerchange', heard: () => void): void;
}

export interface RegistrationLike {
  installing: WorkerLike | null;
  waiting: WorkerLike | null;
  active: WorkerLike | null;
}

export interface WorkerLike {
  state: ServiceWorkerState;
  postMessage(message: unknown): void;
  addEventListener(kind: 'statechange', heard: () => void): void;
}

export interface Updates {
  now: () => Update;
  subscribe: (heard: () => void) => () => void;
  start: () => Promise<void>;
  /** Asks the host whether there is another build. */
  check: () => Promise<void>;
  /** Fetches the build that waits, then waits for what has to be over first, then starts anew with it. */
  take: (isFree: () => Promise<void>) => Promise<void>;
}

/**
 * Keeps the page on its build until the user says otherwise. A browser swaps a service worker whose file has changed as soon as the last window
 * closes, which on a phone can be in the middle of a pour; so each build has a worker file of its own, the one that runs is never
 * fetched anew, and the next one is fetched when it is asked for.
 */
export function createUpdates({ workers, running, ask, reload }: UpdateWorld): Updates {
  let update: Update = { state: 'none', isKept: false };
  const listeners = new Set<() => void>();
  const set = (more: Partial<Update>): void => {
    update = { ...update, ...more };
    for (const heard of listeners) heard();
  };
  /** Another window has taken another build: what this one would load from now on is that one's. */
  const isOvertaken = (): boolean => {
    const inCharge = workers?.controller?.scriptURL;
    return inCharge !== undefined && !inCharge.endsWith(workerOf(running).slice(1));
  };

  async function start(): Promise<void> {
    if (workers === undefined) return set({ state: 'unavailable' });
    try {
      if ((await workers.register(workerOf(running))) === undefined) return set({ state: 'unavailable' });
    } catch {
      return set({ state: 'unavailable' });
    }
    void workers.ready.then(() => set({ isKept: true }));
    workers.addEventListener('controllerchange', () => void check());
    await check();
  }

  async function check(): Promise<void> {
    if (update.state === 'unavailable' || update.state === 'taking') return;
    const next = await ask();
    if (next !== undefined && next.build !== running.build) set({ state: 'waiting', next });
  }

  async function take(isFree: () => Promise<void>): Promise<void> {
    const { next } = update;
    if (workers === undefined || next === undefined || update.state === 'taking') return;
    set({ state: 'taking' });
    try {
      const worker = isOvertaken() ? undefined : await installed(await workers.register(workerOf(next)));
      await isFree();
      if (worker !== undefined) await activated(worker);
      reload();
    } catch {
      set({ state: 'refused' });
    }
  }

  return {
    now: () => update,
    subscribe: (heard) => {
      listeners.add(heard);
      return () => void listeners.delete(heard);
    },
    start,
    check,
    take,
  };
}

function installed(registration: RegistrationLike | undefined): Promise<WorkerLike> {
  const worker = registration?.installing ?? registration?.waiting ?? registration?.active;
  if (worker === undefined || worker === null)
    throw new Error('installed: expected a service worker, got none');
  return reached(worker, ['installed', 'activating', 'activated']);
}

function activated(worker: WorkerLike): Promise<WorkerLike> {
  worker.postMessage({ type: 'SKIP_WAITING' });
  return reached(worker, ['activated']);
}

function reached(worker: WorkerLike, states: readonly ServiceWorkerState[]): Promise<WorkerLike> {
  return new Promise((resolve, reject) => {
    const look = (): void => {
      if (states.includes(worker.state)) resolve(worker);
      else if (worker.state === 'redundant') reject(new Error('reached: the service worker was dropped'));
    };
    worker.addEventListener('statechange', look);
    look();
  });
}
