import { useCallback, type MouseEvent } from 'react';
import { readBook } from '../../job/book';
import { placeOfRow, withoutRow, withRow } from '../../job/book/changeRows';
import { useShop } from '../shop/shopContext';
import type { Undos } from '../shelf/useUndos';
import { deletedWords } from '../words/bookAsk';
import { useBookChange, type BookChange } from './useBookChange';

/** Takes a row out of the book; for ten seconds it can be put back where it stood. */
export function useDeleteRow(undos: Undos): {
  drop: (event: MouseEvent, id: string, what: string) => void;
} & Pick<BookChange, 'problem' | 'refused'> {
  const { store, view } = useShop();
  const { change, problem, refused } = useBookChange();
  const book = view?.core.book;
  const drop = useCallback(
    (event: MouseEvent, id: string, what: string): void => {
      const at = placeOfRow(book, id);
      const row = readBook(book).rows.find((one) => one.id === id);
      if (row === undefined) return;
      change(
        (now) => withoutRow(now, id),
        () =>
          undos.add(event, deletedWords(what), async () => {
            await store.changeBook((now) => withRow(now, row, at));
          }),
      );
    },
    [book, change, store, undos],
  );
  return { drop, problem, refused };
}
