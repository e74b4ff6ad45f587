import type { BenchPlan } from '../../job/benchState';
import {
  clockText,
  leftWords,
  tookWords,
  MIX_UNTIMED,
  mixWords,
  pourAloud,
  scaleWords,
  spokenTime,
} from '../../words/benchWords';
import { Letter } from '../parts/Letter';
import type { PourClock } from './clock';
import { TimeSource } from './TimeSource';
import { TimeStrip } from './TimeStrip';

/** The strip goes on past the end of the time to pour, so that a late pour is seen. Chosen here. */
const STRIP_TIMES = 1.5;

/** It counts up; below, the time to pour by with its source, and what the hands do. */
export function Mixing({ clock: { elapsedMs }, plan }: { clock: PourClock; plan: BenchPlan | undefined }) {
  const pourBy = plan?.pourBy;
  const leftMs = pourBy === undefined ? 0 : 1000 * pourBy.s - elapsedMs;
  return (
    <>
      <h1 tabIndex={-1}>Mixing</h1>
      <Counting elapsedMs={elapsedMs} />
      {pourBy === undefined ? (
        <p className="why">{MIX_UNTIMED}</p>
      ) : (
        <>
          <MixStrip elapsedMs={elapsedMs} byMs={1000 * pourBy.s} />
          <div className="by">
            <span>Pour by</span>
            <b>{clockText(1000 * pourBy.s)}</b>
            <span>
              <TimeSource time={pourBy} />
            </span>
            <span className="left">
              {leftMs > 0 ? `${leftWords(leftMs)} left` : `over by ${tookWords(-leftMs)}: pour now`}
            </span>
          </div>
        </>
      )}
      {plan !== undefined && (
        <p className="scale">
          <Letter of="A" /> until the scale reads {scaleWords(plan)}.
        </p>
      )}
      <p className="why lead">{mixWords(plan?.cups ?? 1)}</p>
      <p className="sr" role="status">
        {pourBy === undefined ? '' : pourAloud(Math.ceil(leftMs / 1000))}
      </p>
    </>
  );
}

/** The large figure. Not spoken by itself: only the moments that matter are. */
export const Counting = ({ elapsedMs }: { elapsedMs: number }) => (
  <p className="clock" role="timer" aria-label={`${spokenTime(elapsedMs)} since mixing began`}>
    {clockText(elapsedMs)}
  </p>
);

function MixStrip({ elapsedMs, byMs }: { elapsedMs: number; byMs: number }) {
  const allMs = STRIP_TIMES * byMs;
  if (allMs <= 0) return null;
  return (
    <TimeStrip
      gone={elapsedMs / allMs}
      words={`${spokenTime(elapsedMs)} gone of ${spokenTime(byMs)} to pour`}
      marks={[
        { at: clockText(0), words: 'start', share: 0 },
        { at: clockText(byMs), words: 'pour by', share: 1 / STRIP_TIMES },
        { at: clockText(allMs), words: '', share: 1 },
      ]}
    />
  );
}
