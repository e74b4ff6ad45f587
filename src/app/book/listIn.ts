import {
  BOOK_COLUMNS,
  columnOf,
  importBook,
  sortRows,
  type BookField,
  type BookRow,
  type ColumnMap,
  type Imported,
  type SortedRows,
} from '../../job/book';
import { csvRows } from '../../job/csvRows';
import { finding, type Problem } from '../../problem';
import { importTrouble } from '../../words/importTrouble';

/** A list that was read, beside the book it would be written into. Nothing is written yet. */
export interface ListIn {
  heads: HeadIn[];
  read: Imported;
  sorted: SortedRows;
  /** Rows and cells that are not taken, each with its place. */
  troubles: Problem[];
  /** Rows of the list that are not written, by their number: a cell of them could not be read, or their id is another row's. */
  leftOut: number;
}

/** A column of the file, and what it is taken for. */
export interface HeadIn {
  head: string;
  field: BookField | undefined;
  unit: string | undefined;
  /** What numbers of that field can be in; none: it has no unit. */
  units: readonly string[];
}

/** What the columns of numbers can be in; the first is that of the book. */
const UNITS: Readonly<Record<string, readonly string[]>> = {
  g: ['g', 'kg', 'oz', 'lb'],
  C: ['C', 'F'],
  cm3: ['cm3', 'L', 'fl oz', 'in3'],
};

export const unitsOf = (field: BookField | undefined): readonly string[] => {
  const unit = BOOK_COLUMNS.find((column) => column.field === field)?.unit;
  return unit === undefined ? [] : UNITS[unit]!;
};

/** The list with its columns as told, else by their heads; or why it is none. */
export function listIn(
  text: string,
  wish: { columns: ColumnMap; kind: BookRow['kind'] | undefined },
  known: readonly BookRow[],
): ListIn | { problem: Problem; heads: HeadIn[] } {
  const { columns, kind } = wish;
  const heads = headsIn(text, columns);
  const read = importBook(text, { columns, ...(kind === undefined ? {} : { kind }) });
  if ('why' in read)
    return { problem: finding('BOOK_LIST_BROKEN', 'stop', { line: read.line, why: read.why }), heads };
  const sorted = sortRows(read, known);
  const unreadRows = new Set(read.troubles.filter(({ row }) => row > 1).map(({ row }) => row));
  return {
    heads,
    read,
    sorted,
    troubles: [...read.troubles.map(importTrouble), ...sorted.clashes],
    leftOut: unreadRows.size + sorted.clashes.length,
  };
}

/** The heads by the separator that parts them into most. */
function headsIn(text: string, columns: ColumnMap): HeadIn[] {
  const first = text.split(/\r\n|\n|\r/, 1)[0] ?? '';
  const cells = [',', ';', '\t']
    .map((separator) => {
      const rows = csvRows(first, separator);
      return Array.isArray(rows) ? (rows[0]?.cells ?? []) : [];
    })
    .reduce((most, one) => (one.length > most.length ? one : most), []);
  return cells
    .filter((head) => head.trim() !== '')
    .map((head) => {
      const taken = columnOf(head, columns);
      const field = taken?.column.field;
      return { head, field, unit: taken?.unit, units: unitsOf(field) };
    });
}
