import { describe, expect, it } from 'vitest';
import { asksOf } from '../../src/app/ticket/asks';
import { sizeNow } from '../../src/app/ticket/now';
import { newTicket } from '../../src/app/ticket/state';
import { answer, type Desk } from '../../src/worker/answer';
import { createEngine, type Engine } from '../../src/worker/engine';
import type { Answers, Request } from '../../src/worker/protocol';
import { expectClose } from '../support/close';
import { box } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';
import { cube, HeldWorker, settle, volumeOf } from './heldWorker';
import { openBox, step, still, type } from './pageEngine';

/** Parts of a job's progress, counted in its own words: no clock is asked. */
const SHARES = [0, 0.25, 0.5, 0.99];

const wish = { fileUnit: 'cm', accuracy: 'fast' } as const;
const JOBS: Readonly<Record<string, Request>> = {
  'the ladder of a mold': { kind: 'ladder', wish, ask: { settings: { block: {} } } },
};

async function deskOfCube(): Promise<Desk> {
  const desk: Desk = {};
  answer(desk, { kind: 'open', name: cube.name, bytes: await cube.bytes() }, () => undefined);
  return desk;
}

describe.each(Object.entries(JOBS))('%s, told to stop', (_, request) => {
  it.each(SHARES)(
    'at %f of its progress stops, and asked again gives the very same answer',
    async (share) => {
      let words = 0;
      const whole = answer(await deskOfCube(), request, () => words++);
      expect(whole.ok).toBe(true);
      expect(words).toBeGreaterThan(4);
      const desk = await deskOfCube();
      const last = Math.ceil(share * words);
      let heard = 0;
      const stopped = answer(
        desk,
        request,
        () => heard++,
        () => heard >= last,
      );
      // With so little left it may be done before it looks again; then it is the whole answer.
      if (stopped.ok) expect([share, JSON.stringify(stopped)]).toEqual([0.99, JSON.stringify(whole)]);
      else expect(stopped.problem.code).toBe('STOPPED');
      expect(heard).toBeLessThanOrEqual(words);
      expect(JSON.stringify(answer(desk, request, () => undefined))).toBe(JSON.stringify(whole));
    },
  );
});

/** Its volume is eight times that of the cube. */
const larger = {
  name: 'larger.stl',
  bytes: () => Promise.resolve(stlBytes(box([20, 20, 20])).slice().buffer),
};

async function opened(): Promise<Engine> {
  HeldWorker.all = [];
  const engine = createEngine(
    () => new HeldWorker(),
    () => undefined,
    () => undefined,
  );
  const done = engine.open(cube);
  await workOff();
  expect((await done).how).toBe('answered');
  return engine;
}

async function workOff(): Promise<void> {
  for (let turn = 0; turn < 10; turn++) {
    await settle();
    HeldWorker.all.find(({ inbox, ended }) => !ended && inbox.length > 0)?.work();
  }
}

/** A measure that is interrupted when it has said so much of its progress. */
async function interrupted(engine: Engine, share: number, interrupt: () => void): Promise<HeldWorker> {
  const counted = engine.ask({ kind: 'size', wish: { fileUnit: 'mm' } });
  await settle();
  const moments = HeldWorker.all.at(-1)!.work();
  await counted;
  const sized = engine.ask({ kind: 'size', wish: { fileUnit: 'in' } });
  await settle();
  const victim = HeldWorker.all.at(-1)!;
  victim.work({ dieAt: Math.min(moments, Math.ceil(share * moments)), end: interrupt });
  expect((await sized).how).toBe('dropped');
  return victim;
}

describe.each(SHARES)('a measure at %f of its progress', (share) => {
  it('that is cancelled ends its worker; the next measure is right', async () => {
    const engine = await opened();
    const victim = await interrupted(engine, share, () => engine.cancel());
    expect(victim.ended).toBe(true);
    const next = engine.ask({ kind: 'size', wish: { fileUnit: 'mm' } });
    await workOff();
    expectClose(volumeOf(await next), 1, 1e-12, 'cube of 10 mm, cm3');
  });

  it('while another file is opened is of nobody: only the figures of the second are heard', async () => {
    const engine = await opened();
    let second: Promise<unknown> = Promise.resolve();
    const victim = await interrupted(engine, share, () => void (second = engine.open(larger)));
    // What the first still says comes too late.
    victim.work();
    await workOff();
    expect(await second).toMatchObject({ how: 'answered', answer: { ok: true } });
    const next = engine.ask({ kind: 'size', wish: { fileUnit: 'mm' } });
    await workOff();
    expectClose(volumeOf(await next), 8, 1e-12, 'cube of 20 mm, cm3');
  });
});

it('an answer about the first file that comes when the second stands on the ticket is not shown, nor its failure', () => {
  const desk: Desk = {};
  const first = step(
    openBox(newTicket(), desk, 'first.stl'),
    { do: 'up', axis: '+z' },
    ...type('tape', '200'),
    still,
  );
  const ask = asksOf(first).find(({ job }) => job === 'size')!;
  const running = step(first, { do: 'start', job: 'size', key: ask.key });
  const said = answer(desk, ask.request, () => undefined) as Answers['size'];
  expect(said.ok).toBe(true);
  const second = openBox(running, desk, 'second.stl');
  for (const ended of [
    { how: 'answered', answer: said } as const,
    { how: 'failed', message: 'late' } as const,
  ]) {
    const late = step(second, { do: 'ended', job: 'size', key: ask.key, ended });
    expect(sizeNow(late).state).not.toBe('answered');
    expect(sizeNow(late).state).not.toBe('failed');
    expect(sizeNow(late).answer).toBeUndefined();
    // Nor once the second is told the same: it is asked about anew.
    const told = step(late, { do: 'up', axis: '+z' }, ...type('tape', '200'), still);
    expect(sizeNow(told).state).not.toBe('answered');
    expect(asksOf(told).some(({ job }) => job === 'size')).toBe(true);
  }
});
