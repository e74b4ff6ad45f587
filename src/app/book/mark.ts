import { checkedPours, findingsOf, readBook, type CheckedPour } from '../../job/book';
import type { Piece } from '../../job/piece';
import type { ShopCore } from '../../store';
import type { Mark } from '../parts/StatusMark';

/** A question is open about a pour of the piece; or all that is written of it is clear; or nothing is. */
export function bookMark(piece: Pick<Piece, 'id'>, core: Pick<ShopCore, 'book' | 'foams' | 'scale'>): Mark {
  const pours = poursOf(core).filter(({ row }) => row.piece === piece.id);
  if (pours.length === 0) return 'open';
  return pours.some((pour) => findingsOf(pour, core.scale?.stepG).length > 0) ? 'look' : 'fine';
}

/** The rail is drawn anew many times a second while the engine works, and the book is the same then. */
const known = new WeakMap<object, readonly CheckedPour[]>();

function poursOf(core: Pick<ShopCore, 'book' | 'foams' | 'scale'>): readonly CheckedPour[] {
  const before = known.get(core);
  if (before !== undefined) return before;
  const pours = checkedPours(readBook(core.book).rows, core);
  known.set(core, pours);
  return pours;
}
