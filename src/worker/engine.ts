import type { Answers, FromWorker, Kind, Request, SizeWish, ToWorker } from './protocol';
import { SCAN_BYTES_LIMIT, tooManyBytes } from '../geometry';
import type { Outcome } from '../problem';

/** A file the page holds on to, so that a worker that was stopped can be given it again. */
export interface ScanSource {
  name: string;
  bytes(): Promise<ArrayBuffer>;
  /** How many bytes it has, where that is known before it is read. */
  byteCount?: number;
}

/** The part of a Worker that is used, so that a test can stand in for one. */
export interface WorkerLike {
  postMessage(message: ToWorker, transfer: Transferable[]): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<FromWorker>) => void) | null;
  /** It has ended, or cannot be understood: nothing more is to be had from it. */
  onfault: ((why: string) => void) | null;
}

/** The answer; or that it is no longer wanted (a newer request, a cancel); or a fault of ours. */
export type Ended<T> =
  { how: 'answered'; answer: T } | { how: 'dropped' } | { how: 'failed'; message: string };

/** What is asked without a file: all there is to it stands in the request. */
export type Asked = Exclude<Request, { bytes: ArrayBuffer }>;

export interface Engine {
  open(source: ScanSource): Promise<Ended<Answers['open']>>;
  /** What takes seconds (LONG) stands aside where memory can be shared: whatever else goes before it (ORDER), and it is begun again after. */
  ask<K extends Asked['kind']>(request: Extract<Asked, { kind: K }>): Promise<Ended<Answers[K]>>;
  /** The core of the scan, from a scan of its own. */
  core(wish: SizeWish, source: ScanSource): Promise<Ended<Answers['core']>>;
  /** Stops what is running and what waits, within the time a thread takes to end. The scan stays known. */
  cancel(): void;
  close(): void;
}

interface Task {
  kind: Kind;
  request: () => Promise<Request>;
  source?: ScanSource;
  end: (ended: Ended<never>) => void;
  answered: (answer: Answers[Kind]) => void;
}

/** What is asked first goes first, whenever it was asked. */
const ORDER: readonly Kind[] = [
  'open',
  'pick',
  'size',
  'pour',
  'picture',
  'core',
  'cutFaces',
  'mold',
  'shells',
  // Asked for once it is looked at, and somebody waits for it; the ladder is for a slider that stands still then.
  'opening',
  'ladder',
  'paint',
  'bestUp',
];

/** These take seconds, and are told when they have to stand aside. */
const LONG: readonly Kind[] = ['mold', 'shells', 'ladder', 'paint', 'opening', 'bestUp'];

const goesBefore = (kind: Kind, running: Kind): boolean => ORDER.indexOf(kind) <= ORDER.indexOf(running);

/**
 * Talks to one worker at a time, one request at a time. Of each kind only the newest counts: what waits is replaced and what
 * runs is answered to nobody. A new scan does not wait for the old one: the worker is replaced. So is one in which anything broke:
 * what was asked of it has failed, and the next request finds a fresh one with the same scan.
 */
export function createEngine(
  spawn: () => WorkerLike,
  onProgress: (kind: Kind, share: number) => void,
  shareFlag: () => Int32Array | undefined = sharedFlag,
): Engine {
  let worker: WorkerLike | undefined;
  /** Answers for the request that was sent to the worker, once the worker cannot. */
  let broke: ((why: string) => void) | undefined;
  let current: ScanSource | undefined;
  let loaded: ScanSource | undefined;
  let running: (Task & { stop?: Int32Array | undefined }) | undefined;
  let life = 0;
  let nextId = 1;
  const waiting = new Map<Kind, Task>();

  function submit<K extends Kind>(
    kind: K,
    request: () => Promise<Request>,
    source?: ScanSource,
  ): Promise<Ended<Answers[K]>> {
    return new Promise((resolve) => {
      if (kind === 'open' && running !== undefined) stop();
      if (running?.stop !== undefined && goesBefore(kind, running.kind)) Atomics.store(running.stop, 0, 1);
      waiting.get(kind)?.end({ how: 'dropped' });
      if (running?.kind === kind) running.end({ how: 'dropped' });
      waiting.set(kind, {
        kind,
        request,
        end: resolve,
        answered: (answer) => resolve({ how: 'answered', answer: answer as Answers[K] }),
        ...(source === undefined ? {} : { source }),
      });
      void pump();
    });
  }

  async function pump(): Promise<void> {
    if (running !== undefined) return;
    const kind = ORDER.find((k) => waiting.has(k));
    const task = kind === undefined ? undefined : waiting.get(kind);
    if (task === undefined) return;
    waiting.delete(task.kind);
    const stop = LONG.includes(task.kind) ? shareFlag() : undefined;
    running = { ...task, stop };
    const mine = life;
    const needsScan = task.kind !== 'open' && task.kind !== 'pour';
    try {
      const request = await task.request();
      if (needsScan && current !== undefined && loaded !== current) {
        await ask({ kind: 'open', name: current.name, bytes: await current.bytes() }, task.kind, mine);
        loaded = current;
      }
      const result = await ask(request, task.kind, mine, stop);
      if (mine !== life) return;
      if (task.source !== undefined && result.ok) current = loaded = task.source;
      // It stood aside for something more urgent: it is begun again, unless a newer wish has come.
      if (!result.ok && result.problem.code === 'STOPPED')
        waiting.set(task.kind, waiting.get(task.kind) ?? task);
      else task.answered(result);
    } catch (fault) {
      if (mine !== life) return;
      task.end({ how: 'failed', message: fault instanceof Error ? fault.message : String(fault) });
    }
    running = undefined;
    void pump();
  }

  /** Never settles once the worker it was sent to is gone: `stop` has answered for it. */
  function ask(request: Request, kind: Kind, mine: number, stop?: Int32Array): Promise<Answers[Kind]> {
    return new Promise((resolve, reject) => {
      if (mine !== life) return;
      worker ??= begun();
      const id = nextId++;
      broke = (why) => {
        discard();
        reject(new Error(why));
      };
      worker.onmessage = ({ data }) => {
        if (data.id !== id) return;
        if (data.say === 'progress') onProgress(kind, data.share);
        else if (data.say === 'answer') resolve(data.answer);
        else broke?.(data.message);
      };
      worker.postMessage(
        { id, request, ...(stop === undefined ? {} : { stop }) },
        'bytes' in request ? [request.bytes] : [],
      );
    });
  }

  function begun(): WorkerLike {
    const fresh = spawn();
    fresh.onfault = (why) => {
      if (worker !== fresh) return;
      if (running === undefined) discard();
      else broke?.(why);
    };
    return fresh;
  }

  /** Whatever broke, and the memory it took, goes with the worker. */
  function discard(): void {
    worker?.terminate();
    worker = loaded = broke = undefined;
  }

  function stop(): void {
    life++;
    discard();
    running?.end({ how: 'dropped' });
    running = undefined;
    for (const task of waiting.values()) task.end({ how: 'dropped' });
    waiting.clear();
  }

  return {
    open: (source) =>
      refusedBySize(source) ??
      submit('open', async () => ({ kind: 'open', name: source.name, bytes: await source.bytes() }), source),
    ask: (request) => submit(request.kind, () => Promise.resolve(request)),
    core: (wish, source) =>
      refusedBySize(source) ??
      submit('core', async () => ({ kind: 'core', wish, name: source.name, bytes: await source.bytes() })),
    cancel: stop,
    close: stop,
  };
}

/** A file too large to be read is refused before a byte of it is: the page would go down with it. */
function refusedBySize({ byteCount = 0 }: ScanSource): Promise<Ended<Outcome<never>>> | undefined {
  if (byteCount <= SCAN_BYTES_LIMIT) return undefined;
  return Promise.resolve({ how: 'answered', answer: tooManyBytes(byteCount) });
}

/** A word both threads see; none where the page may not share memory, see vite.config.ts. */
const sharedFlag = (): Int32Array | undefined =>
  globalThis.crossOriginIsolated ? new Int32Array(new SharedArrayBuffer(4)) : undefined;
