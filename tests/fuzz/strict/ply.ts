import { decimal, refuse, type StrictShape } from './shape';

/**
 * PLY (Turk, "The PLY polygon file format", 1994; from memory). Words of the header may be of either case; names of properties may not.
 * A row of text is a line, numbers fit their types, every name stands once, and nothing follows the last row but blanks.
 */

type Read = (file: Buffer, at: number, little: boolean) => number;
interface Scalar {
  bytes: number;
  read: Read;
  /** Bounds of a whole number. */
  whole?: [number, number];
}

const int8: Scalar = { bytes: 1, read: (file, at) => file.readInt8(at), whole: [-128, 127] };
const uint8: Scalar = { bytes: 1, read: (file, at) => file.readUInt8(at), whole: [0, 255] };
const wholeOf = (bytes: 2 | 4, signed: boolean): Scalar => ({
  bytes,
  read: (file, at, little) =>
    little
      ? signed
        ? file.readIntLE(at, bytes)
        : file.readUIntLE(at, bytes)
      : signed
        ? file.readIntBE(at, bytes)
        : file.readUIntBE(at, bytes),
  whole: signed ? [-(2 ** (8 * bytes - 1)), 2 ** (8 * bytes - 1) - 1] : [0, 2 ** (8 * bytes) - 1],
});
const float: Scalar = {
  bytes: 4,
  read: (file, at, little) => (little ? file.readFloatLE(at) : file.readFloatBE(at)),
};
const double: Scalar = {
  bytes: 8,
  read: (file, at, little) => (little ? file.readDoubleLE(at) : file.readDoubleBE(at)),
};

const SCALARS = new Map<string, Scalar>([
  ...(['char', 'int8'] as const).map((name) => [name, int8] as const),
  ...(['uchar', 'uint8'] as const).map((name) => [name, uint8] as const),
  ...(['short', 'int16'] as const).map((name) => [name, wholeOf(2, true)] as const),
  ...(['ushort', 'uint16'] as const).map((name) => [name, wholeOf(2, false)] as const),
  ...(['int', 'int32'] as const).map((name) => [name, wholeOf(4, true)] as const),
  ...(['uint', 'uint32'] as const).map((name) => [name, wholeOf(4, false)] as const),
  ...(['float', 'float32'] as const).map((name) => [name, float] as const),
  ...(['double', 'float64'] as const).map((name) => [name, double] as const),
]);

interface Property {
  name: string;
  scalar: Scalar;
  count?: Scalar;
}
interface Element {
  name: string;
  count: number;
  properties: Property[];
}

export function strictPly(bytes: Uint8Array): StrictShape {
  const file = Buffer.from(
    bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? bytes.subarray(3) : bytes,
  );
  const { format, elements, end } = headerOf(file);
  const rows = format === 'ascii' ? textRows(file, end) : binaryRows(file, end, format);
  const shape: StrictShape = { points: [], faces: [] };
  for (const { name, count, properties } of elements) {
    for (let row = 0; row < count; row++) {
      const values = new Map(properties.map((property) => [property.name, rows.take(property)]));
      rows.endRow();
      if (name === 'vertex') shape.points.push(['x', 'y', 'z'].map((axis) => values.get(axis)![0]!));
      if (name === 'face') shape.faces.push(listOf(values));
    }
  }
  rows.endFile();
  if (!shape.points.flat().every((x) => Number.isFinite(x))) refuse('a number too large');
  return shape;
}

const listOf = (values: Map<string, number[]>): number[] =>
  values.get('vertex_indices') ?? values.get('vertex_index') ?? refuse('no list of corners');

function headerOf(file: Buffer): { format: string; elements: Element[]; end: number } {
  const text = file.toString('latin1');
  const lineEnd = /^ply(\r\n|\n|\r)/i.exec(text)?.[1] ?? refuse('does not start with ply');
  const elements: Element[] = [];
  let format: string | undefined;
  for (let at = 3 + lineEnd.length; ;) {
    const [whole, line, ended] = /^([^\r\n]*)(\r\n|\r|\n|$)/.exec(text.slice(at))!;
    const words = line!.split(/[ \t\v\f]+/).filter((word) => word !== '');
    const key = words[0]?.toLowerCase();
    at += whole.length;
    if (key === 'end_header' && format !== undefined) {
      // A body may begin with a byte that looks like the end of a line: how long one is, the first says.
      const tooFar = format === 'ascii' ? 0 : Math.max(0, ended!.length - lineEnd.length);
      return { format, elements: checked(elements), end: at - tooFar };
    }
    if (ended === '') refuse('no end of the header');
    if (key === undefined || key === 'comment' || key === 'obj_info') continue;
    if (key === 'format' && format === undefined && words.length === 3 && words[2] === '1.0')
      format = words[1]!.toLowerCase();
    else if (key === 'element' && words.length === 3 && /^\d+$/.test(words[2]!))
      elements.push({ name: words[1]!, count: Number(words[2]), properties: [] });
    else if (key === 'property' && elements.length > 0)
      elements.at(-1)!.properties.push(propertyOf(words.slice(1)));
    else refuse(`a line ${words.join(' ')}`);
  }
}

function propertyOf(words: string[]): Property {
  const isList = words[0]?.toLowerCase() === 'list';
  const [name, type, countType] = isList ? [words[3], words[2], words[1]] : [words[1], words[0]];
  const [scalar, count] = [SCALARS.get(type ?? ''), SCALARS.get(countType ?? '')];
  if (words.length !== (isList ? 4 : 2) || name === undefined || scalar === undefined) refuse('a property');
  if (!isList) return { name, scalar };
  if (count?.whole === undefined) refuse('the count of a list');
  return { name, scalar, count };
}

function checked(elements: Element[]): Element[] {
  const once = (names: string[], what: string): void => {
    if (new Set(names).size < names.length) refuse(`${what} twice`);
  };
  once(
    elements.map(({ name }) => name),
    'an element',
  );
  for (const { name, count, properties } of elements) {
    once(
      properties.map((property) => property.name),
      'a property',
    );
    if (count > 0 && properties.length === 0) refuse(`no property of ${name}`);
    if (name === 'tristrips' && count > 0) refuse('strips');
    const isOne = (axis: string): boolean => properties.some((p) => p.name === axis && p.count === undefined);
    if (name === 'vertex' && !['x', 'y', 'z'].every(isOne)) refuse('no x, y, z');
  }
  const face = elements.find(({ name }) => name === 'face');
  const lists = face?.properties.filter(({ name }) => /^vertex_(index|indices)$/.test(name)) ?? [];
  if (lists.length !== 1 || lists[0]!.count === undefined) refuse('no one list of corners');
  return elements;
}

interface Rows {
  take: (property: Property) => number[];
  endRow: () => void;
  endFile: () => void;
}

/** Of values that make no shape only that they are numbers counts, or names of numbers that are none. */
const USED = ['x', 'y', 'z', 'vertex_indices', 'vertex_index'];

function textRows(file: Buffer, end: number): Rows {
  const lines = file
    .subarray(end)
    .toString('latin1')
    .split(/\r\n|\r|\n/)
    .map((line) => line.split(/[ \t\v\f]+/).filter((word) => word !== ''))
    .filter((words) => words.length > 0);
  let words = lines.shift() ?? [];
  const one = ({ whole }: Scalar, isUsed = true): number => {
    const text = words.shift();
    if (!isUsed && /^[-+]?(nan|inf|1\.#)/i.test(text ?? '')) return NaN;
    const value = decimal(text);
    if (!isUsed) return value;
    if (whole !== undefined && !(Number.isInteger(value) && value >= whole[0] && value <= whole[1]))
      refuse(`${value} is not of its type`);
    return value;
  };
  return {
    take: ({ name, scalar, count }) => {
      const isUsed = USED.includes(name);
      if (count === undefined) return [one(scalar, isUsed)];
      const length = one(count);
      if (length > words.length) refuse('a list longer than its line');
      return Array.from({ length }, () => one(scalar, isUsed));
    },
    endRow: () => {
      if (words.length > 0) refuse('more on a line than its row');
      words = lines.shift() ?? [];
    },
    endFile: () => {
      if (words.length > 0) refuse('more than its rows');
    },
  };
}

function binaryRows(file: Buffer, end: number, format: string): Rows {
  if (format !== 'binary_little_endian' && format !== 'binary_big_endian') refuse(`format ${format}`);
  const little = format === 'binary_little_endian';
  let at = end;
  const one = ({ bytes, read }: Scalar): number => {
    if (at + bytes > file.length) refuse('cut off');
    at += bytes;
    return read(file, at - bytes, little);
  };
  return {
    take: ({ scalar, count }) => {
      if (count === undefined) return [one(scalar)];
      const length = one(count);
      if (length < 0 || at + length * scalar.bytes > file.length) refuse('a list over the end');
      return Array.from({ length }, () => one(scalar));
    },
    endRow: () => undefined,
    endFile: () => {
      if (!/^[ \t-\r]*$/.test(file.subarray(at).toString('latin1'))) refuse('more than its rows');
    },
  };
}
