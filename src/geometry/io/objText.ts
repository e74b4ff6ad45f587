import { POLYGON_LIMIT } from './polygon';
import { afterByteOrderMark, isBlank, isLineEnd, isWord } from './text';

/** Bytes of words that are kept of a line: one word more than the largest face has, so that it shows, and no more, however long the line is. */
const FIELDS_LIMIT = 2 * (POLYGON_LIMIT + 2);

/**
 * Puts the [from, to) byte pairs of one logical line into `fields` (comments off, continuations joined), those of the first words where there
 * are very many. Next byte.
 */
export function splitLine(bytes: Uint8Array, start: number, fields: number[]): number {
  fields.length = 0;
  let i = start;
  for (;;) {
    while (i < bytes.length && isBlank(bytes[i]!) && !isLineEnd(bytes[i]!)) i++;
    if (i >= bytes.length) return i;
    const b = bytes[i]!;
    if (isLineEnd(b)) return i + 1;
    if (b === 35) {
      while (i < bytes.length && !isLineEnd(bytes[i]!)) i++;
      return i + 1;
    }
    if (b === 92 && isLineEnd(bytes[i + 1] ?? 10)) {
      i += bytes[i + 1] === 13 && bytes[i + 2] === 10 ? 3 : 2;
      continue;
    }
    const from = i;
    while (i < bytes.length && !isBlank(bytes[i]!) && !(bytes[i] === 92 && isLineEnd(bytes[i + 1] ?? 10)))
      i++;
    if (fields.length < FIELDS_LIMIT) fields.push(from, i);
  }
}

/**
 * Vertex number from 0 of `7`, `7/1`, `7//2`, `7/1/2` or `-3`, also with nothing or one number more behind the last slash, see
 * `hasOddSlashes`; NaN when it is none of these, negative when below 1.
 */
export function vertexNumber(bytes: Uint8Array, from: number, to: number, verticesSoFar: number): number {
  let slots = 0;
  let vertex = NaN;
  for (let at = from; at <= to; slots++) {
    let end = at;
    while (end < to && bytes[end] !== 47) end++;
    if (slots > 3 || (at === end && slots === 0)) return NaN;
    if (at < end) {
      const value = integerIn(bytes, at, end);
      if (Number.isNaN(value)) return NaN;
      if (slots === 0) vertex = value;
    }
    at = end + 1;
  }
  return vertex < 0 ? verticesSoFar + vertex : vertex - 1;
}

/** A slash with nothing behind it, or more than two: the vertex in front of them is plain all the same. */
export function hasOddSlashes(bytes: Uint8Array, from: number, to: number): boolean {
  if (bytes[to - 1] === 47) return true;
  let slashes = 0;
  for (let i = from; i < to; i++) if (bytes[i] === 47) slashes++;
  return slashes > 2;
}

function integerIn(bytes: Uint8Array, from: number, to: number): number {
  const negative = bytes[from] === 45;
  let value = 0;
  for (let i = from + (negative ? 1 : 0); i < to; i++) {
    const d = bytes[i]! - 48;
    if (d < 0 || d > 9) return NaN;
    value = Math.min(value * 10 + d, 2 ** 53);
  }
  if (to - from === (negative ? 1 : 0)) return NaN;
  return negative ? -value : value;
}

/** Words that open the statements of an OBJ that holds a mesh (Wavefront, "Object Files", appendix B1, from memory). */
const STATEMENTS = ['v', 'vn', 'vt', 'f', 'o', 'g', 's', 'mtllib', 'usemtl'];

/** Bytes in which a statement must come up, comments and all. Chosen here. */
const LOOK_BYTES = 65_536;

/** Is the first statement one of an OBJ? */
export function startsLikeObj(bytes: Uint8Array): boolean {
  const head = bytes.subarray(0, LOOK_BYTES);
  if (head.includes(0)) return false;
  const fields: number[] = [];
  for (let at = afterByteOrderMark(head); at < head.length;) {
    at = splitLine(head, at, fields);
    if (fields.length > 0)
      return fields.length > 2 && STATEMENTS.some((word) => isWord(head, fields[0]!, fields[1]!, word));
  }
  return false;
}
