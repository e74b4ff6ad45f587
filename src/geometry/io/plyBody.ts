import type { Place } from '../../problem';
import { PLY_BYTES, type PlyFormat, type PlyType } from './plyHeader';
import { Refusal } from './refusal';
import { excerpt, isBlank, isLineEnd, lineAt, numberIn } from './text';

/** The values behind a header, one after the other. */
export interface PlyBody {
  /** Byte of the value read last. */
  at: number;
  next(type: PlyType): number;
  /** The same for a value that is not used: it must be a number, or the name of one that is none. */
  pass(type: PlyType): void;
  /** Called where a row must end. */
  endRow(): void;
  /** Called where the file must end. */
  endFile(): void;
  placeOf(byte: number): Place;
  /** The value read last, for a message. */
  text(): string;
}

export const plyBody = (bytes: Uint8Array, start: number, format: PlyFormat): PlyBody =>
  format === 'ascii' ? asciiBody(bytes, start) : binaryBody(bytes, start, format === 'binary_little_endian');

/** Values apart by blanks, a row a line: a value too few or too many is an error, never taken from the next row. */
function asciiBody(bytes: Uint8Array, start: number): PlyBody {
  let i = start;
  let rowStarted = false;
  let to = start;
  const placeOf = (byte: number): Place => ({ line: lineAt(bytes, byte), byte });
  const outOfPlace = (expected: string): Refusal => {
    let end = i;
    while (end < bytes.length && !isBlank(bytes[end]!)) end++;
    const text = isLineEnd(bytes[i]!) ? 'the end of the line' : excerpt(bytes, i, end);
    return new Refusal('SYNTAX', { expected, text }, placeOf(i));
  };
  const body: PlyBody = {
    at: start,
    next() {
      while (i < bytes.length && isBlank(bytes[i]!) && !(rowStarted && isLineEnd(bytes[i]!))) i++;
      if (i >= bytes.length) throw new Refusal('TRUNCATED', { expected: 'a number' }, placeOf(i));
      if (isLineEnd(bytes[i]!)) throw outOfPlace('a number');
      body.at = i;
      while (i < bytes.length && !isBlank(bytes[i]!)) i++;
      to = i;
      rowStarted = true;
      return numberIn(bytes, body.at, to);
    },
    pass(type) {
      if (Number.isNaN(body.next(type)) && !NO_NUMBER.test(body.text()))
        throw new Refusal('BAD_NUMBER', { text: body.text() }, placeOf(body.at));
    },
    endRow() {
      while (i < bytes.length && isBlank(bytes[i]!) && !isLineEnd(bytes[i]!)) i++;
      if (i < bytes.length && !isLineEnd(bytes[i]!)) throw outOfPlace('the end of the line');
      rowStarted = false;
    },
    endFile() {
      while (i < bytes.length && isBlank(bytes[i]!)) i++;
      if (i < bytes.length) throw trailing(bytes.length - i, placeOf(i));
    },
    placeOf,
    text: () => excerpt(bytes, body.at, to),
  };
  return body;
}

function binaryBody(bytes: Uint8Array, start: number, little: boolean): PlyBody {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let i = start;
  let last = NaN;
  const body: PlyBody = {
    at: start,
    next(type) {
      body.at = i;
      if (i + PLY_BYTES[type] > bytes.length)
        throw new Refusal('TRUNCATED', { expected: 'a number' }, { byte: bytes.length });
      last = READ[type](view, i, little);
      i += PLY_BYTES[type];
      return last;
    },
    pass: (type) => void body.next(type),
    endRow() {
      // Rows of a binary body have no mark at their end.
    },
    endFile() {
      const from = i;
      while (i < bytes.length && isBlank(bytes[i]!)) i++;
      if (i < bytes.length) throw trailing(bytes.length - from, { byte: from });
    },
    placeOf: (byte) => ({ byte }),
    text: () => String(last),
  };
  return body;
}

/** How programs write that a normal or a quality is none (C99's "nan" and "inf", and "1.#QNAN" of one maker's C). */
const NO_NUMBER = /^[-+]?(nan|inf|1\.#)/i;

/** Smallest and largest of each type of whole numbers. */
const RANGES = new Map(
  (Object.keys(PLY_BYTES) as PlyType[])
    .filter((type) => !/^(float|double)/.test(type))
    .map((type) => {
      const count = 2 ** (8 * PLY_BYTES[type]);
      return [type, type.startsWith('u') ? [0, count - 1] : [-count / 2, count / 2 - 1]] as const;
    }),
);

/** Text may give a value that its type cannot have: programs cut it down in ways of their own. */
export function isOfType(type: PlyType, value: number): boolean {
  const range = RANGES.get(type);
  return range === undefined
    ? Number.isFinite(value)
    : Number.isInteger(value) && value >= range[0]! && value <= range[1]!;
}

const trailing = (count: number, at: Place): Refusal => new Refusal('TRAILING_DATA', { bytes: count }, at);

type Read = (view: DataView, at: number, little: boolean) => number;

const int8: Read = (view, at) => view.getInt8(at);
const uint8: Read = (view, at) => view.getUint8(at);
const int16: Read = (view, at, little) => view.getInt16(at, little);
const uint16: Read = (view, at, little) => view.getUint16(at, little);
const int32: Read = (view, at, little) => view.getInt32(at, little);
const uint32: Read = (view, at, little) => view.getUint32(at, little);
const float32: Read = (view, at, little) => view.getFloat32(at, little);
const float64: Read = (view, at, little) => view.getFloat64(at, little);

const READ: Readonly<Record<PlyType, Read>> = {
  char: int8,
  int8,
  uchar: uint8,
  uint8,
  short: int16,
  int16,
  ushort: uint16,
  uint16,
  int: int32,
  int32,
  uint: uint32,
  uint32,
  float: float32,
  float32,
  double: float64,
  float64,
};
