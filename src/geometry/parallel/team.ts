/*
 * A team of threads runs one task together: every member runs the same code over the same shared arrays and takes its share of
 * each stage. Between stages they meet. A team of one is plain code: it needs no shared memory and never waits.
 */

/** Places in the control words. */
const [ARRIVED, MEETING, STOPPED, COUNTERS] = [0, 1, 2, 8] as const;
const WORDS = 64;

/** Thrown in every member once one asked to stop, or failed. */
export class TeamStopped extends Error {
  constructor() {
    super('the team was stopped');
    this.name = 'TeamStopped';
  }
}

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
export function joinTeam(control: Int32Array, id: number, size: number, onTake?: () => void): Member {
  const checkStopped = (): void => {
    if (Atomics.load(control, STOPPED) !== 0) throw new TeamStopped();
  };
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
        while (Atomics.load(control, MEETING) === meeting) {
          Atomics.wait(control, MEETING, meeting, 50);
          checkStopped();
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
