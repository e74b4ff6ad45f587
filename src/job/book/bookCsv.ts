import { csvText } from '../csvText';
import { BOOK_COLUMNS, headOf, type BookColumn } from './bookColumns';
import type { BookRow } from './bookRow';

/** The rows as comma-separated values, for a spreadsheet: units in the heads. What a later version added stays in the shop's file alone. */
export const bookCsv = (rows: readonly BookRow[]): string =>
  csvText({
    heads: BOOK_COLUMNS.map(headOf),
    rows: rows.map((row) => BOOK_COLUMNS.map((column) => cellOf(row, column))),
  });

function cellOf(row: BookRow, { field }: BookColumn): string | number {
  const value: unknown = (row as unknown as Partial<Record<string, unknown>>)[field];
  if (Array.isArray(value)) return value.join('; ');
  if (value === true) return 'yes';
  return typeof value === 'number' || typeof value === 'string' ? value : '';
}
