import { useState } from 'react';
import type { CheckedPour } from '../../job/book';
import type { Piece } from '../../job/piece';
import { Link } from '../parts/Link';
import { SelectField } from '../parts/SelectField';
import { BookTrouble } from './BookTrouble';
import type { BookProps } from './bookProps';
import { DeleteRow } from './DeleteRow';
import { castingName } from './pourRow';
import { pieceOf } from './rowsById';
import { TypeAnother } from './TypeAnother';
import { useBookChange } from './useBookChange';

/** Leave a pour out, put it back, type a figure of it anew, weigh it back again, or delete it. */
export function ChangePour({ book, nav, undos }: Omit<BookProps, 'no'>) {
  const { pours, pieces } = book;
  const { changeRow, problem, refused } = useBookChange();
  const [id, setId] = useState('');
  const [isTyping, setTyping] = useState(false);
  const pour = pours.find(({ row }) => row.id === id);
  return (
    <details className="changepour">
      <summary>Leave a pour out, change or delete one</summary>
      <SelectField
        label="Which pour"
        value={pour === undefined ? '' : id}
        blank="none chosen"
        options={pours.map(({ no, row }) => ({
          value: row.id,
          label: `${no}: ${castingName(row, pieces)}${row.isLeftOut === true ? ', left out' : ''}`,
        }))}
        onChoose={setId}
      />
      {pour !== undefined && (
        <>
          <div className="chg">
            <button
              type="button"
              className="act"
              onClick={() =>
                changeRow(id, (row) =>
                  row.kind === 'pour' ? { ...row, isLeftOut: row.isLeftOut !== true } : row,
                )
              }
            >
              {pour.row.isLeftOut === true ? `Put pour ${pour.no} back` : `Leave pour ${pour.no} out`}
            </button>
            <button
              type="button"
              className="act"
              aria-expanded={isTyping}
              onClick={() => setTyping((is) => !is)}
            >
              Type a figure anew
            </button>
            <ToBench pour={pour} pieces={pieces} nav={nav} />
            <DeleteRow id={id} what={`Pour ${pour.no}`} undos={undos} />
          </div>
          <p className="note quiet">
            A pour that is left out stays in the Book; nothing is learned from it until it is put back.
          </p>
          {isTyping && (
            <TypeAnother
              key={id}
              row={pour.row}
              about="castingG"
              onWrite={(figures) => {
                setTyping(false);
                changeRow(id, (row) => ({ ...row, ...figures }));
              }}
            />
          )}
        </>
      )}
      <BookTrouble problem={problem} refused={refused} />
    </details>
  );
}

/** Only the casting in hand is at the bench. */
function ToBench({
  pour: { row },
  pieces,
  nav,
}: {
  pour: CheckedPour;
  pieces: readonly Piece[];
  nav: BookProps['nav'];
}) {
  const piece = row.piece === undefined ? undefined : pieceOf(row.piece, pieces);
  if (piece?.castings[piece.hand.casting]?.no !== row.no || piece === undefined || row.no === undefined)
    return null;
  return (
    <Link nav={nav} to={{ at: 'bench', piece: piece.id }} className="act">
      To its weigh-back
    </Link>
  );
}
