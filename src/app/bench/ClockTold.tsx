import { doubtWords, noteWords, readingWords } from '../../words/benchWords';
import { MarkShape } from '../parts/StatusMark';
import type { BenchSession } from './benchSession';
import { readingsOf, type PourClock } from './clock';

interface ClockToldProps {
  session: BenchSession;
  clock: PourClock | undefined;
  isLocal: boolean;
  /** What of the bench this version cannot read. */
  unread: readonly string[];
}

/** What happened to the clocks of the device, and which reading is meant where that cannot be told. Nothing is chosen in silence. */
export function ClockTold({ session, clock, isLocal, unread }: ClockToldProps) {
  const doubt = clock?.doubts[0];
  const readings = clock === undefined || doubt === undefined ? undefined : readingsOf(clock, doubt);
  const lines = [
    ...(clock?.notes ?? []).map(noteWords),
    ...(isLocal ? [] : ['This browser keeps no press at once: after a crash the last ones may be missing.']),
    ...(unread.length === 0
      ? []
      : [`Of what was done at the bench this version cannot read: ${unread.join(', ')}.`]),
  ];
  return (
    <div className="clocktold">
      <div role="status">
        {lines.map((line) => (
          <Told key={line} line={line} />
        ))}
        {doubt !== undefined && <Told line={doubtWords(doubt.because, doubt.aheadMs)} />}
      </div>
      {clock !== undefined && clock.notes.length > 0 && (
        <button type="button" className="act" onClick={session.readNotes}>
          Fold away
        </button>
      )}
      {readings !== undefined && (
        // Beside what is read out: their figures change every second.
        <div className="readings">
          {(['running', 'day'] as const).map((which) => (
            <button key={which} type="button" className="btn line" onClick={() => session.settle(which)}>
              {readingWords(which, readings[which])}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}

const Told = ({ line }: { line: string }) => (
  <p>
    <MarkShape mark="look" />
    <span>{line}</span>
  </p>
);
