import type { BenchRun } from '../../job/benchState';
import { updateGate } from '../offline/updateGate';
import { createBenchSession, type BenchSession, type BenchWorld } from './benchSession';
import { forgetRuns } from './localRun';
import { isRunning } from './phase';

/** A few times a second: a second is seen as it begins. */
const LOOK_MS = 200;

/** Sessions of this page by their key. They outlive the screen: on another one the clock goes on, by the same clock of the device. */
const sessions = new Map<string, BenchSession>();

export function sessionOf(key: string, kept: BenchRun): BenchSession {
  const known = sessions.get(key);
  if (known !== undefined) return known;
  const session = createBenchSession(worldOf(key), kept);
  sessions.set(key, session);
  addEventListener('storage', (event) => {
    if (event.key === key) session.sync();
  });
  // Frozen or put aside, a page is hidden too.
  for (const over of ['visibilitychange', 'freeze', 'resume'] as const)
    document.addEventListener(over, () =>
      session.hidden(over === 'freeze' || document.visibilityState === 'hidden'),
    );
  tickWhileItRuns(session);
  holdUpdatesOf(session);
  return session;
}

/** No clock of any pour runs on, here or after a reload: all of this device was forgotten. */
export function forgetSessions(): void {
  try {
    forgetRuns(localStorage);
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
  for (const session of sessions.values()) session.forget();
}

/** Of a clock that was never started, or is over, nothing is looked at. */
function tickWhileItRuns(session: BenchSession): void {
  let timer: ReturnType<typeof setInterval> | undefined;
  const look = (): void => {
    if (session.shown().clock !== undefined) timer ??= setInterval(session.tick, LOOK_MS);
    else {
      clearInterval(timer);
      timer = undefined;
    }
  };
  session.subscribe(look);
  look();
}

/** No update starts the page anew while the clock runs, on whatever screen. */
function holdUpdatesOf(session: BenchSession): void {
  let release: (() => void) | undefined;
  const look = (): void => {
    const is = isRunning(session.shown().run);
    if (is) release ??= updateGate.hold('A pour clock is running.');
    else {
      release?.();
      release = undefined;
    }
  };
  session.subscribe(look);
  look();
}

const worldOf = (key: string): BenchWorld => ({
  now: () => ({ wallMs: Date.now(), monoMs: performance.now() }),
  read: () => textAt(key),
  write: (text) => localStorage.setItem(key, text),
  clear: () => {
    try {
      localStorage.removeItem(key);
    } catch {
      // As above.
    }
  },
});

/** A browser that keeps nothing has nothing. */
function textAt(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}
