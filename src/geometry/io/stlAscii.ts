import { bad, type Outcome } from '../../problem';
import { Refusal } from './refusal';
import { COORDINATE_LIMIT, TRIANGLE_LIMIT, type ScanFile } from './scanFile';
import { goodIfWhole, noteSlip, type Slips } from './slips';
import { float32Step } from './stlBinary';
import { facetWithin, skipName } from './stlName';
import { afterByteOrderMark, excerpt, isBlank, isLineEnd, lineAt, numberIn, numberList, push } from './text';
import { isToken, next, nextByte, type Cursor } from './tokens';
import { weldSoup } from './weld';

export function startsLikeAsciiStl(bytes: Uint8Array): boolean {
  const c = cursorOf(bytes);
  return nextWord(c) && isToken(c, 'solid');
}

/** Where the reader stands, what it collected, and what it read past. */
interface Reading extends Cursor {
  corners: ReturnType<typeof numberList>;
  slips: Slips;
}

const cursorOf = (bytes: Uint8Array): Reading => ({
  bytes,
  from: 0,
  to: afterByteOrderMark(bytes),
  lineEnd: -1,
  corners: numberList(),
  slips: new Map(),
});

/**
 * ASCII STL, one or more solids. Strict in what makes the shape: a number that is not one, a facet without exactly three vertices is
 * an error with its line, never a dropped facet. A keyword that is missing, a remark or a missing endsolid is read past where the surface proves
 * that all of it is there, and said; else it is an error, too.
 * Errors: SYNTAX, BAD_NUMBER, COORD_RANGE, TRUNCATED, NO_TRIANGLES, TOO_LARGE.
 */
export function readAsciiStl(bytes: Uint8Array): Outcome<ScanFile> {
  const c = cursorOf(bytes);
  const { corners, slips } = c;
  try {
    expectWord(c, 'solid');
    do readSolid(c);
    while (nextSolid(c));
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    // What comes first in the file is its error.
    const [first] = slips.values();
    const { code, values, at } = first ?? e;
    return bad(code, values, at);
  }
  if (corners.length === 0) return bad('NO_TRIANGLES');
  const soup = corners.data.slice(0, corners.length);
  let largest = 0;
  for (const x of soup) largest = Math.max(largest, Math.abs(x));
  const scan: ScanFile = {
    mesh: weldSoup(soup),
    format: 'stl',
    trianglesRead: soup.length / 9,
    coordinateStep: float32Step(largest),
    findings: [],
  };
  return goodIfWhole(scan, slips);
}

function readSolid(c: Reading): void {
  const odd = skipName(c);
  if (odd !== undefined)
    slipAt(c, 'SYNTAX', { expected: 'a name', text: excerpt(c.bytes, odd, odd + 8) }, odd);
  for (;;) {
    if (!nextWord(c)) {
      if (c.corners.length === 0)
        throw new Refusal('TRUNCATED', { expected: 'facet or endsolid' }, placeAt(c, c.bytes.length));
      slipAt(c, 'TRUNCATED', { expected: 'endsolid' }, c.bytes.length);
      return;
    }
    if (isToken(c, 'endsolid')) return;
    if (!isToken(c, 'facet')) throw outOfPlace(c, 'facet or endsolid');
    if (c.corners.length >= 9 * TRIANGLE_LIMIT) throw tooLarge(c, c.corners.length / 9 + 1);
    readFacet(c);
  }
}

function readFacet(c: Reading): void {
  if (passWord(c, 'normal')) for (let k = 0; k < 3; k++) passNormal(c);
  if (passWord(c, 'outer')) expectWord(c, 'loop');
  for (let v = 0; v < 3; v++) {
    expectWord(c, 'vertex');
    for (let k = 0; k < 3; k++) push(c.corners, coordinate(c));
    passWeight(c);
  }
  passWord(c, 'endloop');
  passWord(c, 'endfacet');
}

/** Normals are not used: any word will do, but for one of the grammar, as then the normal is not all there. */
function passNormal(c: Reading): void {
  needToken(c, 'a normal');
  if (GRAMMAR.some((word) => isToken(c, word))) throw outOfPlace(c, 'a normal');
}

const GRAMMAR = ['solid', 'facet', 'normal', 'outer', 'loop', 'vertex', 'endloop', 'endfacet', 'endsolid'];

function coordinate(c: Reading): number {
  if (!next(c)) throw new Refusal('TRUNCATED', { expected: 'a coordinate' }, placeAt(c, c.bytes.length));
  const x = numberIn(c.bytes, c.from, c.to);
  if (Math.abs(x) <= COORDINATE_LIMIT) return x;
  const text = excerpt(c.bytes, c.from, c.to);
  throw Number.isFinite(x)
    ? new Refusal('COORD_RANGE', { text, limit: COORDINATE_LIMIT }, placeAt(c, c.from))
    : new Refusal('BAD_NUMBER', { text }, placeAt(c, c.from));
}

/** Some write a weight of 1 behind a vertex, as OBJ has it. */
function passWeight(c: Reading): void {
  const before = c.to;
  const first = nextByte(c);
  if (first !== ONE && first !== PLUS) return;
  next(c);
  if (numberIn(c.bytes, c.from, c.to) !== 1) {
    c.to = before;
    return;
  }
  slipAt(c, 'SYNTAX', { expected: '3 numbers', text: '4 numbers' }, c.from);
}

/** After an endsolid: is there another solid? The name behind endsolid is skipped; the word solid may stand in it. */
function nextSolid(c: Reading): boolean {
  const { bytes, to: start } = c;
  let solid: { from: number; to: number } | undefined;
  for (;;) {
    while (c.to < bytes.length && isBlank(bytes[c.to]!) && !isLineEnd(bytes[c.to]!)) c.to++;
    if (c.to >= bytes.length || isLineEnd(bytes[c.to]!)) break;
    next(c);
    if (isToken(c, 'solid')) solid ??= { from: c.from, to: c.to };
    // Only where the whole file stands on one line does a facet follow there.
    if (solid === undefined || !isToken(c, 'facet')) continue;
    Object.assign(c, solid);
    return true;
  }
  refuseFacets(c, start);
  if (!nextWord(c)) return false;
  if (!isToken(c, 'solid')) throw outOfPlace(c, 'solid or the end of the file');
  return true;
}

/** The next word that is neither a remark nor a zero byte: STL has neither, and they are said. */
function nextWord(c: Reading): boolean {
  while (next(c)) {
    const first = c.bytes[c.from]!;
    if (first > SEMICOLON) return true;
    if (first !== HASH && first !== SEMICOLON && first !== 0) return true;
    slipAt(c, 'SYNTAX', { expected: 'a keyword', text: excerpt(c.bytes, c.from, c.to) }, c.from);
    if (first === 0) {
      c.to = c.from + 1;
      continue;
    }
    while (c.to < c.bytes.length && !isLineEnd(c.bytes[c.to]!)) c.to++;
    refuseFacets(c, c.from + 1);
  }
  return false;
}

/** What is passed over as a name or a remark, up to where the reader stands, must hold no facets: a body may be made of them. */
function refuseFacets(c: Reading, from: number): void {
  const facet = facetWithin(c.bytes, from, c.to);
  if (facet === undefined) return;
  throw new Refusal(
    'SYNTAX',
    { expected: 'solid', text: excerpt(c.bytes, facet, facet + 5) },
    placeAt(c, facet),
  );
}

const [HASH, PLUS, ONE, SEMICOLON] = [35, 43, 49, 59];

function needToken(c: Reading, expected: string): void {
  if (!nextWord(c)) throw new Refusal('TRUNCATED', { expected }, placeAt(c, c.bytes.length));
}

function expectWord(c: Reading, word: string): void {
  needToken(c, word);
  if (!isToken(c, word)) throw outOfPlace(c, word);
}

/** A keyword that adds nothing to the shape: is it there? */
function passWord(c: Reading, word: string): boolean {
  const before = c.to;
  needToken(c, word);
  if (isToken(c, word)) return true;
  slipAt(c, 'SYNTAX', { expected: word, text: excerpt(c.bytes, c.from, c.to) }, c.from);
  c.to = before;
  return false;
}

function slipAt(
  c: Reading,
  code: 'SYNTAX' | 'TRUNCATED',
  values: Record<string, string>,
  byte: number,
): void {
  // Where it stands is looked up for the first of its kind only: that walks the file.
  const at = c.slips.has(code) ? undefined : placeAt(c, byte);
  noteSlip(c.slips, { code, values, found: values, ...(at === undefined ? {} : { at }) });
}

const placeAt = ({ bytes }: Cursor, byte: number): { line: number; byte: number } => ({
  line: lineAt(bytes, byte),
  byte,
});

const outOfPlace = (c: Reading, expected: string): Refusal =>
  new Refusal('SYNTAX', { expected, text: excerpt(c.bytes, c.from, c.to) }, placeAt(c, c.from));

const tooLarge = (c: Reading, count: number): Refusal =>
  new Refusal('TOO_LARGE', { part: 'triangles', count, limit: TRIANGLE_LIMIT }, placeAt(c, c.from));
