/*
 * A team of threads runs one task together: every member runs the same code over the same shared arrays and takes its share of
 * each stage. Between stages they meet. A team of one is plain code: it needs no shared memory and never waits.
 */

/** Places in the control words. */
const [ARRIVED, MEETING, STOPPED, JOINED, COUNTERS] = [0, 1, 2, 3, 8] as const;
const WORDS = 64;

/** Thrown in every member once one asked to stop, or failed. */
export class TeamStopped extends Error {
  constructor() {
    super('the team was stopped');
    this.name = 'TeamStopped';
  }
}

/** Thrown in the caller's thread when a helper that was sent the task has not begun it: it is gone, or was never sent it. */
export class HelperMissing extends Error {
  constructor() {
    super('a helping thread did not begin');
    this.name = 'HelperMissing';
  }
}

/** A helper that has not begun by then, ms, will not: it begins within milliseconds, and ends what it is at when that is stopped. Chosen here. */
const LATE_MS = 10_000;

export interface Member {
  id: number;
  size: number;
  /** Waits until every member is here. Throws TeamStopped when one stopped. */
  meet(): void;
  /** The next number of a common counter (0, 1, 2 …): work is handed out piece by piece. Throws TeamStopped. */
  take(counter: number, by?: number): number;
  /** Looks whether to stop, and lets the caller's thread tell its progress. Throws TeamStopped. */
  look(): void;
  /** This member's share of `total` equal pieces of work: [from, to). */
  share(total: number): readonly [number, number];
  /** Makes every member stop at its next meeting or take. */
  stop(): void;
}

export const newControl = (isShared: boolean): Int32Array =>
  new Int32Array(isShared ? new SharedArrayBuffer(4 * WORDS) : new ArrayBuffer(4 * WORDS));

/**
 * @param control shared by all members; plain memory will do for a team of one
 * @param onTake called by `take`, so that the caller's thread can tell its progress or look for a cancel
 */
export function joinTeam(
  control: Int32Array,
  id: number,
  size: number,
  onTake?: () => void,
  lateMs = LATE_MS,
): Member {
  const checkStopped = (): void => {
    if (Atomics.load(control, STOPPED) !== 0) throw new TeamStopped();
  };
  // Only the caller's thread can do it all again without the helper.
  const checkJoined = (sinceMs: number): void => {
    if (id !== 0 || Date.now() - sinceMs < lateMs || Atomics.load(control, JOINED) >= size) return;
    Atomics.store(control, STOPPED, 1);
    Atomics.notify(control, MEETING);
    throw new HelperMissing();
  };
  Atomics.add(control, JOINED, 1);
  const look = (): void => {
    onTake?.();
    checkStopped();
  };
  return {
    id,
    size,
    look,
    meet() {
      look();
      if (size === 1) return;
      const meeting = Atomics.load(control, MEETING);
      if (Atomics.add(control, ARRIVED, 1) === size - 1) {
        Atomics.store(control, ARRIVED, 0);
        Atomics.add(control, MEETING, 1);
        Atomics.notify(control, MEETING);
      } else {
        const sinceMs = Date.now();
        while (Atomics.load(control, MEETING) === meeting) {
          Atomics.wait(control, MEETING, meeting, 50);
          checkStopped();
          checkJoined(sinceMs);
        }
      }
      checkStopped();
    },
    take(counter, by = 1) {
      look();
      return Atomics.add(control, COUNTERS + counter, by);
    },
    share: (total) => [Math.floor((total * id) / size), Math.floor((total * (id + 1)) / size)],
    stop() {
      Atomics.store(control, STOPPED, 1);
      Atomics.notify(control, MEETING);
    },
  };
}
