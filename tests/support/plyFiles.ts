import { textBytes } from './writeMesh';

/** A box of 40 x 30 x 20 in every form of PLY, and what a test wants otherwise. */

export const CORNERS = [
  [0, 0, 0],
  [40, 0, 0],
  [40, 30, 0],
  [0, 30, 0],
  [0, 0, 20],
  [40, 0, 20],
  [40, 30, 20],
  [0, 30, 20],
];
export const QUADS = [
  [0, 3, 2, 1],
  [4, 5, 6, 7],
  [0, 1, 5, 4],
  [1, 2, 6, 5],
  [2, 3, 7, 6],
  [3, 0, 4, 7],
];
export const TRIANGLES = QUADS.flatMap(([a, b, c, d]) => [
  [a!, b!, c!],
  [a!, c!, d!],
]);

export interface Wish {
  format?: string;
  vertex?: readonly string[];
  face?: readonly string[];
  faces?: readonly (readonly number[])[];
  /** Elements between header and vertices, with their rows as text. */
  ahead?: string;
  aheadRows?: string;
  vertexTail?: string;
}

export const XYZ = ['float x', 'float y', 'float z'];
export const headerOf = ({ format = 'ascii', vertex = XYZ, face, faces = QUADS, ahead = '' }: Wish): string =>
  [
    'ply',
    `format ${format} 1.0`,
    'comment made by a test',
    ...(ahead === '' ? [] : [ahead]),
    `element vertex ${CORNERS.length}`,
    ...vertex.map((p) => `property ${p}`),
    `element face ${faces.length}`,
    ...(face ?? ['list uchar int vertex_indices']).map((p) => `property ${p}`),
    'end_header\n',
  ].join('\n');

export const ascii = (wish: Wish = {}): string => {
  const { faces = QUADS, aheadRows = '', vertexTail = '' } = wish;
  return [
    headerOf(wish) + aheadRows,
    ...CORNERS.map((p) => `${p.join(' ')}${vertexTail}\n`),
    ...faces.map((f) => `${f.length} ${f.join(' ')}\n`),
  ].join('');
};

export type Scalar = 'Int8' | 'Uint8' | 'Int16' | 'Int32' | 'Uint32' | 'Float32' | 'Float64';
const BYTES: Record<Scalar, number> = {
  Int8: 1,
  Uint8: 1,
  Int16: 2,
  Int32: 4,
  Uint32: 4,
  Float32: 4,
  Float64: 8,
};

/** A binary file: the header, and values of the types given. */
export function binary(header: string, values: readonly [Scalar, number][], little: boolean): Uint8Array {
  const head = textBytes(header);
  const bytes = new Uint8Array(head.length + values.reduce((sum, [type]) => sum + BYTES[type], 0));
  bytes.set(head);
  const view = new DataView(bytes.buffer);
  let at = head.length;
  for (const [type, value] of values) {
    view[`set${type}`](at, value, little);
    at += BYTES[type];
  }
  return bytes;
}

export const rows = (coordinate: Scalar, count: Scalar, index: Scalar, faces = QUADS): [Scalar, number][] => [
  ...CORNERS.flat().map((x): [Scalar, number] => [coordinate, x]),
  ...faces.flatMap((f): [Scalar, number][] => [
    [count, f.length],
    ...f.map((v): [Scalar, number] => [index, v]),
  ]),
];
export const LE = 'binary_little_endian';
export const BE = 'binary_big_endian';
export const little = binary(headerOf({ format: LE }), rows('Float32', 'Uint8', 'Int32'), true);
export const big = binary(headerOf({ format: BE }), rows('Float32', 'Uint8', 'Int32'), false);
