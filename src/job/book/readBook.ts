import type { BookRow } from './bookRow';
import { readRow } from './readRow';

/** An entry that cannot be read, by its place in the list, from 1. It stays in the file as it is. */
export interface UnreadRow {
  at: number;
  why: string;
}

export interface Book {
  rows: BookRow[];
  unread: UnreadRow[];
}

/** The book of a shop as far as it can be read. A row that cannot be is told, and never keeps the others from being read. */
export function readBook(book: unknown): Book {
  if (book === undefined) return { rows: [], unread: [] };
  if (!Array.isArray(book)) return { rows: [], unread: [{ at: 1, why: 'the book is not a list' }] };
  const rows: BookRow[] = [];
  const unread: UnreadRow[] = [];
  const ids = new Set<string>();
  for (const [index, json] of (book as unknown[]).entries()) {
    const row = readRow(json);
    if (typeof row === 'string') unread.push({ at: index + 1, why: row });
    else if (ids.has(row.id)) unread.push({ at: index + 1, why: `the id ${row.id} is that of another row` });
    else {
      ids.add(row.id);
      rows.push(row);
    }
  }
  return { rows, unread };
}
