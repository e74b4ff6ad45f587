import { NO_RUN, type BenchPlan, type BenchRun, type PressName } from '../../job/benchState';
import { isSame } from '../../job/json';
import {
  anchorOf,
  laterClock,
  readClock,
  resumedClock,
  settledClock,
  startedClock,
  type Doubt,
  type PourClock,
  type Reading,
} from './clock';
import { anchorFor, localRunText, readLocalRun, type LocalRun } from './localRun';
import { isBounce, isRunning, nextPress, pressed, takenUpAgain, withoutLast } from './phase';

/** What a session needs of the browser: the two clocks, and one text that is kept at once. */
export interface BenchWorld {
  now(): Reading;
  read(): string | null;
  /** Throws where it cannot. */
  write(text: string): void;
  clear(): void;
}

/** What is to be seen of it. A new object whenever something in it is new, the clock by the second. */
export interface BenchShown {
  run: BenchRun;
  /** Undefined while no clock runs or could be taken up again. */
  clock: PourClock | undefined;
  /** The last press was kept at once, and survives a crash. */
  isLocal: boolean;
}

/** One pour at the bench, as one page sees it. It outlives the screen: on another one the clock goes on. */
export interface BenchSession {
  subscribe: (told: () => void) => () => void;
  shown: () => BenchShown;
  /** Does nothing where another press is due, or as a bounce of the last. */
  press: (what: PressName, plan?: BenchPlan) => void;
  undo: () => void;
  takeUp: () => void;
  settle: (which: Doubt['taken']) => void;
  readNotes: () => void;
  /** Looks at the clocks. To be called a few times a second. */
  tick: () => void;
  /** Another page has pressed something. */
  sync: () => void;
  /** What the piece has kept: taken where it is newer. */
  hear: (run: BenchRun) => void;
  /** The piece has all of it, and no clock runs: nothing has to be kept beside it. */
  settled: () => void;
  /** Everything of this device was forgotten: nothing ran. */
  forget: () => void;
  /** The page went out of view, or came back: what passed meanwhile may have been a sleep. */
  hidden: (is: boolean) => void;
  awake: (is: boolean) => void;
}

/** So often the clock is noted for a page that comes after this one. Chosen here. */
const NOTED_MS = 2000;

export function createBenchSession(world: BenchWorld, kept: BenchRun): BenchSession {
  const listeners = new Set<() => void>();
  const stored = readLocalRun(world.read());
  const first: LocalRun = stored !== undefined && stored.run.rev >= kept.rev ? stored : { run: kept };
  let run = first.run;
  let clock = clockOf(first, world.now());
  let isLocal = true;
  let shown: BenchShown = { run, clock, isLocal };
  let isHidden = false;
  let isAwake = false;
  let wasAwake = false;
  let pressedAtMs: number | undefined;
  let notedAtMs = -Infinity;

  function show(): void {
    const next = { run, clock, isLocal };
    if (isSameShown(shown, next)) return;
    shown = next;
    for (const told of listeners) told();
  }

  function note(): void {
    notedAtMs = world.now().monoMs;
    try {
      world.write(localRunText({ run, ...(clock === undefined ? {} : { anchor: anchorOf(clock) }) }));
      isLocal = true;
    } catch {
      isLocal = false;
    }
  }

  function sync(): void {
    const theirs = readLocalRun(world.read());
    if (theirs === undefined || theirs.run.rev < run.rev || isSame(theirs.run, run)) return;
    run = theirs.run;
    clock = clockOf(theirs, world.now());
    show();
  }

  function look(): void {
    if (clock === undefined) return;
    clock = laterClock(clock, world.now(), { wasHidden: isHidden, wasAwake: wasAwake && isAwake });
    wasAwake = isAwake;
  }

  /** What was said with a finger: the clock as of now, and kept before anything else is done. */
  function act(how: () => BenchRun): void {
    const { monoMs } = world.now();
    if (isBounce(pressedAtMs, monoMs)) return;
    const { rev } = run;
    sync();
    // Another page was faster: what this press was meant for is over.
    if (run.rev !== rev) return;
    look();
    const next = how();
    if (next === run) return;
    pressedAtMs = monoMs;
    run = next;
    if (run.presses.length === 0 && run.undone === undefined) clock = undefined;
    note();
    show();
  }

  function tick(): void {
    if (clock === undefined) return;
    look();
    if (hasToBeNoted(run) && world.now().monoMs - notedAtMs >= NOTED_MS) {
      sync();
      note();
    }
    show();
  }

  return {
    subscribe(told) {
      listeners.add(told);
      return () => listeners.delete(told);
    },
    shown: () => shown,
    press: (what, plan) =>
      act(() => {
        if (what !== nextPress(run)) return run;
        const at = world.now();
        if (what === 'mixing') clock = startedClock(at);
        return pressed(run, { what, wallMs: at.wallMs, elapsedMs: clock?.elapsedMs ?? 0 }, plan);
      }),
    undo: () => act(() => withoutLast(run)),
    takeUp: () => act(() => takenUpAgain(run)),
    settle: (which) =>
      act(() => {
        if (clock === undefined || clock.doubts.length === 0) return run;
        clock = settledClock(clock, which);
        return { ...run, rev: run.rev + 1 };
      }),
    readNotes() {
      if (clock !== undefined) clock = readClock(clock);
      show();
    },
    tick,
    sync,
    hear(theirs) {
      // What another page has pressed stands here before it is in the store, and with its clock.
      sync();
      if (theirs.rev <= run.rev) return;
      run = theirs;
      clock = clockOf({ run }, world.now());
      show();
    },
    settled() {
      if (!hasToBeNoted(run)) world.clear();
    },
    forget() {
      run = NO_RUN;
      clock = undefined;
      world.clear();
      show();
    },
    hidden(is) {
      // Coming back, the time until now was still spent out of view.
      tick();
      isHidden = is;
    },
    awake: (is) => void (isAwake = is),
  };
}

/** A clock that runs, or could be taken up again. */
const hasToBeNoted = (run: BenchRun): boolean => isRunning(run) || run.undone !== undefined;

function clockOf(local: LocalRun, at: Reading): PourClock | undefined {
  const anchor = anchorFor(local);
  const { presses, undone } = local.run;
  return anchor === undefined || (presses.length === 0 && undone === undefined)
    ? undefined
    : resumedClock(anchor, at);
}

/** By the second: what is shown of a clock has no finer figure. */
const isSameShown = (one: BenchShown, other: BenchShown): boolean =>
  one.run === other.run &&
  one.isLocal === other.isLocal &&
  Math.floor((one.clock?.elapsedMs ?? -1) / 1000) === Math.floor((other.clock?.elapsedMs ?? -1) / 1000) &&
  one.clock?.beganMs === other.clock?.beganMs &&
  one.clock?.doubts === other.clock?.doubts &&
  one.clock?.notes === other.clock?.notes;
