import { useMemo } from 'react';
import { checkedPours, readBook, type Book, type BookRow, type CheckedPour } from '../../job/book';
import type { Piece } from '../../job/piece';
import type { ShopCore } from '../../store';
import { useShop } from '../shop/shopContext';
import { rowsById } from './rowsById';

/** The shop's book as the page shows it: of one piece, or all of it. */
export interface OpenBook {
  core: ShopCore;
  pieces: readonly Piece[];
  /** Every row, the piece by its id. */
  rows: readonly BookRow[];
  unread: Book['unread'];
  /** Whose pours are shown; undefined: everybody's. */
  piece: Piece | undefined;
  /** The pours that are shown, and all of them: what is learned goes by all. */
  pours: readonly CheckedPour[];
  all: readonly CheckedPour[];
}

/** Undefined until the store has answered. */
export function useBook(piece: Piece | undefined): OpenBook | undefined {
  const { view } = useShop();
  const known = useMemo(() => {
    if (view === undefined) return undefined;
    const { rows: written, unread } = readBook(view.core.book);
    const rows = rowsById(written, view.pieces);
    return { core: view.core, pieces: view.pieces, rows, unread, all: checkedPours(rows, view.core) };
  }, [view]);
  return useMemo(
    () =>
      known === undefined
        ? undefined
        : {
            ...known,
            piece,
            pours: piece === undefined ? known.all : known.all.filter(({ row }) => row.piece === piece.id),
          },
    [known, piece],
  );
}
