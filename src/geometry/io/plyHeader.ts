import { bad, good, type Outcome } from '../../problem';
import { afterByteOrderMark, excerpt, isBlank, isLineEnd, isWord, lineAt, numberIn } from './text';

/** Bytes of each scalar type of PLY, under both sets of names (Turk 1994, "The PLY polygon file format", from memory). */
export const PLY_BYTES = {
  char: 1,
  int8: 1,
  uchar: 1,
  uint8: 1,
  short: 2,
  int16: 2,
  ushort: 2,
  uint16: 2,
  int: 4,
  int32: 4,
  uint: 4,
  uint32: 4,
  float: 4,
  float32: 4,
  double: 8,
  float64: 8,
} as const;
export type PlyType = keyof typeof PLY_BYTES;

export interface PlyProperty {
  name: string;
  type: PlyType;
  /** The type of the count in front of a list. */
  countType?: PlyType;
}

export interface PlyElement {
  name: string;
  count: number;
  properties: PlyProperty[];
}

export const PLY_FORMATS = ['ascii', 'binary_little_endian', 'binary_big_endian'] as const;
export type PlyFormat = (typeof PLY_FORMATS)[number];

export interface PlyHeader {
  format: PlyFormat;
  elements: PlyElement[];
  /** First byte behind the header. */
  end: number;
}

/** A longer line, or a header with more of them, is no header. Chosen here. */
const LINE_LIMIT = 4096;
const LINES_LIMIT = 2048;

/** Does the file start with the word "ply" on a line of its own? */
export function startsLikePly(bytes: Uint8Array): boolean {
  const at = afterByteOrderMark(bytes);
  return isWord(bytes, at, at + 3, 'ply') && isLineEnd(bytes[at + 3] ?? 0);
}

interface HeaderLine {
  bytes: Uint8Array;
  /** [from, to) of each word. */
  words: [number, number][];
}

/** Header lines in their order. Errors with their line: SYNTAX, BAD_NUMBER, TRUNCATED. */
export function readPlyHeader(bytes: Uint8Array): Outcome<PlyHeader> {
  let format: PlyFormat | undefined;
  const elements: PlyElement[] = [];
  const first = afterByteOrderMark(bytes) + 3;
  // Before a binary body it matters which bytes end a line: those that end the first one.
  const crLf = endsCrLf(bytes, first);
  for (let at = first + (crLf ? 2 : 1), lines = 0; at < bytes.length; lines++) {
    const stop = lineStop(bytes, at);
    if (stop === undefined || lines > LINES_LIMIT)
      return outOfPlace(bytes, at, at + 24, 'a line of the header');
    const line = { bytes, words: wordsIn(bytes, at, stop) };
    const is = (k: number, word: string): boolean => sameWord(line, k, word);
    if (is(0, 'end_header')) {
      if (format === undefined) return outOfPlace(bytes, at, stop, 'format');
      return good({
        format,
        elements,
        end: Math.min(bytes.length, stop + (crLf && endsCrLf(bytes, stop) ? 2 : 1)),
      });
    }
    if (is(0, 'format')) {
      if (format !== undefined) return outOfPlace(bytes, at, stop, 'one format');
      format = PLY_FORMATS.find((name) => is(1, name));
      if (format === undefined || !is(2, '1.0') || line.words.length !== 3)
        return outOfPlace(bytes, at, stop, `format ${PLY_FORMATS.join(' or ')} 1.0`);
    } else if (is(0, 'element')) {
      const element = elementOf(line, at, stop);
      if (!element.ok) return element;
      elements.push(element.value);
    } else if (is(0, 'property') && elements.length > 0) {
      const property = propertyOf(line);
      if (property === undefined) return outOfPlace(bytes, at, stop, 'property and its type');
      const { properties } = elements.at(-1)!;
      if (properties.some(({ name }) => name === property.name))
        return outOfPlace(bytes, at, stop, 'a property of another name');
      properties.push(property);
    } else if (line.words.length > 0 && !is(0, 'comment') && !is(0, 'obj_info'))
      return outOfPlace(bytes, at, stop, 'element, property or end_header');
    at = stop + (endsCrLf(bytes, stop) ? 2 : 1);
  }
  return bad(
    'TRUNCATED',
    { expected: 'end_header' },
    { line: lineAt(bytes, bytes.length), byte: bytes.length },
  );
}

const endsCrLf = (bytes: Uint8Array, stop: number): boolean => bytes[stop] === 13 && bytes[stop + 1] === 10;

/** Where the line ends, or undefined where it is longer than any of a header. */
function lineStop(bytes: Uint8Array, at: number): number | undefined {
  const furthest = Math.min(bytes.length, at + LINE_LIMIT);
  for (let i = at; i < furthest; i++) if (isLineEnd(bytes[i]!)) return i;
  return furthest === bytes.length ? bytes.length : undefined;
}

function wordsIn(bytes: Uint8Array, from: number, to: number): [number, number][] {
  const words: [number, number][] = [];
  for (let i = from; i < to;) {
    if (isBlank(bytes[i]!)) {
      i++;
      continue;
    }
    const start = i;
    while (i < to && !isBlank(bytes[i]!)) i++;
    words.push([start, i]);
  }
  return words;
}

const sameWord = ({ bytes, words }: HeaderLine, k: number, word: string): boolean =>
  words[k] !== undefined && isWord(bytes, words[k][0], words[k][1], word);

const textOf = ({ bytes, words }: HeaderLine, k: number): string =>
  words[k] === undefined ? '' : excerpt(bytes, ...words[k]);

function elementOf(line: HeaderLine, at: number, stop: number): Outcome<PlyElement> {
  const { bytes, words } = line;
  if (words.length !== 3) return outOfPlace(bytes, at, stop, 'element, its name and its count');
  const [from, to] = words[2]!;
  // Digits alone: a sign, a point or an exponent is no part of a count.
  const count = bytes.subarray(from, to).every((byte) => byte >= 48 && byte <= 57)
    ? numberIn(bytes, from, to)
    : NaN;
  if (!Number.isSafeInteger(count) || count < 0)
    return bad(
      'BAD_NUMBER',
      { part: 'count', text: textOf(line, 2) },
      { line: lineAt(bytes, at), byte: from },
    );
  return good({ name: textOf(line, 1), count, properties: [] });
}

function propertyOf(line: HeaderLine): PlyProperty | undefined {
  if (sameWord(line, 1, 'list')) {
    const [countType, type] = [textOf(line, 2), textOf(line, 3)];
    if (line.words.length !== 5 || !isType(countType) || !isType(type) || isFraction(countType))
      return undefined;
    return { name: textOf(line, 4), type, countType };
  }
  const type = textOf(line, 1);
  return line.words.length === 3 && isType(type) ? { name: textOf(line, 2), type } : undefined;
}

const isType = (text: string): text is PlyType => Object.hasOwn(PLY_BYTES, text);

const isFraction = (type: PlyType): boolean => type.startsWith('float') || type === 'double';

const outOfPlace = (bytes: Uint8Array, from: number, to: number, expected: string): ReturnType<typeof bad> =>
  bad('SYNTAX', { expected, text: excerpt(bytes, from, to) }, { line: lineAt(bytes, from), byte: from });
