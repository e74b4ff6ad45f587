import type { BenchPlan, PlannedTime } from '../../job/benchState';
import { dayTime, HANDS_OFF, OPEN_WORDS, riseWords } from '../../words/benchWords';
import { amount } from '../../words/sentence';

/** A line of what comes while it is waited for. */
export interface WaitLine {
  key: 'rise' | 'hands' | 'open' | 'free';
  when: string;
  words: string;
  time?: PlannedTime;
  isNow: boolean;
}

/** In the order of the work, at the times of day they are planned for; the rise has none where no card tells it. The one that holds now is marked. */
export function waitLines(plan: BenchPlan | undefined, beganMs: number, elapsedMs: number): WaitLine[] {
  const { rise, open, opening, coreC, freeFirst } = plan ?? {};
  const at = (time: PlannedTime | undefined): string =>
    time === undefined ? 'first' : dayTime(beganMs + 1000 * time.s);
  const isOpen = open !== undefined && elapsedMs >= 1000 * open.s;
  const core =
    coreC === undefined
      ? ''
      : ` Worked out, its core gets to ${amount(coreC.low, 2)} to ${amount(coreC.high, 2)} °C.`;
  return [
    { key: 'rise', when: at(rise), words: riseWords(opening), ...timed(rise), isNow: false },
    {
      key: 'hands',
      when: open === undefined ? 'until open' : `until ${at(open)}`,
      words: `${HANDS_OFF}${core}`,
      isNow: !isOpen,
    },
    {
      key: 'open',
      when: open === undefined ? 'then' : at(open),
      words: OPEN_WORDS,
      ...timed(open),
      isNow: isOpen,
    },
    ...(freeFirst === undefined
      ? []
      : [{ key: 'free', when: 'then', words: `${freeFirst}.`, isNow: false } as const]),
  ];
}

const timed = (time: PlannedTime | undefined): { time?: PlannedTime } => (time === undefined ? {} : { time });
