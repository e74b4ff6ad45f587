import type { BenchPlan } from '../../job/benchState';
import { clockText, dayTime, leftWords, openAloud, spokenTime, tookWords } from '../../words/benchWords';
import { pourCautions } from '../../words/cautions';
import { CautionList } from '../parts/CautionList';
import type { PourClock } from './clock';
import { Counting } from './Mixing';
import { TimeSource } from './TimeSource';
import { TimeStrip } from './TimeStrip';
import { waitLines } from './waitLines';

/** Until when, by the clock on the wall; what comes meanwhile; and what hurts whoever opens too early. */
export function Waiting({ clock, plan }: { clock: PourClock; plan: BenchPlan | undefined }) {
  const { elapsedMs, beganMs } = clock;
  return (
    <>
      {plan?.open === undefined ? (
        <>
          <h1 tabIndex={-1}>Wait</h1>
          <Counting elapsedMs={elapsedMs} />
          <p className="why">When it may be opened is not known: the data sheet says it.</p>
        </>
      ) : (
        <UntilOpen clock={clock} open={plan.open} />
      )}
      <ol className="nextup">
        {waitLines(plan, beganMs, elapsedMs).map(({ key, when, words, time, isNow }) => (
          <li key={key} className={isNow ? 'now' : undefined}>
            <span className="t">{when}</span>
            <span>
              {isNow && 'Now. '}
              {words} {key === 'rise' && time !== undefined && <TimeSource time={time} />}
            </span>
          </li>
        ))}
      </ol>
      <CautionList
        of="opening and leftover"
        cautions={pourCautions([]).filter(({ key }) => key === 'opening' || key === 'leftover')}
      />
    </>
  );
}

type Open = NonNullable<BenchPlan['open']>;

function UntilOpen({ clock: { elapsedMs, beganMs }, open }: { clock: PourClock; open: Open }) {
  const openMs = 1000 * open.s;
  const leftMs = openMs - elapsedMs;
  const at = dayTime(beganMs + openMs);
  return (
    <>
      <h1 tabIndex={-1}>{leftMs > 0 ? 'Wait until' : 'It may be opened, since'}</h1>
      <p className="clock wall" role="timer" aria-label={`Open at ${at}`}>
        {at}
      </p>
      <TimeStrip
        gone={elapsedMs / openMs}
        words={`${spokenTime(elapsedMs)} gone of ${tookWords(openMs)}`}
        marks={[
          { at: dayTime(beganMs), words: 'mixed', share: 0 },
          { at, words: 'open', share: 1 },
        ]}
      />
      <div className="by">
        <span>{leftMs > 0 ? 'Still to wait' : 'Since mixing began'}</span>
        <b>{leftMs > 0 ? leftWords(leftMs) : clockText(elapsedMs)}</b>
        <span>
          <TimeSource time={open} />
        </span>
        <span />
      </div>
      {open.earliestS !== undefined && (
        <p className="why">
          The foam’s own time is not known. Warm castings are opened from{' '}
          {dayTime(beganMs + 1000 * open.earliestS)} on at the earliest; this waits for the end of that range.
        </p>
      )}
      <p className="sr" role="status">
        {openAloud(Math.ceil(leftMs / 1000))}
      </p>
    </>
  );
}
