/**
 * Reading numbers and words straight from the bytes of a text file. No strings are made on the way, and nothing here
 * can take more than linear time, whatever the file holds.
 */

export const isBlank = (byte: number): boolean => byte === 32 || (byte >= 9 && byte <= 13);
export const isLineEnd = (byte: number): boolean => byte === 10 || byte === 13;

/** Line number (from 1) of a byte. CR, LF and CRLF each end one line. Walks the file: for error messages only. */
export function lineAt(bytes: Uint8Array, at: number): number {
  let line = 1;
  for (let i = 0; i < at && i < bytes.length; i++) {
    if (bytes[i] === 10 || (bytes[i] === 13 && bytes[i + 1] !== 10)) line++;
  }
  return line;
}

/** The text between two bytes for a message: printable ASCII, at most 24 characters, the rest shown as dots. */
export function excerpt(bytes: Uint8Array, from: number, to: number): string {
  const end = Math.min(to, from + 24);
  let text = '';
  for (let i = from; i < end; i++)
    text += bytes[i]! > 31 && bytes[i]! < 127 ? String.fromCharCode(bytes[i]!) : '.';
  return to > end ? text + '...' : text;
}

/** Does a UTF-8 byte order mark open the file? Then 3, else 0: the first byte to read. */
export const afterByteOrderMark = (b: Uint8Array): number =>
  b[0] === 0xef && b[1] === 0xbb && b[2] === 0xbf ? 3 : 0;

const POWERS_OF_TEN = Float64Array.from({ length: 23 }, (_, i) => 10 ** i);

/**
 * The decimal number that fills bytes [from, to) exactly: optional sign, digits with at most one point, optional
 * exponent. Anything else (nan, 0x1F, 1.2.3, 1e, 10,0) gives NaN; an overflow gives Infinity.
 * Exact: up to 15 digits and powers of ten up to 22 are one correctly rounded operation (Clinger 1990, "How to read
 * floating point numbers accurately", from memory); longer ones go through the engine's own parser.
 */
export function numberIn(bytes: Uint8Array, from: number, to: number): number {
  let i = from;
  const negative = bytes[i] === 45;
  if (negative || bytes[i] === 43) i++;
  let mantissa = 0;
  let digits = 0;
  let seen = false;
  let exponent = 0;
  let pointSeen = false;
  for (; i < to; i++) {
    const d = bytes[i]! - 48;
    if (d >= 0 && d <= 9) {
      seen = true;
      if (digits > 0 || d > 0) digits++;
      mantissa = mantissa * 10 + d;
      if (pointSeen) exponent--;
    } else if (bytes[i] === 46 && !pointSeen) pointSeen = true;
    else break;
  }
  if (!seen) return NaN;
  if (i < to) {
    const written = exponentIn(bytes, i, to);
    if (Number.isNaN(written)) return NaN;
    exponent += written;
  }
  if (digits > 15 || exponent > 22 || exponent < -22) return slowNumber(bytes, from, to);
  const value = exponent < 0 ? mantissa / POWERS_OF_TEN[-exponent]! : mantissa * POWERS_OF_TEN[exponent]!;
  return negative ? -value : value;
}

/** The exponent that fills [at, to): e or E, optional sign, digits. NaN when it does not. */
function exponentIn(bytes: Uint8Array, at: number, to: number): number {
  if (bytes[at] !== 101 && bytes[at] !== 69) return NaN;
  let i = at + 1;
  const negative = bytes[i] === 45;
  if (negative || bytes[i] === 43) i++;
  if (i >= to) return NaN;
  let value = 0;
  for (; i < to; i++) {
    const d = bytes[i]! - 48;
    if (d < 0 || d > 9) return NaN;
    value = Math.min(value * 10 + d, 1e6);
  }
  return negative ? -value : value;
}

function slowNumber(bytes: Uint8Array, from: number, to: number): number {
  let text = '';
  for (let i = from; i < to; i += 4096)
    text += String.fromCharCode(...bytes.subarray(i, Math.min(to, i + 4096)));
  return Number(text);
}

/** Case-blind comparison of bytes [from, to) with a lower-case word. */
export function isWord(bytes: Uint8Array, from: number, to: number, word: string): boolean {
  if (to - from !== word.length) return false;
  for (let i = 0; i < word.length; i++) {
    const b = bytes[from + i]!;
    if ((b >= 65 && b <= 90 ? b + 32 : b) !== word.charCodeAt(i)) return false;
  }
  return true;
}

/** A Float64Array that grows as numbers are pushed. */
export interface NumberList {
  data: Float64Array;
  length: number;
}

export const numberList = (capacity = 1 << 14): NumberList => ({
  data: new Float64Array(capacity),
  length: 0,
});

export function push(list: NumberList, value: number): void {
  if (list.length === list.data.length) {
    const wider = new Float64Array(2 * list.data.length);
    wider.set(list.data);
    list.data = wider;
  }
  list.data[list.length++] = value;
}

/** The same for whole numbers of 32 bits. */
export interface IntList {
  data: Int32Array;
  length: number;
}

export const intList = (capacity = 1 << 14): IntList => ({ data: new Int32Array(capacity), length: 0 });

export function pushInt(list: IntList, value: number): void {
  if (list.length === list.data.length) {
    const wider = new Int32Array(2 * list.data.length);
    wider.set(list.data);
    list.data = wider;
  }
  list.data[list.length++] = value;
}
