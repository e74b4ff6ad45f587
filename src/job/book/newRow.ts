import { fnv1a64 } from '../fnv';
import { stableText } from '../json';
import { BOOK_COLUMNS } from './bookColumns';
import type { BookRow, CupRow, FillRow, PourRow } from './bookRow';

/** A row that has no id yet. */
export type RowDraft = Omit<PourRow, 'id'> | Omit<CupRow, 'id'> | Omit<FillRow, 'id'>;

/**
 * A row with an id from what it says: the same row twice has the same id, so a list that is brought in again is seen to be there
 * already. A pour without a number takes the next one.
 */
export function newRow(draft: RowDraft, rows: readonly BookRow[]): BookRow {
  const row = { ...draft, id: `${draft.kind}-${fnv1a64(stableText(draft)).slice(0, 10)}` };
  return row.kind === 'pour' && row.no === undefined ? { ...row, no: nextNo(rows) } : row;
}

const nextNo = (rows: readonly BookRow[]): number =>
  1 + Math.max(0, ...rows.map((row) => (row.kind === 'pour' ? (row.no ?? 0) : 0)));

/**
 * Is the row there already, in all that a list can say of it? `other`: another one has its id. Of a draft without a number any will do.
 */
export function isThere(
  row: BookRow,
  rows: readonly BookRow[],
  draft: RowDraft = row,
): 'same' | 'other' | undefined {
  const known = rows.find(({ id }) => id === row.id);
  if (known === undefined) return undefined;
  const isNumbered = draft.kind !== 'pour' || draft.no !== undefined;
  return said(known, isNumbered) === said(row, isNumbered) ? 'same' : 'other';
}

/** Said of the row in this book, and no part of what was poured: a list of before still says the same row. */
const OF_THE_BOOK: readonly string[] = ['isLeftOut', 'keptAsTyped'];

const said = (row: BookRow, isNumbered: boolean): string =>
  stableText(
    BOOK_COLUMNS.filter(({ field }) => (isNumbered || field !== 'no') && !OF_THE_BOOK.includes(field)).map(
      ({ field }) => (row as unknown as Readonly<Record<string, unknown>>)[field] ?? '',
    ),
  );
