import { describe, expect, it } from 'vitest';
import {
  anchorOf,
  laterClock,
  readingsOf,
  resumedClock,
  settledClock,
  startedClock,
  type Meanwhile,
  type PourClock,
  type Reading,
} from '../../src/app/bench/clock';

const MIN = 60_000;
const HOUR = 60 * MIN;
const AT: Reading = { wallMs: Date.UTC(2026, 10, 30, 14, 6, 37), monoMs: 5000 };
const seen: Meanwhile = { wasHidden: false, wasAwake: false };

/** Both clocks of the device later; `set`: the time of day was moved by so much on top. */
const after = ({ at }: PourClock, ms: number, set = 0): Reading => ({
  wallMs: at.wallMs + ms + set,
  monoMs: at.monoMs + ms,
});
/** The device slept: the running clock stood still. */
const slept = ({ at }: PourClock, ms: number): Reading => ({ wallMs: at.wallMs + ms, monoMs: at.monoMs });

describe('the pour clock, while the page is there', () => {
  const started = startedClock(AT);

  it('follows the running clock', () => {
    const later = laterClock(started, after(started, 23_400), seen);
    expect(later.elapsedMs).toBe(23_400);
    expect(later.beganMs).toBe(AT.wallMs);
  });

  it('is right at once after the page was frozen for ten minutes', () => {
    const later = laterClock(started, after(started, 10 * MIN), { ...seen, wasHidden: true });
    expect(later).toMatchObject({ elapsedMs: 10 * MIN, doubts: [], notes: [] });
  });

  it('does not change when a network sets the time of day right by a second', () => {
    const later = laterClock(started, after(started, 1000, -1500), seen);
    expect(later).toMatchObject({ elapsedMs: 1000, notes: [], doubts: [] });
  });

  it('runs on when the device’s clock is set back by an hour, says so, and tells times of day by the clock as it is now', () => {
    const later = laterClock(started, after(started, 1000, -HOUR), { wasHidden: true, wasAwake: true });
    expect(later.elapsedMs).toBe(1000);
    expect(later.beganMs).toBe(AT.wallMs - HOUR);
    expect(later.notes).toEqual([{ what: 'set back', byMs: HOUR }]);
    expect(later.doubts).toEqual([]);
  });

  it('takes the time of day where the page was hidden and the running clock stood still, and leaves the other to be taken', () => {
    const later = laterClock(started, slept(started, 12 * MIN), { ...seen, wasHidden: true });
    expect(later.elapsedMs).toBe(12 * MIN);
    expect(later.beganMs).toBe(AT.wallMs);
    expect(later.doubts).toEqual([{ aheadMs: 12 * MIN, taken: 'day', because: 'hidden' }]);
    expect(readingsOf(later, later.doubts[0]!)).toEqual({ running: 0, day: 12 * MIN });
    const set = settledClock(later, 'running');
    expect(set).toMatchObject({ elapsedMs: 0, beganMs: AT.wallMs + 12 * MIN, doubts: [] });
    expect(settledClock(later, 'day')).toMatchObject({ elapsedMs: 12 * MIN, beganMs: AT.wallMs, doubts: [] });
  });

  it('cannot tell a sleep from a clock that was set where the page was in view: it shows the running clock and asks', () => {
    const later = laterClock(started, after(started, 2000, HOUR), seen);
    expect(later.elapsedMs).toBe(2000);
    expect(later.doubts).toEqual([{ aheadMs: HOUR, taken: 'running', because: 'cannot tell' }]);
    expect(readingsOf(later, later.doubts[0]!)).toEqual({ running: 2000, day: 2000 + HOUR });
    expect(settledClock(later, 'day')).toMatchObject({
      elapsedMs: 2000 + HOUR,
      beganMs: AT.wallMs,
      doubts: [],
    });
    expect(settledClock(later, 'running')).toMatchObject({ elapsedMs: 2000, beganMs: AT.wallMs + HOUR });
  });

  it('with the screen kept awake takes it that the clock was set', () => {
    const later = laterClock(started, after(started, 2000, HOUR), { wasHidden: false, wasAwake: true });
    expect(later).toMatchObject({ elapsedMs: 2000, doubts: [{ taken: 'running', because: 'awake' }] });
  });

  it('keeps every doubt until it is settled, the oldest first', () => {
    const one = laterClock(started, after(started, 1000, HOUR), seen);
    const two = laterClock(one, slept(one, 5 * MIN), { ...seen, wasHidden: true });
    expect(two.doubts).toHaveLength(2);
    expect(two.elapsedMs).toBe(1000 + 5 * MIN);
    const settled = settledClock(settledClock(two, 'running'), 'running');
    expect(settled).toMatchObject({ elapsedMs: 1000, doubts: [] });
    expect(settledClock(settled, 'day')).toBe(settled);
  });

  it('never runs back with a running clock that does', () => {
    const later = laterClock(started, { wallMs: AT.wallMs, monoMs: AT.monoMs - 50 }, seen);
    expect(later.elapsedMs).toBe(0);
  });
});

describe('the pour clock, after the page was gone', () => {
  const before = laterClock(startedClock(AT), after(startedClock(AT), 20_000), seen);
  const anchor = anchorOf(before);
  /** A new page begins its running clock anew. */
  const newPage = (wallMs: number): Reading => ({ wallMs, monoMs: 12 });

  it('goes on by the time of day', () => {
    const resumed = resumedClock(anchor, newPage(before.at.wallMs + 3000));
    expect(resumed).toMatchObject({ elapsedMs: 23_000, beganMs: AT.wallMs, notes: [], doubts: [] });
    expect(laterClock(resumed, after(resumed, 1000), seen).elapsedMs).toBe(24_000);
  });

  it('says how long the page was away where that is more than a minute', () => {
    expect(resumedClock(anchor, newPage(before.at.wallMs + 8 * MIN))).toMatchObject({
      elapsedMs: 20_000 + 8 * MIN,
      notes: [{ what: 'away', byMs: 8 * MIN }],
    });
  });

  it('goes on from where it was noted where the clock was set back meanwhile, and says so', () => {
    const resumed = resumedClock(anchor, newPage(before.at.wallMs - HOUR));
    expect(resumed).toMatchObject({
      elapsedMs: 20_000,
      notes: [{ what: 'set back while away', byMs: HOUR }],
    });
    expect(resumed.beganMs).toBe(before.at.wallMs - HOUR - 20_000);
  });

  it('is not moved by a clock that was set while the page was still there', () => {
    const set = laterClock(before, after(before, 200, -HOUR), seen);
    expect(resumedClock(anchorOf(set), newPage(set.at.wallMs + 500)).elapsedMs).toBe(20_700);
  });

  it('still asks what nobody has settled', () => {
    const doubted = laterClock(before, after(before, 200, HOUR), seen);
    const resumed = resumedClock(anchorOf(doubted), newPage(doubted.at.wallMs + 300));
    expect(resumed.doubts).toEqual(doubted.doubts);
    expect(settledClock(resumed, 'day').elapsedMs).toBe(20_500 + HOUR);
  });
});
