import { bad, good, type Code, type Outcome } from '../../problem';
import { COORDINATE_LIMIT, TRIANGLE_LIMIT, type ScanFile } from './scanFile';
import { float32Step } from './stlBinary';
import {
  afterByteOrderMark,
  excerpt,
  isBlank,
  isLineEnd,
  isWord,
  lineAt,
  numberIn,
  numberList,
  push,
} from './text';
import { weldSoup } from './weld';

/** Where the reader stands, and the token [from, to) it read last. */
interface Cursor {
  bytes: Uint8Array;
  from: number;
  to: number;
}

/** Thrown inside this file only, to leave the grammar from any depth; caught in `readAsciiStl`. */
class Refusal extends Error {
  readonly code: Code;
  readonly values: Record<string, string | number>;
  readonly at: number;
  constructor(code: Code, values: Record<string, string | number>, at: number) {
    super(code);
    this.code = code;
    this.values = values;
    this.at = at;
  }
}

export function startsLikeAsciiStl(bytes: Uint8Array): boolean {
  const c: Cursor = { bytes, from: 0, to: afterByteOrderMark(bytes) };
  return next(c) && isWord(bytes, c.from, c.to, 'solid');
}

/**
 * ASCII STL, one or more solids, every keyword in its place. Strict: a token out of place, a number that is not one,
 * a facet without exactly three vertices or a missing endsolid is an error with its line, never a dropped facet.
 * Errors: SYNTAX, BAD_NUMBER, COORD_RANGE, TRUNCATED, NO_TRIANGLES, TOO_LARGE.
 */
export function readAsciiStl(bytes: Uint8Array): Outcome<ScanFile> {
  const c: Cursor = { bytes, from: 0, to: afterByteOrderMark(bytes) };
  const corners = numberList();
  try {
    expectWord(c, 'solid');
    do readSolid(c, corners);
    while (nextSolid(c));
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    return bad(e.code, e.values, { line: lineAt(bytes, e.at), byte: e.at });
  }
  if (corners.length === 0) return bad('NO_TRIANGLES');
  const soup = corners.data.slice(0, corners.length);
  let largest = 0;
  for (const x of soup) largest = Math.max(largest, Math.abs(x));
  return good({
    mesh: weldSoup(soup),
    format: 'stl',
    trianglesRead: soup.length / 9,
    coordinateStep: float32Step(largest),
    findings: [],
  });
}

function readSolid(c: Cursor, corners: ReturnType<typeof numberList>): void {
  skipName(c);
  for (;;) {
    needToken(c, 'facet or endsolid');
    if (isWord(c.bytes, c.from, c.to, 'endsolid')) return;
    if (!isWord(c.bytes, c.from, c.to, 'facet')) throw outOfPlace(c, 'facet or endsolid');
    if (corners.length >= 9 * TRIANGLE_LIMIT) throw tooLarge(c, corners.length / 9 + 1);
    expectWord(c, 'normal');
    for (let k = 0; k < 3; k++) needToken(c, 'a normal');
    expectWord(c, 'outer');
    expectWord(c, 'loop');
    for (let v = 0; v < 3; v++) {
      expectWord(c, 'vertex');
      for (let k = 0; k < 3; k++) push(corners, coordinate(c));
    }
    expectWord(c, 'endloop');
    expectWord(c, 'endfacet');
  }
}

function coordinate(c: Cursor): number {
  needToken(c, 'a coordinate');
  const x = numberIn(c.bytes, c.from, c.to);
  if (!Number.isFinite(x)) throw new Refusal('BAD_NUMBER', { text: excerpt(c.bytes, c.from, c.to) }, c.from);
  if (Math.abs(x) > COORDINATE_LIMIT) {
    throw new Refusal(
      'COORD_RANGE',
      { text: excerpt(c.bytes, c.from, c.to), limit: COORDINATE_LIMIT },
      c.from,
    );
  }
  return x;
}

/** A solid's name is free text to the end of its line, unless the whole file stands on one line. */
function skipName(c: Cursor): void {
  const { bytes } = c;
  for (let i = c.to; ;) {
    const mark = i;
    while (i < bytes.length && isBlank(bytes[i]!) && !isLineEnd(bytes[i]!)) i++;
    const from = i;
    while (i < bytes.length && !isBlank(bytes[i]!)) i++;
    const opens = isWord(bytes, from, i, 'facet') && isWord(bytes, i + 1, i + 7, 'normal');
    if (from < i && !opens && !isWord(bytes, from, i, 'endsolid')) continue;
    // At the end of the line, or before the first word that is no part of the name.
    c.to = from < i ? mark : i;
    return;
  }
}

/** After an endsolid: is there another solid? The name behind endsolid is skipped. */
function nextSolid(c: Cursor): boolean {
  const { bytes } = c;
  while (c.to < bytes.length && !isLineEnd(bytes[c.to]!)) {
    if (!next(c)) return false;
    if (isWord(bytes, c.from, c.to, 'solid')) return true;
  }
  if (!next(c)) return false;
  if (!isWord(bytes, c.from, c.to, 'solid')) throw outOfPlace(c, 'solid or the end of the file');
  return true;
}

function next(c: Cursor): boolean {
  const { bytes } = c;
  let i = c.to;
  while (i < bytes.length && isBlank(bytes[i]!)) i++;
  if (i >= bytes.length) return false;
  c.from = i;
  while (i < bytes.length && !isBlank(bytes[i]!)) i++;
  c.to = i;
  return true;
}

function needToken(c: Cursor, expected: string): void {
  if (!next(c)) throw new Refusal('TRUNCATED', { expected }, c.bytes.length);
}

function expectWord(c: Cursor, word: string): void {
  needToken(c, word);
  if (!isWord(c.bytes, c.from, c.to, word)) throw outOfPlace(c, word);
}

const outOfPlace = (c: Cursor, expected: string): Refusal =>
  new Refusal('SYNTAX', { expected, text: excerpt(c.bytes, c.from, c.to) }, c.from);

const tooLarge = (c: Cursor, count: number): Refusal =>
  new Refusal('TOO_LARGE', { part: 'triangles', count, limit: TRIANGLE_LIMIT }, c.from);
