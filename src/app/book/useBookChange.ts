import { useCallback, useState } from 'react';
import { readBook, type BookRow } from '../../job/book';
import { withRow } from '../../job/book/changeRows';
import { bad, good, type Outcome, type Problem } from '../../problem';
import { useShop } from '../shop/shopContext';
import { useTrying } from '../shop/useTrying';

/** Changes to the book, one step each. */
export interface BookChange {
  change: (how: (book: unknown) => Outcome<unknown[]>, onDone?: () => void) => void;
  /** One row as it stands then; nothing where another tab has taken it away. */
  changeRow: (id: string, how: (row: BookRow) => BookRow, onDone?: () => void) => void;
  isBusy: boolean;
  /** Why it could not be kept, or why the book cannot be written into. */
  problem: Problem | undefined;
  refused: Problem | undefined;
}

export function useBookChange(): BookChange {
  const { store } = useShop();
  const { attempt, isBusy, problem } = useTrying();
  const [refused, setRefused] = useState<Problem>();
  const change = useCallback<BookChange['change']>(
    (how, onDone) =>
      attempt(async () => {
        const done = await store.changeBook(how);
        setRefused(done.ok ? undefined : done.problem);
        if (done.ok) onDone?.();
      }),
    [attempt, store],
  );
  const changeRow = useCallback<BookChange['changeRow']>(
    (id, how, onDone) => change((book) => withChanged(book, id, how), onDone),
    [change],
  );
  return { change, changeRow, isBusy, problem, refused };
}

function withChanged(book: unknown, id: string, how: (row: BookRow) => BookRow): Outcome<unknown[]> {
  if (!Array.isArray(book)) return bad('BOOK_NOT_A_LIST');
  const row = readBook(book).rows.find((one) => one.id === id);
  return row === undefined ? good([...(book as unknown[])]) : withRow(book, how(row));
}
