import type { BookCode } from '../problem';
import { BOOK_FIELDS } from './bookFields';
import { amount, type Sentence, type Values } from './sentence';

/** What is asked about in the book, and what of a list or a row cannot be taken. */
export const BOOK_WORDS: Record<BookCode, (v: Values) => Sentence> = {
  BOOK_CASTING_OVER: (v) => ({
    text: `Pour ${v.no}: a casting of ${amount(v.typed)} g is heavier than can be. ${amount(v.instead)} g at most were left for it.`,
    hint:
      Number(v.isPoured) === 1
        ? `${amount(v.typed)} g is just what was poured: was that typed in its place? ${HELD}`
        : `Weigh the casting again, or look at the other weights. ${HELD}`,
  }),
  BOOK_OUNCES: inOtherUnit('oz'),
  BOOK_POUNDS: inOtherUnit('lb'),
  BOOK_FAHRENHEIT: (v) => ({
    text: `Pour ${v.no}: ${fieldOf(v)} at ${amount(v.typed)} °C is hotter than anyone pours at. In °F it would be ${amount(v.instead, 3)} °C.`,
    hint: `Was it read in °F? ${HELD}`,
  }),
  BOOK_SIDES_SWAPPED: (v) => ({
    text: `Pour ${v.no}: ${amount(v.typed)} g of A to ${amount(v.instead)} g of B is the ratio of the card the other way round.`,
    hint: `Typed the other way round, or weighed so? A casting of that mix is no measure of the foam. ${HELD}`,
  }),
  BOOK_SUM_OFF: (v) => ({
    text: `Pour ${v.no}: A and B, with any color, add up to ${amount(v.instead)} g, but ${amount(v.typed)} g is written as mixed.`,
    hint: `One of the three is wrong. ${HELD}`,
  }),
  BOOK_BALANCE_OFF: (v) => ({
    text:
      Number(v.missingG) < 0
        ? `Pour ${v.no}: ${amount(v.mixedG)} g mixed, ${amount(v.foundG)} g found; that is ${amount(-Number(v.missingG))} g more than went in.`
        : `Pour ${v.no}: ${amount(v.mixedG)} g mixed, ${amount(v.foundG)} g found; ${amount(v.missingG)} g are missing, more than gas and crumbs take.`,
    hint: 'Look for what was spilled or not weighed, or for a weight that was misread.',
  }),
  BOOK_LEFT_OUT: (v) => ({
    text: `Pour ${v.no} is left out of the ${v.of}. ${v.why}`,
    hint: 'Put it right in the book, and it counts again.',
  }),
  BOOK_ROW_UNREAD: (v) => ({
    text: `Entry ${v.entry} of the book cannot be read: ${v.why}.`,
    hint: 'It stays in the file as it is; nothing is learned from it.',
  }),
  BOOK_ROW_THERE: (v) => ({
    text: `Row ${v.row} has the id of a row that is in the book and says something else: ${v.id}.`,
    hint: 'Change the row in the book, or take its id off the list to write it in as another one.',
  }),
  BOOK_NOT_A_LIST: () => ({
    text: 'The book in this file is not a list of rows: a later Risewright may have written it.',
    hint: 'Nothing was changed. Write into another file, or take the version that wrote it.',
  }),
  BOOK_LIST_BROKEN: (v) => ({
    text: `This is no list that can be read, at line ${v.line}: ${v.why}.`,
    hint: 'Save it as comma-separated values with one row of heads, such as "Mixed, g". "book export" writes one to look at.',
  }),
  BOOK_CELL_UNREAD: (v) => ({
    text: `${placeOf(v)}: ${whyOf(v)}`,
    hint: String(v.todo ?? 'Put it right in the list.'),
  }),
  BOOK_COLUMN_UNKNOWN: (v) => ({
    text: `The column "${v.head}" is no column of the book: nothing of it is taken.`,
    hint: 'Say what it is with --column "HEAD=field:unit", or leave it.',
  }),
};

const HELD = 'Until it is answered, nothing is learned from it.';

const fieldOf = (v: Values): string => BOOK_FIELDS[String(v.field)] ?? String(v.field);

function inOtherUnit(unit: 'oz' | 'lb'): (v: Values) => Sentence {
  return (v) => ({
    text: `Pour ${v.no}: ${amount(v.typed)} g is far from what ${fieldOf(v)} should weigh. In ${unit} it would be ${amount(v.instead)} g.`,
    hint: `Was it weighed in ${unit}? ${HELD}`,
  });
}

/** "Row 4, column 7 (Mixed, g)". */
const placeOf = ({ row, column, head }: Values): string =>
  [
    `Row ${row}`,
    ...(column === undefined ? [] : [`column ${column}${head === undefined ? '' : ` (${head})`}`]),
  ].join(', ');

const whyOf = ({ cell, wanted, why }: Values): string =>
  `${cell === undefined ? '' : `"${cell}" was not taken. `}${wanted === undefined ? String(why) : `Wanted: ${wanted}.`}`;
