import type { WeighState } from '../../job/weighState';
import { MarkShape } from '../parts/StatusMark';
import type { SlipAsk } from './slipAsks';

interface SlipQuestionProps {
  ask: SlipAsk;
  onAnswer: (state: WeighState) => void;
  /** Empties the box for another figure. */
  onAgain?: (() => void) | undefined;
}

/** Something odd, asked where it stands, with its readings as buttons. It can be written without an answer. */
export function SlipQuestion({
  ask: { words, picks, keep, isKept, slip },
  onAnswer,
  onAgain,
}: SlipQuestionProps) {
  return (
    <div className="slip" role="status">
      <p className="err">
        <MarkShape mark="look" />
        <span>
          {words.ask} {isKept && 'It stays as typed, and nothing is learned from it.'}
        </span>
      </p>
      {!isKept && (
        <>
          <div className="picks">
            {picks.map((pick) => (
              <button key={pick.words} type="button" className="act" onClick={() => onAnswer(pick.to)}>
                {pick.words}
              </button>
            ))}
            {slip.code === 'casting-over' && onAgain !== undefined && (
              <button type="button" className="act" onClick={onAgain}>
                Weigh it again
              </button>
            )}
            <button type="button" className="act" onClick={() => onAnswer(keep.to)}>
              {keep.words}
            </button>
          </div>
          <p className="note quiet">Written without an answer, it stays asked about in the Book.</p>
        </>
      )}
    </div>
  );
}
