import { useState } from 'react';
import { counted } from '../../words/sentence';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { worstMark } from '../words/statuses';
import { localDay } from '../ticket/localDay';
import type { BookProps } from './bookProps';
import { CupForm } from './CupForm';
import { FillForm } from './FillForm';
import { FillsTable } from './FillsTable';
import { LotsTable } from './LotsTable';
import { lotRows } from './lotRows';

/** How do the lots behave? Cup tests, and water fills beside them. */
export function LotsQuestion({ book, undos, no }: BookProps) {
  const { rows, core, piece, pours } = book;
  const [isOpen, setOpen] = useState<'cup' | 'fill'>();
  const foams = piece === undefined ? undefined : [...new Set(pours.flatMap(({ row }) => row.foam ?? []))];
  const lots = lotRows(rows, core, foams?.length === 0 ? undefined : foams, localDay(new Date()));
  const cups = lots.filter(({ id }) => !id.startsWith('stock ')).length;
  const toggle = (form: 'cup' | 'fill'): void => setOpen((now) => (now === form ? undefined : form));
  return (
    <Question
      no={no}
      mark={worstMark(lots.map(({ mark }) => mark))}
      ask="How do the lots behave?"
      answer={<Verdict>{cups === 0 ? 'No cup test yet' : `${counted(cups, 'cup test')}`}</Verdict>}
      because={
        cups === 0
          ? 'A cup of foam, trimmed level and weighed, tells how far this lot rises today. A full mold never can.'
          : undefined
      }
    >
      {lots.length > 0 && <LotsTable lots={lots} undos={undos} />}
      <div className="chg">
        <button type="button" className="act" aria-expanded={isOpen === 'cup'} onClick={() => toggle('cup')}>
          Write down a cup test
        </button>
        <button
          type="button"
          className="act"
          aria-expanded={isOpen === 'fill'}
          onClick={() => toggle('fill')}
        >
          Write down a water fill
        </button>
      </div>
      {isOpen === 'cup' && <CupForm book={book} onDone={() => setOpen(undefined)} />}
      {isOpen === 'fill' && <FillForm book={book} onDone={() => setOpen(undefined)} />}
      <FillsTable book={book} undos={undos} />
    </Question>
  );
}
