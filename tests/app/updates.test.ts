import { describe, expect, it } from 'vitest';
import { createUpdateGate } from '../../src/app/offline/updateGate';
import { createUpdates, type UpdateWorld, type WorkerLike } from '../../src/app/offline/updates';
import { readVersion, type Version } from '../../src/app/offline/version';

const RUNNING: Version = { version: '0.1.0', build: '0000aaaa' };
const NEXT: Version = { version: '0.2.0', build: '1111bbbb' };

/** A service worker that goes through its states when it is told to. */
function workerThatInstalls(log: string[]) {
  const heard: (() => void)[] = [];
  const worker: WorkerLike & { go: (state: ServiceWorkerState) => void } = {
    state: 'installing',
    postMessage: (message) => {
      log.push(JSON.stringify(message));
      worker.go('activated');
    },
    addEventListener: (_, listener) => heard.push(listener),
    go: (state) => {
      worker.state = state;
      for (const listener of heard) listener();
    },
  };
  return worker;
}

function world({ host, isBlocked = false }: { host: () => Version | undefined; isBlocked?: boolean }) {
  const log: string[] = [];
  const worker = workerThatInstalls(log);
  let onChange = (): void => {};
  const controller: { current: { scriptURL: string } | null } = { current: null };
  const made: UpdateWorld = {
    running: RUNNING,
    ask: () => Promise.resolve(host()),
    reload: () => log.push('reload'),
    workers: {
      get controller() {
        return controller.current;
      },
      ready: Promise.resolve(),
      register: (script) => {
        log.push(script);
        return Promise.resolve(isBlocked ? undefined : { installing: worker, waiting: null, active: null });
      },
      addEventListener: (_, heard) => {
        onChange = heard;
      },
    },
  };
  const overtake = (scriptURL: string): void => {
    controller.current = { scriptURL };
    onChange();
  };
  return { made, log, worker, overtake };
}

const save = (log: string[]) => (): Promise<void> => {
  log.push('saved');
  return Promise.resolve();
};

describe('updates', () => {
  it('registers the worker of its own build, and nothing else while the host has the same', async () => {
    const { made, log } = world({ host: () => RUNNING });
    const updates = createUpdates(made);
    await updates.start();
    expect(log).toEqual(['./sw-0000aaaa.js']);
    expect(updates.now()).toMatchObject({ state: 'none', isKept: true });
  });

  it('says that another build is there, and fetches nothing of it', async () => {
    const { made, log } = world({ host: () => NEXT });
    const updates = createUpdates(made);
    await updates.start();
    expect(updates.now()).toMatchObject({ state: 'waiting', next: NEXT });
    expect(log).toEqual(['./sw-0000aaaa.js']);
  });

  it('takes it when told: fetched whole, then saved, then put in charge, then started anew', async () => {
    const { made, log, worker } = world({ host: () => NEXT });
    const updates = createUpdates(made);
    await updates.start();
    const taken = updates.take(save(log));
    await Promise.resolve();
    expect(updates.now().state).toBe('taking');
    expect(log).not.toContain('saved');
    worker.go('installed');
    await taken;
    expect(log.slice(1)).toEqual(['./sw-1111bbbb.js', 'saved', '{"type":"SKIP_WAITING"}', 'reload']);
  });

  it('goes on with its own build when the other one does not come whole', async () => {
    const { made, log, worker } = world({ host: () => NEXT });
    const updates = createUpdates(made);
    await updates.start();
    const taken = updates.take(save(log));
    await Promise.resolve();
    worker.go('redundant');
    await taken;
    expect(updates.now()).toMatchObject({ state: 'refused', next: NEXT });
    expect(log).not.toContain('saved');
    expect(log).not.toContain('reload');
  });

  it('does not start anew when saving fails', async () => {
    const { made, log, worker } = world({ host: () => NEXT });
    const updates = createUpdates(made);
    await updates.start();
    const taken = updates.take(() => Promise.reject(new Error('disk full')));
    worker.go('installed');
    await taken;
    expect(updates.now().state).toBe('refused');
    expect(log).not.toContain('{"type":"SKIP_WAITING"}');
    expect(log).not.toContain('reload');
  });

  it('when another window has taken it, waits here too, and then only starts anew', async () => {
    let host: Version | undefined = RUNNING;
    const { made, log, overtake } = world({ host: () => host });
    const updates = createUpdates(made);
    await updates.start();
    host = NEXT;
    overtake('https://host/shop/sw-1111bbbb.js');
    await Promise.resolve();
    await Promise.resolve();
    expect(updates.now()).toMatchObject({ state: 'waiting', next: NEXT });
    expect(log).not.toContain('reload');
    await updates.take(save(log));
    expect(log.slice(1)).toEqual(['saved', 'reload']);
  });

  it('offers nothing without network, where workers are kept back, and where they are blocked', async () => {
    const offline = createUpdates(world({ host: () => undefined }).made);
    await offline.start();
    expect(offline.now().state).toBe('none');
    const { ask, reload, running } = world({ host: () => NEXT }).made;
    const plain = createUpdates({ ask, reload, running });
    await plain.start();
    expect(plain.now()).toEqual({ state: 'unavailable', isKept: false });
    const blocked = createUpdates(world({ host: () => NEXT, isBlocked: true }).made);
    await blocked.start();
    await blocked.check();
    expect(blocked.now()).toEqual({ state: 'unavailable', isKept: false });
  });
});

it.each([
  undefined,
  null,
  'x',
  {},
  { version: '1', build: 7 },
  { version: '1', build: '../evil' },
  { version: '1', build: '0000AAAA1' },
])('takes no version from an answer like %j', (told) => expect(readVersion(told)).toBeUndefined());

it('reads what the host says', () => expect(readVersion({ ...NEXT, more: 1 })).toEqual(NEXT));

describe('the gate', () => {
  it('tells the first reason there is, and is free once nothing holds', async () => {
    const gate = createUpdateGate();
    let isFree = false;
    const saved = gate.hold();
    const over = gate.hold('A pour clock is running.');
    expect(gate.why()).toBe('A pour clock is running.');
    const free = gate.free().then(() => {
      isFree = true;
    });
    over();
    await Promise.resolve();
    expect(gate.why()).toBeUndefined();
    expect(isFree).toBe(false);
    saved();
    await free;
    expect(isFree).toBe(true);
  });

  it('is free at once where nothing holds, and lets the same hold go twice', async () => {
    const gate = createUpdateGate();
    await gate.free();
    const over = gate.hold('x');
    const other = gate.hold('y');
    over();
    over();
    expect(gate.why()).toBe('y');
    other();
    await gate.free();
  });
});
