import { readBook, newRow, type PourRow } from '../../job/book';
import { withRow, withoutRow } from '../../job/book/changeRows';
import { giveBack, takeOff } from '../../job/stockTake';
import type { StockTaken, Written } from '../../job/weighState';
import { good, type Outcome } from '../../problem';
import type { ShopCore } from '../../store';
import { rewritten } from './pourOfWeigh';

/** The row of a casting: the one that names it; else, of rows that name no casting, the one of its piece and number. */
export function rowOfCasting(
  book: unknown,
  { piece, casting, no }: { piece: string; casting: string; no: number },
): PourRow | undefined {
  const pours = readBook(book).rows.filter((row) => row.kind === 'pour');
  return (
    pours.findLast((row) => row.casting === casting && row.piece === piece) ??
    pours.findLast((row) => row.casting === undefined && row.piece === piece && row.no === no)
  );
}

/** The shop with the pour written in its book, in the place of its own row where it has one; and how to take that back. */
export function writtenInto(
  core: ShopCore,
  draft: Omit<PourRow, 'id'> & { piece: string; casting: string; no: number },
  wish: { take: StockTaken | undefined; atMs: number },
): Outcome<{ core: ShopCore; written: Written }> {
  const known = rowOfCasting(core.book, draft);
  const row =
    known === undefined
      ? newRow({ ...draft, kind: 'pour' }, readBook(core.book).rows)
      : rewritten(known, draft);
  const book = withRow(core.book, row);
  if (!book.ok) return book;
  const took = wish.take === undefined ? undefined : takeOff(core.stock, wish.take);
  return good({
    core: { ...core, book: book.value, ...(took === undefined ? {} : { stock: took.stock }) },
    written: {
      rowId: row.id,
      atMs: wish.atMs,
      ...(known === undefined ? {} : { before: known }),
      ...(took === undefined ? {} : { taken: took.taken }),
    },
  });
}

/** The shop as it was before: the row out again, or the older one back in its place, and the stock given back. */
export function takenBack(core: ShopCore, { rowId, before, taken }: Written): Outcome<ShopCore> {
  const book = before === undefined ? withoutRow(core.book, rowId) : withRow(core.book, before as PourRow);
  if (!book.ok) return book;
  return good({
    ...core,
    book: book.value,
    ...(taken === undefined ? {} : { stock: giveBack(core.stock, taken) }),
  });
}
