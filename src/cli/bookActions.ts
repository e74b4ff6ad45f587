import { resolve } from 'node:path';
import { bad, finding, good, type Outcome, type Problem } from '../problem';
import type { Assumption } from '../estimate';
import {
  bookCsv,
  checkedPours,
  findingsOf,
  isThere,
  learnBook,
  newRow,
  pourFindings,
  readRow,
  unreadFindings,
  type BookRow,
} from '../job/book';
import { foamNamed, type Shop } from '../job/shop';
import { say } from '../words/say';
import { openBook, writeRows, type OpenBook } from './bookFile';
import { countsJson, learnJson, rowJson, slipJson } from './bookJson';
import { rowOfOptions } from './bookOptions';
import { learnText, rowsText, type NameOf } from './bookText';
import { textOf, type OptionValues } from './command';
import type { Io } from './io';
import { line } from './moldLines';
import { quantityOption } from './quantity';
import { orCannotWrite, showOf } from './report';

/** What an action of the book came to: for a person, and for a program. `raw` is data that goes out as it is. */
export interface BookAnswer {
  findings: Problem[];
  assumptions: Assumption[];
  result: Record<string, unknown>;
  lines: string[];
  raw?: string;
}

export type BookDoer = (options: OptionValues, io: Io) => Outcome<BookAnswer>;

const answered = (part: Partial<BookAnswer> & Pick<BookAnswer, 'result' | 'lines'>): Outcome<BookAnswer> =>
  good({ findings: [], assumptions: [], ...part });

export const addRow: BookDoer = (options, io) => {
  const draft = rowOfOptions(options);
  if (!draft.ok) return draft;
  const opened = openBook(options, io, true);
  if (!opened.ok) return opened;
  const { book, shop, file } = opened.value;
  const row = newRow(draft.value, book.rows);
  const sound = readRow(row);
  if (typeof sound === 'string')
    return bad('BAD_CALL', { text: `The row is not sound: ${sound}.`, hint: 'Nothing was written.' });
  const named = cardKnown(row, opened.value);
  if (!named.ok) return named;
  if (isThere(row, book.rows) !== undefined)
    return bad('BAD_CALL', {
      text: 'That very row is in the book already.',
      hint: 'Nothing was written. Say its --day or its --number if it is another one.',
    });
  const written = writeRows(opened.value, [row], io);
  if (!written.ok) return written;
  const added = checkedPours([...book.rows, row], shop).find((pour) => pour.row.id === row.id);
  return answered({
    findings: added === undefined ? [] : findingsOf(added, shop.scale?.stepG),
    result: { file, row: rowJson(row) },
    lines: [
      ...rowsText([row], showOf(options), nameIn(shop)),
      line('Wrote', `${file}, ${book.rows.length + 1} rows in its book`),
    ],
  });
};

const nameIn =
  ({ pieces }: Shop): NameOf =>
  (piece) =>
    piece !== undefined && Object.hasOwn(pieces, piece) ? pieces[piece]!.name : piece;

/** A foam must be one of the cards, where there are any. */
function cardKnown(row: BookRow, { shop }: OpenBook): Outcome<unknown> {
  if (row.kind === 'fill' || row.foam === undefined || shop.foams.length === 0) return good(true);
  return foamNamed(shop, row.foam);
}

const ofKind = (rows: readonly BookRow[], options: OptionValues): BookRow[] =>
  rows.filter(({ kind }) => textOf(options, 'kind') === undefined || kind === options.kind);

export const listRows: BookDoer = (options, io) => {
  const opened = openBook(options, io);
  if (!opened.ok) return opened;
  const { rows, unread } = opened.value.book;
  const listed = ofKind(rows, options);
  return answered({
    findings: unreadFindings(unread),
    result: { ...countsJson(listed), unread: unread.length, rows: listed.map(rowJson) },
    lines:
      listed.length === 0
        ? [line('Book', 'No row yet. The first weigh-back replaces one guess: how much stays in the cup.')]
        : rowsText(listed, showOf(options), nameIn(opened.value.shop)),
  });
};

export const checkRows: BookDoer = (options, io) => {
  const opened = openBook(options, io);
  if (!opened.ok) return opened;
  const { book, shop } = opened.value;
  const pours = checkedPours(book.rows, shop);
  const asked = pours.flatMap(({ no, row, slips }) => slips.map((slip) => slipJson(no, row.id, slip)));
  const findings = [...unreadFindings(book.unread), ...pourFindings(book.rows, shop)];
  return answered({
    findings,
    result: { pours: pours.length, asks: asked },
    lines: findings.length === 0 ? [line('Fine', `${pours.length} pours, and nothing to ask about`)] : [],
  });
};

export const learn: BookDoer = (options, io) => {
  const opened = openBook(options, io);
  if (!opened.ok) return opened;
  const { book, shop } = opened.value;
  const [foam, piece, room] = ['foam', 'piece', 'room'].map((name) => textOf(options, name));
  const roomC = room === undefined ? good(undefined) : quantityOption('--room', room, 'temperature', 'C');
  if (!roomC.ok) return roomC;
  if (foam !== undefined && !book.rows.some((row) => row.kind !== 'fill' && row.foam === foam)) {
    const known = foamNamed(shop, foam);
    if (!known.ok) return known;
  }
  const learned = learnBook(book.rows, shop, {
    ...(foam === undefined ? {} : { foam }),
    ...(piece === undefined ? {} : { piece }),
    ...(roomC.value === undefined ? {} : { roomC: roomC.value }),
    ventsChecked: options.ventsChecked === true,
    cupTestedToday: options.cupToday === true,
  });
  const show = showOf(options);
  const leftOut = learned.leftOut.map(({ no, of, problem }) =>
    finding('BOOK_LEFT_OUT', 'look', { no, of, why: say(problem, show).text }),
  );
  return answered({
    findings: [...unreadFindings(book.unread), ...pourFindings(book.rows, shop), ...leftOut],
    assumptions: [{ name: 'fill_chance', value: learned.chance, unit: '', from: 'chosen' }],
    result: learnJson(learned),
    lines: learnText(learned, show, nameIn(shop)),
  });
};

export const exportRows: BookDoer = (options, io) => {
  const opened = openBook(options, io);
  if (!opened.ok) return opened;
  const { book, file } = opened.value;
  const rows = ofKind(book.rows, options);
  const csv = bookCsv(rows);
  const target = textOf(options, 'csv');
  const findings = unreadFindings(book.unread);
  if (target === undefined || target === '-')
    return answered({ findings, result: { rows: rows.length, csv }, lines: [], raw: csv });
  if (resolve(target) === resolve(file))
    return bad('BAD_CALL', {
      text: `--csv "${target}" is the book itself: it would be lost.`,
      hint: 'Name another file.',
    });
  orCannotWrite(target, '--csv', () => io.replaceFile(target, csv));
  return answered({
    findings,
    result: { file: target, rows: rows.length },
    lines: [line('Wrote', `${target}, ${rows.length} rows`)],
  });
};
