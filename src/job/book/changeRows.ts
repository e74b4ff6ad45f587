import { bad, good, type Outcome } from '../../problem';
import type { BookRow } from './bookRow';
import { idOfEntry } from './idOfEntry';

/**
 * The book with a row in the place of the row of its id; else at the place `at`, counted from 0, or last. Entries that cannot be read stay.
 * Errors: BOOK_NOT_A_LIST.
 */
export function withRow(book: unknown, row: BookRow, at?: number): Outcome<unknown[]> {
  if (book !== undefined && !Array.isArray(book)) return bad('BOOK_NOT_A_LIST');
  const entries = (book ?? []) as unknown[];
  const there = placeOfRow(entries, row.id);
  if (there >= 0) return good(entries.map((entry, index) => (index === there ? row : entry)));
  const place = at ?? entries.length;
  return good([...entries.slice(0, place), row, ...entries.slice(place)]);
}

/** The book without the row of that id; the others keep their order. Errors: BOOK_NOT_A_LIST. */
export function withoutRow(book: unknown, id: string): Outcome<unknown[]> {
  if (book === undefined) return good([]);
  if (!Array.isArray(book)) return bad('BOOK_NOT_A_LIST');
  const there = placeOfRow(book, id);
  return good((book as unknown[]).filter((_, index) => index !== there));
}

/** Where in the list the row of that id stands, from 0; -1 where it is not there. */
export const placeOfRow = (book: unknown, id: string): number =>
  Array.isArray(book) ? (book as unknown[]).findIndex((entry) => idOfEntry(entry) === id) : -1;
