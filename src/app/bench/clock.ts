/** Two clocks of the device at one moment: the time of day, which can be set, and one that only runs, but may stand still while the device sleeps. */
export interface Reading {
  wallMs: number;
  monoMs: number;
}

/** What outlives the page: the clock as it was at a time of day. */
export interface Anchor {
  wallMs: number;
  elapsedMs: number;
  /** When the pour began, by the device's clock as it is set now. */
  beganMs: number;
  /** What nobody has settled yet. */
  doubts: readonly Doubt[];
}

/**
 * The time of day ran ahead of the running clock by so much: the device slept, or its clock was set. `taken`: which of them the
 * pour clock follows until somebody says which is right.
 */
export interface Doubt {
  aheadMs: number;
  taken: 'running' | 'day';
  /** Why: the page was hidden, or kept the screen awake, or neither, and then it has to be asked. */
  because: 'hidden' | 'awake' | 'cannot tell';
}

/** What is told and needs no answer. */
export type ClockNote =
  /** The device's clock was set back; this one runs on. */
  | { what: 'set back'; byMs: number }
  /** The page was not there; the time of day alone bridges that. */
  | { what: 'away'; byMs: number }
  /** The time of day is before the last that was noted: nobody can tell how long the page was away. */
  | { what: 'set back while away'; byMs: number };

/** The clock of a pour: how long ago A went in. */
export interface PourClock {
  at: Reading;
  elapsedMs: number;
  beganMs: number;
  doubts: readonly Doubt[];
  notes: readonly ClockNote[];
}

/** What is known of the time between two looks at the clock. */
export interface Meanwhile {
  wasHidden: boolean;
  /** The screen was kept awake all the while. */
  wasAwake: boolean;
}

/** Smaller steps are those of a clock that is kept right over a network. Chosen here. */
export const JUMP_MS = 2000;
/** Shorter than this it needs no word that the page was away. */
export const AWAY_MS = 60_000;

export const startedClock = (at: Reading): PourClock => ({
  at,
  elapsedMs: 0,
  beganMs: at.wallMs,
  doubts: [],
  notes: [],
});

/** After a reload or a crash: only the time of day knows how long that took. Set back meanwhile, it goes on from the anchor, and says so. */
export function resumedClock(anchor: Anchor, at: Reading): PourClock {
  const awayMs = at.wallMs - anchor.wallMs;
  const elapsedMs = anchor.elapsedMs + Math.max(0, awayMs);
  return {
    at,
    elapsedMs,
    beganMs: awayMs < 0 ? at.wallMs - elapsedMs : anchor.beganMs,
    doubts: anchor.doubts,
    notes:
      awayMs < 0
        ? [{ what: 'set back while away', byMs: -awayMs }]
        : awayMs > AWAY_MS
          ? [{ what: 'away', byMs: awayMs }]
          : [],
  };
}

/** The clock a while later. It follows the running clock of the device, whatever is done to the time of day; what cannot be told is a doubt. */
export function laterClock(clock: PourClock, at: Reading, meanwhile: Meanwhile): PourClock {
  const ranMs = Math.max(0, at.monoMs - clock.at.monoMs);
  const aheadMs = at.wallMs - clock.at.wallMs - ranMs;
  const later = { ...clock, at, elapsedMs: clock.elapsedMs + ranMs };
  if (Math.abs(aheadMs) < JUMP_MS) return later;
  if (aheadMs < 0)
    return {
      ...later,
      beganMs: clock.beganMs + aheadMs,
      notes: [...clock.notes, { what: 'set back', byMs: -aheadMs }],
    };
  const because = meanwhile.wasHidden ? 'hidden' : meanwhile.wasAwake ? 'awake' : 'cannot tell';
  const taken = because === 'hidden' ? 'day' : 'running';
  const doubts = [...clock.doubts, { aheadMs, taken, because } as const];
  return taken === 'day'
    ? { ...later, elapsedMs: later.elapsedMs + aheadMs, doubts }
    : { ...later, beganMs: clock.beganMs + aheadMs, doubts };
}

/** What the clock shows by either reading of its oldest doubt, ms. */
export function readingsOf(
  { elapsedMs }: PourClock,
  { aheadMs, taken }: Doubt,
): Record<Doubt['taken'], number> {
  return taken === 'running'
    ? { running: elapsedMs, day: elapsedMs + aheadMs }
    : { running: elapsedMs - aheadMs, day: elapsedMs };
}

/** The oldest doubt is settled: somebody has said which clock is right. */
export function settledClock(clock: PourClock, which: Doubt['taken']): PourClock {
  const [doubt, ...doubts] = clock.doubts;
  if (doubt === undefined) return clock;
  if (doubt.taken === which) return { ...clock, doubts };
  const byMs = which === 'day' ? doubt.aheadMs : -doubt.aheadMs;
  return { ...clock, elapsedMs: clock.elapsedMs + byMs, beganMs: clock.beganMs - byMs, doubts };
}

/** What is told was read. */
export const readClock = (clock: PourClock): PourClock => ({ ...clock, notes: [] });

export const anchorOf = ({ at, elapsedMs, beganMs, doubts }: PourClock): Anchor => ({
  wallMs: at.wallMs,
  elapsedMs,
  beganMs,
  doubts,
});
