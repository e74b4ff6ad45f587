import { describe, expect, it } from 'vitest';
import { NO_RUN, PRESSES, type BenchRun, type PressName } from '../../src/job/benchState';
import {
  benchPhase,
  isBounce,
  isRunning,
  nextPress,
  planAtBench,
  pressed,
  takenUpAgain,
  withoutLast,
} from '../../src/app/bench/phase';
import { BENCH_PLAN } from '../support/benchPlan';

const press = (what: PressName, elapsedMs = 0) => ({ what, wallMs: 1_000_000 + elapsedMs, elapsedMs });
const upTo = (count: number): BenchRun =>
  PRESSES.slice(0, count).reduce((run, what, n) => pressed(run, press(what, 1000 * n), BENCH_PLAN), NO_RUN);

describe('the phase at the bench', () => {
  it.each([
    [0, 'ready', 'mixing', false],
    [1, 'mix', 'poured', true],
    [2, 'poured', 'plugged', true],
    [3, 'wait', 'open', true],
    [4, 'open', undefined, false],
  ] as const)('after %i presses is %s; next comes %s', (count, phase, next, running) => {
    expect(benchPhase(upTo(count))).toBe(phase);
    expect(nextPress(upTo(count))).toBe(next);
    expect(isRunning(upTo(count))).toBe(running);
    expect(upTo(count).rev).toBe(count);
  });

  it('a clock that was undone leaves nothing of its plan to what is poured without it', () => {
    const later = { ...BENCH_PLAN, packFactor: 1.4, totalG: 658 };
    expect(planAtBench(upTo(1), later)).toEqual(BENCH_PLAN);
    expect(planAtBench(upTo(4), undefined)).toEqual(BENCH_PLAN);
    const undone = withoutLast(upTo(1));
    expect(planAtBench(undone, later)).toEqual(later);
    expect(planAtBench(undone, undefined)).toBeUndefined();
    expect(planAtBench(takenUpAgain(undone), later)).toEqual(BENCH_PLAN);
  });

  it('is moved by the press that is due alone', () => {
    for (let count = 0; count <= 4; count += 1)
      for (const what of PRESSES) {
        const run = upTo(count);
        const after = pressed(run, press(what), BENCH_PLAN);
        if (what === PRESSES[count]) expect(benchPhase(after)).not.toBe(benchPhase(run));
        else expect(after).toBe(run);
      }
  });

  it('keeps the plan of the start, whatever comes later', () => {
    const other = { ...BENCH_PLAN, partAG: 1 };
    expect(pressed(upTo(1), press('poured'), other).plan).toBe(BENCH_PLAN);
    expect('plan' in pressed(NO_RUN, press('mixing'))).toBe(false);
  });

  it.each([4, 3, 2])('goes one back by an undo, from %i presses', (count) => {
    const back = withoutLast(upTo(count));
    expect(back.presses).toEqual(upTo(count - 1).presses);
    expect(back).toMatchObject({ rev: count + 1, plan: BENCH_PLAN });
    expect(back.undone).toBeUndefined();
  });

  it('lays the start aside when that is undone, and takes it up again as it was', () => {
    const back = withoutLast(upTo(1));
    expect(benchPhase(back)).toBe('ready');
    expect(back.undone).toEqual(press('mixing'));
    const again = takenUpAgain(back);
    expect(again).toEqual({ ...upTo(1), rev: 3 });
    expect(takenUpAgain(again)).toBe(again);
    const anew = pressed(back, press('mixing', 0), BENCH_PLAN);
    expect(anew.undone).toBeUndefined();
    expect(anew.rev).toBe(3);
    expect(withoutLast(NO_RUN)).toBe(NO_RUN);
  });

  it('takes a second press within 700 ms for a bounce', () => {
    expect([isBounce(undefined, 0), isBounce(0, 0), isBounce(0, 699), isBounce(0, 700)]).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });
});
