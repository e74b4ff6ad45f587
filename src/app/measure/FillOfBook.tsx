import { useState } from 'react';
import { newRow, readBook, withRows } from '../../job/book';
import type { Piece } from '../../job/piece';
import { formatMass, formatTemperature } from '../../units';
import { storeProblem } from '../../store';
import type { Problem } from '../../problem';
import { Complaint } from '../parts/Complaint';
import { useShop } from '../shop/shopContext';
import { isCloseTo } from '../ticket/isCloseTo';
import { fillNow } from '../ticket/now';
import { valueIn } from '../ticket/readField';
import type { FillOfBook as Fill } from '../ticket/sizingState';
import type { Ticket } from '../ticket/state';
import { lastFill, type FillInBook } from './lastFill';
import type { WayProps } from './wayProps';

/** The last water fill that the shop's book has of this mold, to be taken with one press; one that it has not, to be written there. */
export function FillOfBook({ ticket, dispatch, piece }: WayProps) {
  const { view } = useShop();
  const row = lastFill(readBook(view?.core.book).rows, piece);
  const typed = typedFill(ticket);
  if (row !== undefined && typed !== undefined && isSameFill(row.fill, typed))
    return <p className="why">This fill stands in the Book{row.day === undefined ? '' : `, ${row.day}`}.</p>;
  return (
    <>
      {row !== undefined && (
        <>
          <p className="why">The Book has a water fill of this mold: {fillWords(row)}.</p>
          <div className="chg">
            <button
              type="button"
              className="act"
              onClick={() => dispatch({ do: 'takeFill', fill: row.fill })}
            >
              Take the water fill of the Book
            </button>
          </div>
        </>
      )}
      {typed !== undefined && <WriteFill {...{ typed, piece, day: ticket.today }} />}
    </>
  );
}

/** So that every later pour of this mold is learned from against its true cavity. */
function WriteFill({ typed, piece, day }: { typed: Fill; piece: Piece; day: string }) {
  const { store } = useShop();
  const [problem, setProblem] = useState<Problem>();
  const write = (): void => {
    setProblem(undefined);
    store
      .changeCore((core) => {
        const draft = { kind: 'fill' as const, day, piece: piece.id, mold: piece.hand.mold, ...typed };
        const { rows } = readBook(core.book);
        const row = newRow(draft, rows);
        if (rows.some(({ id }) => id === row.id)) return core;
        const written = withRows(core.book, [row]);
        if (!written.ok) {
          setProblem(written.problem);
          return core;
        }
        return { ...core, book: written.value };
      })
      .catch((fault: unknown) => setProblem(storeProblem(fault)));
  };
  return (
    <>
      <div className="chg">
        <button type="button" className="act" onClick={write}>
          Write it in the Book
        </button>
      </div>
      {problem !== undefined && <Complaint problem={problem} />}
    </>
  );
}

/** What stands in the boxes, once it gives a volume. */
function typedFill(ticket: Ticket): Fill | undefined {
  const waterG = valueIn(ticket.fields, 'fillWater');
  const waterTempC = valueIn(ticket.fields, 'fillTemp');
  if (waterG === undefined || fillNow(ticket).state !== 'answered') return undefined;
  return { waterG, ...(waterTempC === undefined ? {} : { waterTempC }) };
}

const isSameFill = (one: Fill, other: Fill): boolean =>
  isCloseTo(one.waterG, other.waterG) && isCloseTo(one.waterTempC, other.waterTempC);

function fillWords({ fill: { waterG, waterTempC }, day }: FillInBook): string {
  const at = waterTempC === undefined ? '' : ` at ${formatTemperature(waterTempC)}`;
  return `${formatMass(waterG)}${at}${day === undefined ? '' : `, ${day}`}`;
}
