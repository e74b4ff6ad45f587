import type { BenchRun } from '../../job/benchState';
import { clockText, dayTime } from '../../words/benchWords';
import type { BenchSession } from './benchSession';

/** Nobody takes up a clock that was undone longer ago. Chosen here. */
const OFFERED_MS = 6 * 3600 * 1000;

/** A clock that was undone, by mistake perhaps: it can go on from where it began. */
export function UndoneClock({ run, session }: { run: BenchRun; session: BenchSession }) {
  const { clock } = session.shown();
  if (run.undone === undefined || clock === undefined || clock.elapsedMs > OFFERED_MS) return null;
  return (
    <p className="said">
      <span>
        The clock that began at {dayTime(clock.beganMs, { seconds: true })} was undone; it would show{' '}
        {clockText(clock.elapsedMs)}.{' '}
        <button type="button" className="act" onClick={session.takeUp}>
          Go on with it
        </button>
      </span>
    </p>
  );
}
