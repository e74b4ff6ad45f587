import { describe, expect, it } from 'vitest';
import type { BenchPlan } from '../../src/job/benchState';
import { cueBetween } from '../../src/app/bench/cues';
import {
  clockText,
  dayTime,
  leftWords,
  openAloud,
  pourAloud,
  pressWords,
  spokenTime,
  tookWords,
} from '../../src/words/benchWords';
import { BENCH_PLAN } from '../support/benchPlan';

const PLAN: BenchPlan = {
  ...BENCH_PLAN,
  pourBy: { s: 35, from: 'data-sheet' },
  rise: { s: 150, from: 'data-sheet' },
  open: { s: 1500, from: 'data-sheet' },
};

describe('moments that are told', () => {
  it.each([
    ['mix', 24, 25, 'pour soon'],
    ['mix', 25, 26, undefined],
    ['mix', 34, 35, 'pour by'],
    ['mix', 0, 0, undefined],
    ['mix', 149, 1600, undefined],
    ['poured', 34, 36, undefined],
    ['poured', 149, 150, 'rise'],
    ['wait', 149, 150, 'rise'],
    ['wait', 1499, 1500, 'open'],
    ['ready', 0, 2000, undefined],
    ['open', 0, 2000, undefined],
  ] as const)('in %s from %i to %i s: %s', (phase, fromS, toS, cue) => {
    expect(cueBetween(phase, PLAN, { fromS, toS })).toBe(cue);
  });

  it('are told once, the last of them, by a page that stood still', () => {
    expect(cueBetween('mix', PLAN, { fromS: 5, toS: 605 })).toBe('pour by');
    expect(cueBetween('wait', PLAN, { fromS: 60, toS: 4000 })).toBe('open');
  });

  it('are none without a plan', () => {
    for (const phase of ['mix', 'poured', 'wait'] as const)
      expect(cueBetween(phase, undefined, { fromS: 0, toS: 1e6 })).toBeUndefined();
  });
});

describe('words of the clock', () => {
  it('are spoken at 30 s, at 10 s and when it is over, and not between', () => {
    const said = Array.from({ length: 45 }, (_, n) => pourAloud(40 - n));
    expect([...new Set(said)]).toEqual([
      '',
      '30 seconds left to pour',
      '10 seconds left to pour',
      'The time to pour is over. Pour now.',
    ]);
    expect(said.indexOf('30 seconds left to pour')).toBe(10);
    expect([openAloud(31), openAloud(0)]).toEqual(['', 'It may be opened, if it is quiet and cool.']);
  });

  it('count what has begun, and leave what is left', () => {
    expect([0, 999, 23_400, 60_000, 3_800_000, -5].map(clockText)).toEqual([
      '0:00',
      '0:00',
      '0:23',
      '1:00',
      '1:03:20',
      '0:00',
    ]);
    expect([400, 59_001, 60_001, 899_000, 7_500_000].map(leftWords)).toEqual([
      '1 s',
      '1 min',
      '2 min',
      '15 min',
      '2 h 5 min',
    ]);
    expect([3_600_000.4, 300_000.2, 40_300].map(tookWords)).toEqual(['60 min', '5 min', '40 s']);
    expect([23_000, 61_000].map(spokenTime)).toEqual(['23 seconds', '1 minute 1 second']);
  });

  it('tell the time of day of the device in 24 hours', () => {
    const at = new Date(2026, 10, 30, 4, 6, 7).getTime();
    expect([dayTime(at), dayTime(at, { seconds: true })]).toEqual(['04:06', '04:06:07']);
  });

  it('name the press that closes the mold by what the plan says', () => {
    expect([pressWords('plugged', 'plug'), pressWords('plugged', 'open')]).toEqual([
      'Plugged',
      'Leave it to rise',
    ]);
  });
});
