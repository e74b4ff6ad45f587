import { bad, finding, good, type Outcome, type Problem } from '../problem';
import { BOOK_COLUMNS, importBook, sortRows, type BookRow, type ColumnMap, type Imported } from '../job/book';
import { importTrouble } from '../words/importTrouble';
import type { BookDoer } from './bookActions';
import { openBook, writeRows } from './bookFile';
import { rowJson } from './bookJson';
import { listOf, textOf, type OptionValues } from './command';
import { fileTrouble } from './fileTrouble';
import type { Io } from './io';
import { line } from './moldLines';

/** Takes a list of comma-separated values into the book: all of it, or with --leave-out all rows that can be read. */
export const importRows: BookDoer = (options, io) => {
  const file = textOf(options, 'csv');
  if (file === undefined)
    return bad('BAD_CALL', {
      text: 'Which list is not said.',
      hint: 'Give --csv FILE, or --csv - for stdin.',
    });
  const columns = columnMap(options);
  if (!columns.ok) return columns;
  const text = listText(file, io);
  if (!text.ok) return text;
  const opened = openBook(options, io, true);
  if (!opened.ok) return opened;
  const kind = textOf(options, 'kind') as BookRow['kind'] | undefined;
  const read = importBook(text.value, { columns: columns.value, ...(kind === undefined ? {} : { kind }) });
  if ('why' in read) return bad('BOOK_LIST_BROKEN', { line: read.line, why: read.why });
  const sorted = sortRows(read, opened.value.book.rows);
  const there = sorted.there + sorted.twice;
  const troubles = [...read.troubles.map(importTrouble), ...sorted.clashes];
  const isTaken = troubles.length === 0 || options.leaveOut === true;
  if (isTaken && sorted.fresh.length > 0) {
    const written = writeRows(opened.value, sorted.fresh, io);
    if (!written.ok) return written;
  }
  const taken = isTaken ? sorted.fresh : [];
  return good({
    findings: [
      ...read.heads.unknown.map((head) => finding('BOOK_COLUMN_UNKNOWN', 'look', { head })),
      ...troubles.map((one): Problem => (isTaken ? { ...one, status: 'look' } : one)),
    ],
    assumptions: read.kindAssumed ? [{ name: 'kind', value: 'pour', unit: '', from: 'assumed' }] : [],
    result: {
      file: opened.value.file,
      taken: taken.length,
      already_there: there,
      left_out: leftOutOf(read, sorted.clashes, isTaken),
      rows: taken.map(rowJson),
    },
    lines: [
      ...(there === 0 ? [] : [line('There', `${there} rows are in the book already, word for word`)]),
      isTaken
        ? line('Wrote', `${opened.value.file}, ${taken.length} rows more in its book`)
        : line('Stop', 'Nothing was written. Put the list right, or take the other rows with --leave-out.'),
    ],
  });
};

/** Rows of the list that are not written. */
function leftOutOf({ rows, troubles }: Imported, clashes: readonly Problem[], isTaken: boolean): number {
  const unread = new Set(troubles.filter(({ row }) => row > 1).map(({ row }) => row)).size;
  return unread + (isTaken ? clashes.length : rows.length);
}

function listText(file: string, io: Io): Outcome<string> {
  try {
    const bytes = file === '-' ? io.readStdin() : io.readFile(file);
    return good(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch (e) {
    const why = e instanceof TypeError ? 'it is not UTF-8 text' : fileTrouble(e);
    return bad('CANNOT_READ_FILE', { file, why });
  }
}

/** "Total=mixedG:oz", "Total=" for a column that is left out. */
function columnMap(options: OptionValues): Outcome<ColumnMap> {
  const map: Record<string, ColumnMap[string]> = {};
  for (const text of listOf(options, 'column')) {
    const [, head, name, unit] = /^(.+)=(\w*)(?::(.+))?$/.exec(text) ?? [];
    const field = BOOK_COLUMNS.find((column) => column.field === name)?.field;
    if (head === undefined || (name !== '' && field === undefined))
      return bad('BAD_CALL', {
        text: `--column "${text}" names no field of the book.`,
        hint: `Write "HEAD=field:unit"; fields are ${BOOK_COLUMNS.map((column) => column.field).join(', ')}.`,
      });
    map[head] = field === undefined ? null : { field, ...(unit === undefined ? {} : { unit }) };
  }
  return good(map);
}
