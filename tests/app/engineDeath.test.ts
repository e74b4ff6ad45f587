import { describe, expect, it } from 'vitest';
import { createEngine, type Ended, type Engine } from '../../src/worker/engine';
import { holdLifeline, watchedWorker, type Here } from '../../src/worker/lifeline';
import type { FromWorker } from '../../src/worker/protocol';
import { ENGINE_WORDS, faultOf } from '../../src/words/engineWords';
import { expectClose } from '../support/close';
import { between, lcg } from '../support/lcg';
import { cube, HeldWorker, settle, volumeOf } from './heldWorker';

/** How a worker of a browser ends or breaks, as its client hears of it. */
const WAYS: readonly (readonly [name: string, end: (worker: HeldWorker) => void])[] = [
  ['its script throws', (worker) => worker.onfault?.('Uncaught Error: expected X, got Y')],
  ['what it says cannot be read', (worker) => worker.onfault?.(ENGINE_WORDS.unread)],
  ['the browser takes it', (worker) => worker.onfault?.(ENGINE_WORDS.ended)],
  [
    'memory runs out in it',
    (worker) =>
      worker.say({ say: 'failed', message: faultOf(new RangeError('Array buffer allocation failed')) }),
  ],
];

const WISH = { fileUnit: 'mm' } as const;
const JOBS: readonly (readonly [name: string, ask: (engine: Engine) => Promise<Ended<unknown>>])[] = [
  ['a measure', (engine) => engine.ask({ kind: 'size', wish: WISH })],
  [
    'molds',
    (engine) => engine.ask({ kind: 'mold', wish: { fileUnit: 'cm' }, ask: { settings: { block: {} } } }),
  ],
  ['the reading of a file', (engine) => engine.open(cube)],
];

function engineOfHeld(): Engine {
  HeldWorker.all = [];
  return createEngine(
    () => new HeldWorker(),
    () => undefined,
    () => new Int32Array(new SharedArrayBuffer(4)),
  );
}

/** Lets whoever is asked now answer, until nothing waits. */
async function workOff(): Promise<void> {
  for (let turn = 0; turn < 20; turn++) {
    await settle();
    HeldWorker.all.find(({ inbox, ended }) => !ended && inbox.length > 0)?.work();
  }
}

async function opened(): Promise<Engine> {
  const engine = engineOfHeld();
  const done = engine.open(cube);
  await workOff();
  expect((await done).how).toBe('answered');
  return engine;
}

const newest = (): HeldWorker => HeldWorker.all.at(-1)!;

describe('a worker that dies', () => {
  it.each(Array.from({ length: 20 }, (_, i) => 20261130 + i))(
    'at a random moment is replaced, what it was at has failed in words, and the next result is right (seed %i)',
    async (seed) => {
      const random = lcg(seed);
      const pick = <T>(all: readonly T[]): T => all[Math.floor(between(random, 0, all.length))]!;
      const [[job, ask], [way, end]] = [pick(JOBS), pick(WAYS)];
      const engine = await opened();
      // How often it tells its progress when nothing happens: the moments to choose from.
      const whole = ask(engine);
      await settle();
      const moments = newest().work();
      expect((await whole).how).toBe('answered');
      const moment = Math.floor(between(random, 0, moments + 1));
      const what = `${job}, ${way} at ${moment} of ${moments}`;

      const again = await opened();
      const dies = ask(again);
      // What waits behind it is not lost with it. (For a measure molds stand aside, and another measure takes the place of the first.)
      const waits = job === 'the reading of a file' ? again.ask({ kind: 'size', wish: WISH }) : undefined;
      await settle();
      const victim = newest();
      victim.work({ dieAt: moment, end: () => end(victim) });
      const ended = await dies;
      if (ended.how !== 'failed') throw new Error(`${what}: expected it failed, got ${ended.how}`);
      expect(ended.message, what).toMatch(
        /ended by itself|was not understood|expected X|memory of this browser ran out/,
      );
      expect(victim.ended, what).toBe(true);
      await workOff();
      if (waits !== undefined) expectClose(volumeOf(await waits), 1, 1e-12, `${what}: what waited, cm3`);
      const next = again.ask({ kind: 'size', wish: WISH });
      await workOff();
      expectClose(volumeOf(await next), 1, 1e-12, `${what}: cube of 10 mm, cm3`);
      expect(newest()).not.toBe(victim);
    },
  );

  it('while it has nothing to do is replaced before it is asked anything', async () => {
    const engine = await opened();
    const [first] = HeldWorker.all;
    first!.onfault?.(ENGINE_WORDS.ended);
    expect(first!.ended).toBe(true);
    const sized = engine.ask({ kind: 'size', wish: WISH });
    await workOff();
    expect(HeldWorker.all).toHaveLength(2);
    expectClose(volumeOf(await sized), 1, 1e-12, 'cube of 10 mm, cm3');
  });

  it('and says more after it was replaced is not listened to', async () => {
    const engine = await opened();
    const sized = engine.ask({ kind: 'size', wish: WISH });
    await settle();
    const [first] = HeldWorker.all;
    first!.onfault?.(ENGINE_WORDS.ended);
    expect((await sized).how).toBe('failed');
    const again = engine.ask({ kind: 'size', wish: WISH });
    await settle();
    first!.work();
    first!.onfault?.('late');
    await workOff();
    expectClose(volumeOf(await again), 1, 1e-12, 'cube of 10 mm, cm3');
    expect(HeldWorker.all).toHaveLength(2);
  });

  it('each time it is asked fails each time, and never starts itself anew unasked', async () => {
    const engine = await opened();
    for (let round = 0; round < 3; round++) {
      const sized = engine.ask({ kind: 'size', wish: WISH });
      await settle();
      newest().onfault?.(ENGINE_WORDS.ended);
      expect((await sized).how).toBe('failed');
      await settle();
    }
    expect(HeldWorker.all.length).toBeLessThanOrEqual(4);
  });

  it('a file that cannot be fetched again is a fault of its own: the worker stays', async () => {
    const engine = await opened();
    const unread = await engine.open({ name: 'gone.stl', bytes: () => Promise.reject(new Error('gone')) });
    expect(unread).toEqual({ how: 'failed', message: 'gone' });
    expect(newest().ended).toBe(false);
  });
});

/** Locks as the Web Locks API has them, as far as they are used: one holder a name, the others wait, and `free` is what the browser does when a thread ends. */
function fakeLocks() {
  const waiting = new Map<string, (() => void)[]>();
  const request = (name: string, options: unknown, work?: () => unknown): Promise<unknown> => {
    const does = (work ?? options) as () => unknown;
    const { signal } = (work === undefined ? {} : options) as { signal?: AbortSignal };
    const queue = waiting.get(name);
    if (queue === undefined) {
      waiting.set(name, []);
      return Promise.resolve().then(does);
    }
    return new Promise((resolve, reject) => {
      signal?.addEventListener('abort', () => reject(new DOMException('given up', 'AbortError')));
      queue.push(() => {
        if (signal?.aborted !== true) resolve(does());
      });
    });
  };
  return {
    locks: { request } as unknown as LockManager,
    free: (name: string) => waiting.get(name)?.shift()?.(),
  };
}

function fakeWorker() {
  return {
    onmessage: null as ((event: MessageEvent) => void) | null,
    onerror: null as ((event: ErrorEvent) => void) | null,
    onmessageerror: null as ((event: MessageEvent) => void) | null,
    postMessage: () => undefined,
    isEnded: false,
    terminate() {
      this.isEnded = true;
    },
  };
}

describe('the lifeline of a worker', () => {
  const begun = async () => {
    const { locks, free } = fakeLocks();
    const worker = fakeWorker();
    const watched = watchedWorker(worker, locks);
    const faults: string[] = [];
    watched.onfault = (why) => faults.push(why);
    let lock = '';
    await holdLifeline(locks, (here: Here) => {
      ({ lock } = here);
      worker.onmessage?.({ data: here } as MessageEvent);
    });
    return { worker, watched, faults, free: () => free(lock) };
  };

  it('tells that it has ended, whatever ended it', async () => {
    const { faults, free } = await begun();
    await settle();
    expect(faults).toEqual([]);
    free();
    await settle();
    expect(faults).toEqual([ENGINE_WORDS.ended]);
  });

  it('tells nothing when it was ended from here', async () => {
    const { worker, watched, faults, free } = await begun();
    watched.terminate();
    free();
    await settle();
    expect([worker.isEnded, faults]).toEqual([true, []]);
  });

  it('hands on what the worker says, and tells what cannot be read and a script that did not come', async () => {
    const { worker, watched, faults } = await begun();
    const heard: FromWorker[] = [];
    watched.onmessage = ({ data }) => heard.push(data);
    const said: FromWorker = { id: 1, say: 'progress', share: 0.5 };
    worker.onmessage?.({ data: said } as MessageEvent);
    expect(heard).toEqual([said]);
    worker.onmessageerror?.({} as MessageEvent);
    worker.onerror?.({} as ErrorEvent);
    worker.onerror?.({ message: 'Uncaught X' } as ErrorEvent);
    expect(faults).toEqual([ENGINE_WORDS.unread, ENGINE_WORDS.notLoaded, 'Uncaught X']);
  });

  it('is done without where the browser has no locks, as on plain http', async () => {
    const said: Here[] = [];
    await holdLifeline(undefined, (here) => said.push(here));
    await holdLifeline({ request: () => Promise.reject(new Error('not allowed')) }, (here) =>
      said.push(here),
    );
    expect(said).toEqual([]);
  });
});

it.each(['Array buffer allocation failed', 'Invalid typed array length: 99', 'out of memory'])(
  'that memory ran out is said as that: %s',
  (why) => expect(faultOf(new RangeError(why))).toBe(ENGINE_WORDS.noMemory(why)),
);

it('any other fault keeps its own words', () => {
  expect([faultOf(new Error('expected X, got Y')), faultOf('plain')]).toEqual(['expected X, got Y', 'plain']);
});
