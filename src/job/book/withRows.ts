import { bad, good, type Outcome } from '../../problem';
import type { BookRow } from './bookRow';

/** The book with rows written under its last; all that stood in it stays as it was. Errors: BOOK_NOT_A_LIST. */
export function withRows(book: unknown, rows: readonly BookRow[]): Outcome<unknown[]> {
  if (book === undefined) return good([...rows]);
  if (!Array.isArray(book)) return bad('BOOK_NOT_A_LIST');
  return good([...(book as unknown[]), ...rows]);
}
