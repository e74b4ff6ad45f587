import { isBlank, isWord } from './text';

/** Where a reader of words stands, and the word [from, to) it read last. */
export interface Cursor {
  bytes: Uint8Array;
  from: number;
  to: number;
  /** The end of the line that was looked at last, or -1: each line's end is sought once. */
  lineEnd: number;
}

/** All bytes that end a word lie up to the blank: most bytes of a file are told by one comparison. */
const endsWord = (byte: number): boolean => byte <= 32 && (byte === 0 || isBlank(byte));

/** The next word between blanks, or a zero byte and what follows it; false at the end of the file. Written out for speed: it sees every word of a text file. */
export function next(c: Cursor): boolean {
  const { bytes } = c;
  let i = c.to;
  while (i < bytes.length && isBlank(bytes[i]!)) i++;
  if (i >= bytes.length) return false;
  c.from = i++;
  while (i < bytes.length && !endsWord(bytes[i]!)) i++;
  c.to = i;
  return true;
}

/** The byte the next word begins with, if there is one. */
export function nextByte(c: Cursor): number | undefined {
  const { bytes } = c;
  let i = c.to;
  while (i < bytes.length && isBlank(bytes[i]!)) i++;
  return bytes[i];
}

/** The first word behind a byte. Not by way of `next`, which is quick only with cursors of one make. */
export function wordAfter(bytes: Uint8Array, at: number): { from: number; to: number } | undefined {
  let from = at;
  while (from < bytes.length && isBlank(bytes[from]!)) from++;
  if (from >= bytes.length) return undefined;
  let to = from + 1;
  while (to < bytes.length && !endsWord(bytes[to]!)) to++;
  return { from, to };
}

export const isToken = ({ bytes, from, to }: Cursor, word: string): boolean => isWord(bytes, from, to, word);
