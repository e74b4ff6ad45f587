import { isSame } from '../json';
import { idOfEntry } from './idOfEntry';
import { readRow } from './readRow';

/** Two books as one. `added`: entries that came along. `left`: entries of theirs, in words, that say something else here under the same id. */
export interface MergedBook {
  book: unknown;
  added: number;
  left: string[];
}

/**
 * The book that is here with the entries of another under it. An entry is there already where one of its id is; without an id, where
 * one says the same. What is here stays as it is. A book that is no list is of a later version and left alone.
 */
export function mergeBooks(here: unknown, theirs: unknown): MergedBook {
  if (theirs === undefined) return { book: here, added: 0, left: [] };
  if (here === undefined) return { book: theirs, added: Array.isArray(theirs) ? theirs.length : 0, left: [] };
  if (!Array.isArray(here) || !Array.isArray(theirs))
    return { book: here, added: 0, left: isSame(here, theirs) ? [] : ['the Book'] };
  const book = [...(here as unknown[])];
  const left: string[] = [];
  for (const entry of theirs as unknown[]) {
    const id = idOfEntry(entry);
    const known = book.find((one) => (id === undefined ? isSame(one, entry) : idOfEntry(one) === id));
    if (known === undefined) book.push(entry);
    else if (!isSame(known, entry)) left.push(wordsOf(entry));
  }
  return { book, added: book.length - here.length, left };
}

/** "pour 12 of the Book": no more than is needed to find it. */
function wordsOf(entry: unknown): string {
  const row = readRow(entry);
  if (typeof row === 'string') return 'a row of the Book';
  if (row.kind === 'pour' && row.no !== undefined) return `pour ${row.no} of the Book`;
  const what = { pour: 'a pour', cup: 'a cup test', fill: 'a water fill' }[row.kind];
  return `${what} of the Book${row.day === undefined ? '' : ` (${row.day})`}`;
}
