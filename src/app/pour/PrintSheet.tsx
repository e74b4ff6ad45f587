import { numberedPours, readBook } from '../../job/book';
import type { Piece } from '../../job/piece';
import { pourSheet, type SheetMeta } from '../../sheet';
import type { PourOnPage } from '../../worker/pour';
import type { BatchProps } from '../batch/batchProps';
import { PrintButton } from '../parts/PrintButton';
import { useShop } from '../shop/shopContext';
import { openingNow, pourToldNow, sizeNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { castingCode } from '../words/castingCode';

/** One page for the hand, in a window of its own, from where it is printed. Nothing of before is ever printed. */
export function PrintSheet({
  ticket,
  piece,
  pour: { answer },
}: Pick<BatchProps, 'ticket' | 'piece' | 'pour'>) {
  const { view } = useShop();
  return (
    <PrintButton
      className="btn line"
      html={
        answer === undefined
          ? undefined
          : () => sheetOf({ ticket, piece, pour: answer, book: view?.core.book })
      }
    >
      Print the pour sheet
    </PrintButton>
  );
}

/** The sheet of the pour as it stands, with what stops it, the thin places if they were looked for, and what came out of this mold before. */
function sheetOf({
  ticket,
  piece,
  pour,
  book,
}: {
  ticket: Ticket;
  piece: Piece;
  pour: PourOnPage;
  book: unknown;
}): string {
  const { foam, today } = ticket;
  const told = pourToldNow(ticket);
  const places = openingNow(ticket).answer?.places;
  return pourSheet(pour, {
    title: piece.name,
    jobCode: castingCode(piece),
    ...(foam.name.trim() === '' ? {} : { foam: foam.name.trim() }),
    version: __APP_VERSION__,
    date: today,
    findings: [...(sizeNow(ticket).answer?.size.findings ?? []), ...Object.values(pour.refused)],
    ...(told === undefined ? {} : { told }),
    ...(places === undefined ? {} : { places }),
    before: poursBefore(piece, book),
  });
}

/** Out of the mold in hand; a row that names no mold counts where the piece has but one. */
function poursBefore({ id, molds, hand }: Piece, book: unknown): NonNullable<SheetMeta['before']> {
  const isOnly = Object.keys(molds).length === 1;
  return numberedPours(readBook(book).rows).flatMap(({ no, row }) =>
    row.piece === id && (row.mold === hand.mold || (row.mold === undefined && isOnly))
      ? [{ ...row, no }]
      : [],
  );
}
