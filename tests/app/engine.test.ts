import { describe, expect, it } from 'vitest';
import { sourceOfFile } from '../../src/app/ticket/sampleScans';
import { SCAN_BYTES_LIMIT } from '../../src/geometry';
import { createEngine } from '../../src/worker/engine';
import type { FromWorker } from '../../src/worker/protocol';
import { expectClose } from '../support/close';
import { valueOf } from '../support/outcome';
import { cube, HeldWorker, settle, volumeOf } from './heldWorker';

const pourAsk = {
  pour: {
    cavity: { volumeCm3: { value: 1000, from: 'given' } },
    freeRiseKgM3: { value: 96, from: 'data-sheet' },
    ratio: { a: 100, b: 55, by: 'mass' },
  },
} as const;
const broken = { name: 'broken.stl', bytes: () => Promise.resolve(new ArrayBuffer(10)) };

async function withCube() {
  HeldWorker.all = [];
  const heard: string[] = [];
  const engine = createEngine(
    () => new HeldWorker(),
    (kind, share) => heard.push(`${kind} ${share}`),
    () => new Int32Array(new SharedArrayBuffer(4)),
  );
  const opened = engine.open(cube);
  await settle();
  HeldWorker.all[0]!.work();
  expect((await opened).how).toBe('answered');
  return { engine, heard, worker: HeldWorker.all[0]! };
}

describe('the engine behind the page', () => {
  it('answers with progress on the way', async () => {
    const { engine, heard, worker } = await withCube();
    const sized = engine.ask({ kind: 'size', wish: { fileUnit: 'mm' } });
    await settle();
    worker.work();
    expectClose(volumeOf(await sized), 1, 1e-12, 'cube of 10 mm, cm3');
    expect(heard.at(-1)).toBe('size 1');
  });

  it('drops every wish but the newest: the one that runs, and those that wait', async () => {
    const { engine, worker } = await withCube();
    const first = engine.ask({ kind: 'size', wish: { fileUnit: 'mm' } });
    await settle();
    const second = engine.ask({ kind: 'size', wish: { fileUnit: 'cm' } });
    const third = engine.ask({ kind: 'size', wish: { fileUnit: 'm' } });
    expect((await first).how).toBe('dropped');
    expect((await second).how).toBe('dropped');
    worker.work();
    await settle();
    expect(worker.inbox.map(({ request }) => request)).toEqual([{ kind: 'size', wish: { fileUnit: 'm' } }]);
    worker.work();
    expect(await third).toMatchObject({ how: 'answered', answer: { ok: true } });
  });

  it('cancels by ending the worker, and gives the next one the same scan before it asks', async () => {
    const { engine, worker } = await withCube();
    const first = engine.ask({ kind: 'size', wish: { fileUnit: 'mm' } });
    await settle();
    engine.cancel();
    expect((await first).how).toBe('dropped');
    expect(worker.ended).toBe(true);
    const again = engine.ask({ kind: 'size', wish: { fileUnit: 'mm' } });
    await settle();
    const next = HeldWorker.all[1]!;
    expect(next.inbox.map(({ request }) => request.kind)).toEqual(['open']);
    next.work();
    await settle();
    next.work();
    expectClose(volumeOf(await again), 1, 1e-12, 'cube of 10 mm, cm3');
  });

  it('keeps the scan it has when another cannot be read', async () => {
    const { engine, worker } = await withCube();
    const refused = engine.open(broken);
    await settle();
    worker.work();
    expect(await refused).toMatchObject({ how: 'answered', answer: { ok: false } });
    const sized = engine.ask({ kind: 'size', wish: { fileUnit: 'mm' } });
    await settle();
    worker.work();
    expect(await sized).toMatchObject({ how: 'answered', answer: { ok: true } });
  });

  it('does not wait for the old scan when a new one is opened', async () => {
    const { engine, worker } = await withCube();
    const sized = engine.ask({ kind: 'size', wish: { fileUnit: 'mm' } });
    await settle();
    const opened = engine.open(cube);
    expect((await sized).how).toBe('dropped');
    expect(worker.ended).toBe(true);
    await settle();
    HeldWorker.all[1]!.work();
    expect((await opened).how).toBe('answered');
  });

  it('lets the molds stand aside for a pour and begins them again after it', async () => {
    const { engine, worker } = await withCube();
    const kinds = (): string[] => worker.inbox.map(({ request }) => request.kind);
    const molds = engine.ask({ kind: 'mold', wish: { fileUnit: 'cm' }, ask: { settings: { block: {} } } });
    await settle();
    expect([kinds(), worker.inbox[0]!.stop![0]]).toEqual([['mold'], 0]);
    const poured = engine.ask({ kind: 'pour', ask: pourAsk });
    expect(worker.inbox[0]!.stop![0]).toBe(1);
    worker.work();
    await settle();
    expect(kinds()).toEqual(['pour']);
    worker.work();
    expect(await poured).toMatchObject({ how: 'answered', answer: { ok: true } });
    await settle();
    expect(kinds()).toEqual(['mold']);
    worker.work();
    expect(await molds).toMatchObject({ how: 'answered', answer: { ok: true } });
  });

  it('answers to nobody a mold whose thickness was changed while it was worked out', async () => {
    const { engine, worker } = await withCube();
    const first = engine.ask({ kind: 'mold', wish: { fileUnit: 'cm' }, ask: { settings: { block: {} } } });
    await settle();
    const second = engine.ask({
      kind: 'mold',
      wish: { fileUnit: 'cm' },
      ask: { settings: { block: { wallMm: 20 } } },
    });
    expect((await first).how).toBe('dropped');
    worker.work();
    await settle();
    worker.work();
    const ended = await second;
    if (ended.how !== 'answered') throw new Error(`expected an answer, got ${ended.how}`);
    const [block] = valueOf(ended.answer);
    expect(valueOf(block!.mold).settings.wallMm).toBe(20);
  });

  it('refuses a file that is too large before it is read, and keeps the scan it has', async () => {
    const { engine, worker } = await withCube();
    const large = {
      name: 'large.stl',
      byteCount: SCAN_BYTES_LIMIT + 1,
      bytes: () => Promise.reject<ArrayBuffer>(new Error('it was read')),
    };
    const refused = {
      how: 'answered',
      answer: { ok: false, problem: { code: 'TOO_LARGE', values: { part: 'file' } } },
    };
    expect(await engine.open(large)).toMatchObject(refused);
    expect(await engine.core({ fileUnit: 'mm' }, large)).toMatchObject(refused);
    const sized = engine.ask({ kind: 'size', wish: { fileUnit: 'mm' } });
    await settle();
    worker.work();
    expectClose(volumeOf(await sized), 1, 1e-12, 'cube of 10 mm, cm3');
  });

  it('knows the length of a file that is chosen', () => {
    expect(sourceOfFile(new File(['solid'], 'a.stl'))).toMatchObject({ name: 'a.stl', byteCount: 5 });
  });

  it('hands on a fault of ours as one', async () => {
    const { engine, worker } = await withCube();
    const sized = engine.ask({ kind: 'size', wish: { fileUnit: 'mm' } });
    await settle();
    worker.onmessage?.({
      data: { id: worker.inbox[0]!.id, say: 'failed', message: 'expected X, got Y' },
    } as MessageEvent<FromWorker>);
    expect(await sized).toEqual({ how: 'failed', message: 'expected X, got Y' });
  });
});
