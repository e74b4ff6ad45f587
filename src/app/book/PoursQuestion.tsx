import { useState } from 'react';
import { findingsOf, unreadFindings, type CheckedPour, type PourRow } from '../../job/book';
import { RULES } from '../../yield';
import { Complaint } from '../parts/Complaint';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { FIRST_WEIGH_BACK, poursAnswer } from '../words/bookPage';
import { askedOf } from './answers';
import { AskBox } from './AskBox';
import { BookTrouble } from './BookTrouble';
import { ChangePour } from './ChangePour';
import type { BookProps } from './bookProps';
import { countOfOld, PoursTable } from './PoursTable';
import { useBookChange } from './useBookChange';

/** What did we pour? */
export function PoursQuestion({ book, nav, undos, no }: BookProps) {
  const { pours, pieces, core, all, unread } = book;
  const { changeRow, ...trouble } = useBookChange();
  const [isWhole, setWhole] = useState(false);
  const stepG = core.scale?.stepG;
  const asks = pours.flatMap((pour) => asksOf(pour, all, stepG));
  const old = countOfOld(pours);
  const answered = (row: PourRow, change: Partial<PourRow>): void =>
    changeRow(row.id, (now) => ({ ...now, ...change }));
  return (
    <Question
      no={no}
      mark={pours.length === 0 ? 'open' : asks.length + unread.length > 0 ? 'look' : 'fine'}
      ask="What did we pour?"
      answer={<Verdict>{poursAnswer(pours.length, asks.length)}</Verdict>}
      because={pours.length === 0 ? FIRST_WEIGH_BACK : undefined}
    >
      {unreadFindings(unread).map((problem, n) => (
        <Complaint key={n} problem={problem} />
      ))}
      {pours.length > 0 && <PoursTable pours={pours} pieces={pieces} isWhole={isWhole} />}
      {old > 0 && (
        <p className="older">
          <button type="button" className="act" aria-expanded={isWhole} onClick={() => setWhole((is) => !is)}>
            {isWhole ? 'Show the last 4 pours alone' : `Show ${old} earlier pours`}
          </button>
        </p>
      )}
      {asks.map(({ finding, asked, row }, n) => (
        <AskBox
          key={`${row.id} ${asked.about} ${n}`}
          finding={finding}
          asked={asked}
          row={row}
          onAnswer={(change) => answered(row, change)}
        />
      ))}
      <BookTrouble {...trouble} />
      {pours.length > 0 && <ChangePour {...{ book, nav, undos }} />}
    </Question>
  );
}

function asksOf(pour: CheckedPour, all: readonly CheckedPour[], stepG: number | undefined) {
  const findings = findingsOf(pour, stepG);
  const isBalanceOff = findings.some(({ code }) => code === 'BOOK_BALANCE_OFF');
  const asked = askedOf(pour, all, { stepG: stepG ?? RULES.scaleStep.value, isBalanceOff });
  return findings.map((finding, n) => ({ finding, asked: asked[n]!, row: pour.row }));
}
