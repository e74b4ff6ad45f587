import { isRecord } from '../json';
import { readRow } from './readRow';

/** The id of an entry of the book, also of one that cannot be read; undefined where it has none. */
export function idOfEntry(entry: unknown): string | undefined {
  const row = readRow(entry);
  if (typeof row !== 'string') return row.id;
  return isRecord(entry) && typeof entry.id === 'string' && entry.id !== '' ? entry.id : undefined;
}
