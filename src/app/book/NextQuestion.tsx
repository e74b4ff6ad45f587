import type { LearnedBook, PourRow } from '../../job/book';
import type { Piece } from '../../job/piece';
import { goodOnlyWords, movedTogetherWords, nextPourWords, samePackWords } from '../../words/bookWords';
import { LEARN_RULES, type OneChange } from '../../yield';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import type { Mark } from '../parts/StatusMark';
import { cannotTell } from '../words/bookLearned';
import { ASK_BUTTONS, fromPoursWords, headline, outcomes } from '../words/bookNext';
import { baseOf } from './baseOf';
import type { BookProps } from './bookProps';
import { planNext } from './planNext';
import { pieceOf } from './rowsById';
import { SkinPlot } from './SkinPlot';
import type { LearnedNow } from './useLearned';

interface NextQuestionProps extends BookProps {
  now: LearnedNow;
  onPlan: (id: string, how: (piece: Piece) => Piece) => void;
  onAnswer: (ask: keyof typeof ASK_BUTTONS) => void;
}

/** What do we change next? One thing, from one pour. */
export function NextQuestion({ book, no, now, onPlan, onAnswer }: NextQuestionProps) {
  const learned = now.state === 'answered' ? now.learned : undefined;
  const change = learned?.next?.change;
  const base = learned === undefined ? undefined : baseOf(learned, change);
  return (
    <Question
      no={no}
      mark={markOf(learned)}
      ask="What do we change next?"
      busy={now.state === 'working'}
      answer={<Verdict>{learned === undefined ? 'working out …' : answerOf(learned, base)}</Verdict>}
    >
      {learned !== undefined && learned.pours.length > 0 && (
        <>
          <Why learned={learned} />
          <div className="nextpour">
            <SkinPlot learned={learned} isAll={book.piece === undefined} />
            <div>
              {change !== undefined && <Outcomes change={change} />}
              <div className="chg">
                {(learned.next?.asks ?? []).map((ask) =>
                  ask === 'mold-warmth' ? null : (
                    <button key={ask} type="button" className="act" onClick={() => onAnswer(ask)}>
                      {ASK_BUTTONS[ask]}
                    </button>
                  ),
                )}
                {change !== undefined && <Plan {...{ book, change, base, onPlan }} />}
              </div>
            </div>
          </div>
        </>
      )}
    </Question>
  );
}

function markOf(learned: LearnedBook | undefined): Mark {
  if (learned?.next === undefined) return 'open';
  const { change, asks } = learned.next;
  return change !== undefined || asks.length > 0 ? 'look' : 'open';
}

function answerOf({ next, confounding }: LearnedBook, base: PourRow | undefined): string {
  if (next?.change !== undefined) return headline(next.change, base);
  if (next !== undefined && next.asks.length > 0) return 'First a question';
  return confounding.verdict === 'too-few'
    ? cannotTell(confounding.pours, LEARN_RULES.leastPours.value, 'pour')
    : 'Nothing: the log shows no change worth a pour';
}

/** What moved together, what every good casting had, and the change in full with its effect and where it comes from. */
function Why({ learned }: { learned: LearnedBook }) {
  const { confounding, next } = learned;
  const { goodOnlyWith, samePack } = confounding;
  const change = next?.change;
  return (
    <div className="whys">
      {movedTogetherWords(confounding).map((text) => (
        <p key={text} className="why">
          {text}
        </p>
      ))}
      {goodOnlyWith !== undefined && <p className="why">{goodOnlyWords(goodOnlyWith, 'both')}</p>}
      {samePack.map((pair) => (
        <p key={`${pair.good} ${pair.bad}`} className="why">
          {samePackWords(pair)}
        </p>
      ))}
      {next !== undefined &&
        nextPourWords(next, 'both').map((text) => (
          <p key={text} className="why">
            <b>{text}</b>
          </p>
        ))}
      {change !== undefined && <p className="note">{fromPoursWords(change)}</p>}
    </div>
  );
}

const Outcomes = ({ change }: { change: OneChange }) => (
  <dl className="outcomes">
    {outcomes(change).map(({ if: when, then }) => (
      <div key={when}>
        <dt>{when}</dt>
        <dd>{then}</dd>
      </div>
    ))}
  </dl>
);

/** For the piece of the page, else for that of the pour it starts from. */
function Plan({
  book: { piece, pieces },
  change,
  base,
  onPlan,
}: {
  change: OneChange;
  base: PourRow | undefined;
} & Pick<NextQuestionProps, 'book' | 'onPlan'>) {
  const of = piece ?? (base?.piece === undefined ? undefined : pieceOf(base.piece, pieces));
  if (of === undefined)
    return (
      <p className="note">
        It cannot be planned here: the piece of pour {change.basePour} is not on the Shelf.
      </p>
    );
  return (
    <button type="button" className="btn" onClick={() => onPlan(of.id, (now) => planNext(now, change, base))}>
      Plan this pour{piece === undefined && `: ${of.name}`}
    </button>
  );
}
