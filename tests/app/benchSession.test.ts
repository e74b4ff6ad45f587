import { describe, expect, it } from 'vitest';
import { NO_RUN } from '../../src/job/benchState';
import { forgetRuns, RUN_KEY } from '../../src/app/bench/localRun';
import { createBenchSession, type BenchWorld } from '../../src/app/bench/benchSession';
import { BENCH_PLAN } from '../support/benchPlan';

const HOUR = 3_600_000;

/** A device: two clocks, and a place for one text that all of its pages share. */
function device() {
  let wallMs = Date.UTC(2026, 10, 30, 14, 6, 37);
  let monoMs = 0;
  let text: string | null = null;
  let isFull = false;
  /** A page has its own zero of the running clock. */
  const page = (): BenchWorld => {
    const zero = monoMs;
    return {
      now: () => ({ wallMs, monoMs: monoMs - zero }),
      read: () => text,
      write: (next) => {
        if (isFull) throw new DOMException('full', 'QuotaExceededError');
        text = next;
      },
      clear: () => (text = null),
    };
  };
  return {
    page,
    pass: (ms: number) => {
      wallMs += ms;
      monoMs += ms;
    },
    set: (ms: number) => (wallMs += ms),
    sleep: (ms: number) => (wallMs += ms),
    fill: () => (isFull = true),
    text: () => text,
  };
}

const elapsed = (session: ReturnType<typeof createBenchSession>): number | undefined => {
  session.tick();
  return session.shown().clock?.elapsedMs;
};

describe('a pour at the bench', () => {
  it('is pressed through, each press with the clock and the time of day', () => {
    const box = device();
    const session = createBenchSession(box.page(), NO_RUN);
    for (const what of ['mixing', 'poured', 'plugged', 'open'] as const) {
      session.press(what, BENCH_PLAN);
      box.pass(30_000);
    }
    const { run } = session.shown();
    expect(run.presses.map(({ what, elapsedMs }) => [what, elapsedMs])).toEqual([
      ['mixing', 0],
      ['poured', 30_000],
      ['plugged', 60_000],
      ['open', 90_000],
    ]);
    expect(run.presses[3]!.wallMs - run.presses[0]!.wallMs).toBe(90_000);
  });

  it('is gone once everything of the device was forgotten, and is not written down again', () => {
    const box = device();
    const session = createBenchSession(box.page(), NO_RUN);
    session.press('mixing', BENCH_PLAN);
    expect(box.text()).not.toBeNull();
    session.forget();
    box.pass(5000);
    session.tick();
    expect(session.shown()).toMatchObject({ run: NO_RUN, clock: undefined });
    expect(box.text()).toBeNull();
    const kept = new Map([
      ['other', '1'],
      [`${RUN_KEY}shop/p/c`, '2'],
      [`${RUN_KEY}sample/p/c`, '3'],
    ]);
    forgetRuns({
      length: kept.size,
      key: (n) => [...kept.keys()][n] ?? null,
      removeItem: (key) => void kept.delete(key),
    });
    expect([...kept.keys()]).toEqual(['other']);
  });

  it('ignores a bounce, and a press that is not due', () => {
    const box = device();
    const session = createBenchSession(box.page(), NO_RUN);
    session.press('mixing', BENCH_PLAN);
    box.pass(600);
    session.press('poured');
    session.undo();
    expect(session.shown().run.presses).toHaveLength(1);
    box.pass(200);
    session.press('open');
    session.press('mixing');
    expect(session.shown().run.presses).toHaveLength(1);
    session.press('poured');
    expect(session.shown().run.presses).toHaveLength(2);
  });

  it('tells whoever looks, by the second and no oftener', () => {
    const box = device();
    const session = createBenchSession(box.page(), NO_RUN);
    let told = 0;
    const stop = session.subscribe(() => (told += 1));
    session.press('mixing', BENCH_PLAN);
    for (let n = 0; n < 20; n += 1) {
      box.pass(250);
      session.tick();
    }
    expect(told).toBe(6);
    stop();
    box.pass(5000);
    session.tick();
    expect(told).toBe(6);
  });

  it('goes on after a crash by what was kept at once', () => {
    const box = device();
    const session = createBenchSession(box.page(), NO_RUN);
    session.press('mixing', BENCH_PLAN);
    box.pass(7300);
    const next = createBenchSession(box.page(), NO_RUN);
    expect(elapsed(next)).toBe(7300);
    expect(next.shown().run).toEqual(session.shown().run);
    expect(next.shown().run.plan).toEqual(BENCH_PLAN);
  });

  it('is right after the clock was set back by an hour and the page loaded anew', () => {
    const box = device();
    const session = createBenchSession(box.page(), NO_RUN);
    session.press('mixing', BENCH_PLAN);
    box.pass(10_000);
    session.tick();
    box.set(-HOUR);
    box.pass(250);
    session.tick();
    box.pass(2250);
    session.tick();
    box.pass(500);
    expect(elapsed(createBenchSession(box.page(), NO_RUN))).toBe(13_000);
  });

  it('asks where a jump ahead cannot be told, and the other page hears the answer', () => {
    const box = device();
    const one = createBenchSession(box.page(), NO_RUN);
    one.press('mixing', BENCH_PLAN);
    const other = createBenchSession(box.page(), NO_RUN);
    box.pass(5000);
    box.set(HOUR);
    expect([elapsed(one), elapsed(other)]).toEqual([5000, 5000]);
    expect(one.shown().clock?.doubts).toHaveLength(1);
    one.settle('day');
    other.sync();
    expect([elapsed(one), elapsed(other)]).toEqual([5000 + HOUR, 5000 + HOUR]);
    expect(other.shown().clock?.doubts).toEqual([]);
  });

  it('takes the time of day where it was hidden and slept', () => {
    const box = device();
    const session = createBenchSession(box.page(), NO_RUN);
    session.press('mixing', BENCH_PLAN);
    session.hidden(true);
    session.tick();
    session.tick();
    box.sleep(20 * 60_000);
    session.hidden(false);
    expect(elapsed(session)).toBe(20 * 60_000);
    expect(session.shown().clock?.doubts).toMatchObject([{ taken: 'day', because: 'hidden' }]);
    session.settle('running');
    expect(elapsed(session)).toBe(20 * 60_000);
    box.pass(1000);
    session.settle('running');
    expect(elapsed(session)).toBe(1000);
  });

  it('knows a set clock by a screen that was kept awake on both ends', () => {
    const box = device();
    const session = createBenchSession(box.page(), NO_RUN);
    session.press('mixing', BENCH_PLAN);
    session.awake(true);
    session.tick();
    box.set(HOUR);
    session.tick();
    session.awake(false);
    box.set(HOUR);
    session.tick();
    expect(session.shown().clock?.doubts.map(({ because }) => because)).toEqual(['awake', 'cannot tell']);
  });

  it('shows the same on two pages, and a press that another page has overtaken does nothing', () => {
    const box = device();
    const one = createBenchSession(box.page(), NO_RUN);
    const other = createBenchSession(box.page(), NO_RUN);
    one.press('mixing', BENCH_PLAN);
    other.press('mixing', BENCH_PLAN);
    expect(other.shown().run).toEqual(one.shown().run);
    box.pass(4000);
    expect(elapsed(other)).toBe(4000);
    other.press('poured');
    one.sync();
    expect(one.shown().run.presses).toHaveLength(2);
  });

  it('takes what the piece has kept only where that is newer', () => {
    const box = device();
    const session = createBenchSession(box.page(), NO_RUN);
    session.press('mixing', BENCH_PLAN);
    session.hear(NO_RUN);
    expect(session.shown().run.presses).toHaveLength(1);
    box.pass(3000);
    const elsewhere = device();
    const restored = createBenchSession(elsewhere.page(), session.shown().run);
    elsewhere.pass(3000);
    expect(elapsed(restored)).toBe(3000);
    const empty = createBenchSession(elsewhere.page(), NO_RUN);
    empty.hear(session.shown().run);
    expect(empty.shown().run.presses).toHaveLength(1);
  });

  it('says that nothing is kept at once where the browser keeps nothing, and runs on', () => {
    const box = device();
    const session = createBenchSession(box.page(), NO_RUN);
    box.fill();
    session.press('mixing', BENCH_PLAN);
    expect(session.shown().isLocal).toBe(false);
    box.pass(9000);
    expect(elapsed(session)).toBe(9000);
  });

  it('can be taken up again after its start was undone, and then shows what it would have', () => {
    const box = device();
    const session = createBenchSession(box.page(), NO_RUN);
    session.press('mixing', BENCH_PLAN);
    box.pass(5000);
    session.undo();
    expect(session.shown().run.presses).toEqual([]);
    box.pass(5000);
    session.takeUp();
    expect(elapsed(session)).toBe(10_000);
    box.pass(1000);
    session.undo();
    box.pass(1000);
    const later = createBenchSession(box.page(), NO_RUN);
    later.takeUp();
    expect(elapsed(later)).toBe(12_000);
    box.pass(1000);
    later.undo();
    box.pass(1000);
    later.press('mixing', BENCH_PLAN);
    expect(elapsed(later)).toBe(0);
  });

  it('leaves nothing behind once the piece has it all and no clock runs', () => {
    const box = device();
    const session = createBenchSession(box.page(), NO_RUN);
    session.press('mixing', BENCH_PLAN);
    session.settled();
    expect(box.text()).not.toBeNull();
    box.pass(1000);
    session.undo();
    session.settled();
    expect(box.text()).not.toBeNull();
    for (const what of ['mixing', 'poured', 'plugged', 'open'] as const) {
      box.pass(1000);
      session.press(what, BENCH_PLAN);
    }
    session.settled();
    expect(box.text()).toBeNull();
  });

  it('is not led astray by a text that is none', () => {
    const box = device();
    const page = box.page();
    for (const text of ['{', '{"run":5}', '{"run":{"rev":9,"presses":[{"what":"open"}]}}']) {
      page.write(text);
      expect(createBenchSession(box.page(), NO_RUN).shown().run).toBe(NO_RUN);
    }
  });
});
