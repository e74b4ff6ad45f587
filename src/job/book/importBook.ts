import { csvRows, type CsvRow } from '../csvRows';
import type { BookRow } from './bookRow';
import { columnOf, type ColumnMap, type TakenColumn } from './columnOf';
import { readCell, type CellTrouble } from './readCell';
import { readRow } from './readRow';
import type { RowDraft } from './newRow';

export type { ColumnMap } from './columnOf';

/** Where and why something was not taken. `row` counts as a spreadsheet does: the heads are row 1; `column` is from 1. */
export type ImportTrouble = { row: number; column?: number; head?: string; cell?: string } & CellTrouble;

export interface Imported {
  /** Rows of which every cell was read. With an `id` where the file gives one. */
  rows: { row: number; draft: RowDraft & { id?: string } }[];
  troubles: ImportTrouble[];
  /** Columns that are no field of the book: nothing of them is taken. */
  heads: { unknown: string[]; leftOut: string[] };
  /** No column says what kind the rows are. */
  kindAssumed: boolean;
}

export interface ImportWish {
  columns?: ColumnMap;
  /** Of rows that do not say their kind. */
  kind?: BookRow['kind'];
}

/** The file is no list of comma-separated values, or none of its heads is known. */
export interface BrokenList {
  line: number;
  why: string;
}

/**
 * A list of comma-separated values as rows for the book. Columns are told by their heads, or as the caller says; a number is taken in the
 * unit of its cell, else of its head, and never without one. A row with a cell that cannot be read is left out whole, and the cell told.
 */
export function importBook(text: string, { columns = {}, kind }: ImportWish = {}): Imported | BrokenList {
  const list = separated(text, columns);
  if ('why' in list) return list;
  const [first, ...records] = list;
  const heads = first!.cells.map((head) => ({ head, taken: columnOf(head, columns) }));
  const imported: Imported = {
    rows: [],
    troubles: twice(heads.map(({ taken }) => taken)),
    heads: {
      unknown: heads
        .filter(({ head, taken }) => taken === undefined && head.trim() !== '')
        .map(({ head }) => head),
      leftOut: heads.filter(({ taken }) => taken === null).map(({ head }) => head),
    },
    kindAssumed: kind === undefined && !heads.some(({ taken }) => taken?.column.field === 'kind'),
  };
  for (const [index, { cells }] of records.entries()) {
    if (cells.every((cell) => cell.trim() === '')) continue;
    const read = readRecord(cells, heads, index + 2);
    if (Array.isArray(read)) imported.troubles.push(...read);
    else take(imported, { kind: kind ?? 'pour', ...read }, index + 2);
  }
  return imported;
}

function take(imported: Imported, values: Record<string, unknown>, row: number): void {
  const sound = readRow({ id: 'none', ...values });
  if (typeof sound === 'string') imported.troubles.push({ row, wanted: sound });
  else imported.rows.push({ row, draft: values as unknown as RowDraft });
}

type Head = { head: string; taken: TakenColumn | null | undefined };

function readRecord(
  cells: readonly string[],
  heads: readonly Head[],
  row: number,
): Record<string, unknown> | ImportTrouble[] {
  const values: Record<string, unknown> = {};
  const troubles: ImportTrouble[] = [];
  for (const [index, cell] of cells.entries()) {
    if (cell.trim() === '') continue;
    const head = heads[index];
    const at = { row, column: index + 1, cell };
    if (head === undefined) troubles.push({ ...at, wanted: 'no cell beyond the last head' });
    else if (head.taken !== undefined && head.taken !== null) {
      const read = readCell(cell, head.taken);
      if ('value' in read) values[head.taken.column.field] = read.value;
      else troubles.push({ ...at, head: head.head, ...read });
    }
  }
  return troubles.length > 0 ? troubles : values;
}

/** Two columns of one field: nobody can say which is meant. */
function twice(taken: readonly Head['taken'][]): ImportTrouble[] {
  return taken.flatMap((one, index) => {
    const before = taken.findIndex((other) => other?.column.field === one?.column.field);
    return one === undefined || one === null || before === index
      ? []
      : [
          {
            row: 1,
            column: index + 1,
            head: one.column.head,
            wanted: `only one column for ${one.column.head}`,
          },
        ];
  });
}

/** What stands between two cells is what makes most of the heads known; a comma where there is one head alone. */
function separated(text: string, columns: ColumnMap): CsvRow[] | BrokenList {
  const heads = SEPARATORS.map((separator) => {
    const cells = headsBy(text, separator);
    return { separator, cells, known: cells.filter((head) => columnOf(head, columns) !== undefined).length };
  }).sort((one, other) => other.known - one.known);
  const [best, next] = heads as [(typeof heads)[0], (typeof heads)[0]];
  if (best.known === 0) return { line: 1, why: 'none of its heads is a column of the book' };
  if (best.known === next.known && best.cells.length !== next.cells.length)
    return { line: 1, why: 'its heads can be parted by more than one of comma, semicolon and tab' };
  return csvRows(text, best.separator);
}

function headsBy(text: string, separator: string): string[] {
  const rows = csvRows(text.split(/\r\n|\n|\r/, 1)[0]!, separator);
  return Array.isArray(rows) ? (rows[0]?.cells ?? []) : [];
}

const SEPARATORS = [',', ';', '\t'] as const;
