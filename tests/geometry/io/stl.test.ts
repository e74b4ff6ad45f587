import { describe, expect, it } from 'vitest';
import { divergenceVolume, readScan } from '../../../src/geometry';
import type { Code, Place } from '../../../src/problem';
import { expectClose } from '../../support/close';
import { problemOf, valueOf } from '../../support/outcome';
import { box, icosphere } from '../../support/shapes';
import { stlBytes, stlText, textBytes } from '../../support/writeMesh';

const BOX = box([40, 30, 20]);
const read = (bytes: Uint8Array | string): ReturnType<typeof readScan> =>
  readScan({ bytes: typeof bytes === 'string' ? textBytes(bytes) : bytes, name: 'scan.stl' });

const facet = (a: string, b: string, c: string, normal = '0 0 0'): string =>
  `facet normal ${normal}\nouter loop\nvertex ${a}\nvertex ${b}\nvertex ${c}\nendloop\nendfacet\n`;
const ONE = `solid one\n${facet('0 0 0', '1 0 0', '0 1 0')}endsolid one\n`;

describe('a box of 40 x 30 x 20 comes out of every form of STL as 12 triangles and 24 000 mm3', () => {
  const binary = stlBytes(BOX);
  const withAttributes = binary.slice();
  for (let t = 0; t < 12; t++) withAttributes.set([0xff, 0x83], 84 + 50 * t + 48);
  const nanNormals = binary.slice();
  for (let t = 0; t < 12; t++) new DataView(nanNormals.buffer).setFloat32(84 + 50 * t, NaN, true);
  const text = stlText(BOX);
  const half = (from: number, to: number): string =>
    stlText({ positions: BOX.positions, triangles: BOX.triangles.slice(from, to) }, `part ${from}`);
  const inFile = new Uint8Array(binary.length + 7);
  inFile.set(binary, 7);

  it.each<[string, Uint8Array | string]>([
    ['binary', binary],
    ['binary whose header starts with "solid"', stlBytes(BOX, 'solid made by a scanner')],
    ['binary with colors in the attributes', withAttributes],
    ['binary with normals that are not numbers', nanNormals],
    ['binary in the middle of another buffer', inFile.subarray(7)],
    ['ASCII', text],
    ['ASCII, CRLF', text.replaceAll('\n', '\r\n')],
    ['ASCII, CR alone', text.replaceAll('\n', '\r')],
    ['ASCII, upper case', text.toUpperCase().replaceAll('E+', 'e+')],
    ['ASCII, all on one line', text.replaceAll('\n', ' ')],
    ['ASCII with a byte order mark', `\ufeff${text}`],
    ['ASCII with tabs and blank lines', text.replaceAll('\n', '\n\n\t')],
    ['ASCII, solid without a name', text.replaceAll(' a test', '')],
    [
      'ASCII, a name of many words, facet and normal among them',
      text.replaceAll('a test', 'the facet of normal things'),
    ],
    ['ASCII, exponents and plus signs', text.replaceAll(' 40', ' +4.0E+01').replaceAll(' 30', ' 3e1')],
    ['ASCII, normals that are not numbers', text.replaceAll('normal 0 0 0', 'normal nan nan -nan(ind)')],
    ['two solids in one file', half(0, 18) + half(18, 36)],
    [
      'two solids, endsolid without a name, no last line end',
      (half(0, 18) + half(18, 36)).replaceAll(/endsolid.*/g, 'endsolid').trimEnd(),
    ],
  ])('%s', (_, bytes) => {
    const scan = valueOf(read(bytes));
    expect(scan).toMatchObject({ format: 'stl', trianglesRead: 12, findings: [] });
    expect(scan.mesh.positions.length).toBe(3 * 8);
    expectClose(divergenceVolume(scan.mesh), 24_000, 1e-12);
  });

  it('an uppercase name ending, and stdin named by its format', () => {
    expect(valueOf(readScan({ bytes: binary, name: 'SCAN.STL' })).trianglesRead).toBe(12);
    expect(valueOf(readScan({ bytes: binary, name: '-', format: 'stl' })).trianglesRead).toBe(12);
  });

  it('the step of the coordinates is that of float32 at their size: 40 mm lies in 32..64, 24 bits: 2^-18', () => {
    expect(valueOf(read(binary)).coordinateStep).toBe(2 ** -18);
  });

  it("leaves the caller's bytes alone", () => {
    const before = binary.slice();
    read(binary);
    expect(binary).toEqual(before);
  });
});

const truncated = stlBytes(BOX).subarray(0, 84 + 50 * 7 + 13);
/** The first facets of the box, as many as announced, and three bytes. */
const longer = (facets: number): Uint8Array => {
  const bytes = new Uint8Array(84 + 50 * facets + 3);
  bytes.set(stlBytes(BOX).subarray(0, 84 + 50 * facets));
  new DataView(bytes.buffer).setUint32(80, facets, true);
  return bytes;
};
const withFloat = (value: number, facetNumber: number, slot: number): Uint8Array => {
  const bytes = stlBytes(BOX);
  new DataView(bytes.buffer).setFloat32(84 + 50 * facetNumber + 12 + 4 * slot, value, true);
  return bytes;
};
const noFacets = new Uint8Array(84);

describe('a broken STL is refused with its code and its place', () => {
  it.each<[string, Uint8Array | string, Code, Place | undefined]>([
    ['nothing in it', '', 'EMPTY_FILE', { byte: 0 }],
    ['blank lines only', '\n \r\n\t', 'EMPTY_FILE', { byte: 0 }],
    ['binary cut off in facet 8', truncated, 'TRUNCATED', { byte: truncated.length }],
    ['binary cut off in its header', stlBytes(BOX).subarray(0, 50), 'TRUNCATED', undefined],
    ['binary with three bytes more than it says, and a gap', longer(11), 'COUNT_MISMATCH', undefined],
    ['binary with no facet', noFacets, 'NO_TRIANGLES', { byte: 80 }],
    [
      'binary, NaN in facet 3, second coordinate',
      withFloat(NaN, 2, 1),
      'BAD_NUMBER',
      { byte: 84 + 100 + 12 + 4 },
    ],
    [
      'binary, infinity in facet 12, last coordinate',
      withFloat(-Infinity, 11, 8),
      'BAD_NUMBER',
      { byte: 84 + 550 + 12 + 32 },
    ],
    ['binary, a coordinate of 1e9', withFloat(1e9, 0, 0), 'COORD_RANGE', { byte: 96 }],
    ['ASCII without a facet', 'solid x\nendsolid x\n', 'NO_TRIANGLES', undefined],
    [
      'ASCII that stops in a loop',
      ONE.slice(0, ONE.indexOf('endloop')),
      'TRUNCATED',
      { line: 7, byte: ONE.indexOf('endloop') },
    ],
    [
      'ASCII without endsolid',
      ONE.slice(0, ONE.indexOf('endsolid')),
      'TRUNCATED',
      { line: 9, byte: ONE.indexOf('endsolid') },
    ],
    [
      'a decimal comma',
      ONE.replace('1 0 0', '1,5 0 0'),
      'BAD_NUMBER',
      { line: 5, byte: ONE.indexOf('1 0 0') },
    ],
    [
      'a coordinate nan',
      ONE.replace('0 1 0', '0 nan 0'),
      'BAD_NUMBER',
      { line: 6, byte: ONE.indexOf('0 1 0') + 2 },
    ],
    [
      'a coordinate inf',
      ONE.replace('0 1 0', 'inf 1 0'),
      'BAD_NUMBER',
      { line: 6, byte: ONE.indexOf('0 1 0') },
    ],
    [
      'a coordinate of 2e8',
      ONE.replace('0 1 0', '0 1 -2e8'),
      'COORD_RANGE',
      { line: 6, byte: ONE.indexOf('0 1 0') + 4 },
    ],
    [
      'a missing coordinate',
      ONE.replace('1 0 0', '1 0'),
      'BAD_NUMBER',
      { line: 6, byte: ONE.indexOf('1 0 0') + 4 },
    ],
    [
      'a facet of four corners',
      ONE.replace('endloop', 'vertex 0 0 1\nendloop'),
      'SYNTAX',
      { line: 7, byte: ONE.indexOf('endloop') },
    ],
    [
      'a facet of two corners',
      ONE.replace('vertex 0 1 0\n', ''),
      'SYNTAX',
      { line: 6, byte: ONE.indexOf('vertex 0 1 0') },
    ],
    ['a misspelt keyword', ONE.replace('outer', 'outter'), 'SYNTAX', { line: 3, byte: ONE.indexOf('outer') }],
    ['text after the last solid', `${ONE}done\n`, 'SYNTAX', { line: 10, byte: ONE.length }],
    [
      'the same with CRLF: lines are counted once',
      `${ONE}done\n`.replaceAll('\n', '\r\n'),
      'SYNTAX',
      { line: 10, byte: ONE.length + 9 },
    ],
  ])('%s', (_, bytes, code, at) => {
    const problem = problemOf(read(bytes));
    expect(problem).toMatchObject({ code, status: 'stop' });
    if (at !== undefined) expect(problem.at).toEqual(at);
  });

  it.each<[string, readonly number[], Code]>([
    ['a zip archive', [0x50, 0x4b, 3, 4, 0, 0, 0, 0], 'NOT_A_MESH'],
    ['a gzip archive', [0x1f, 0x8b, 8, 0], 'NOT_A_MESH'],
    ['a PNG', [0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10], 'NOT_A_MESH'],
    ['a JPEG', [0xff, 0xd8, 0xff, 0xe0], 'NOT_A_MESH'],
    ['a PDF', [...textBytes('%PDF-1.7\n')], 'NOT_A_MESH'],
    ['UTF-32 text', [0xff, 0xfe, 0, 0, 0x73, 0, 0, 0], 'UNSUPPORTED_ENCODING'],
    ['half of a UTF-16 character', [0xff, 0xfe, 0x73, 0, 0x6f], 'UNSUPPORTED_ENCODING'],
  ])('%s that is called .stl', (_, magic, code) => {
    const bytes = new Uint8Array(401);
    bytes.set(magic);
    expect(problemOf(read(bytes)).code).toBe(code);
  });

  it('an unknown ending, and none', () => {
    for (const name of ['scan.step', 'scan', 'scan.'])
      expect(problemOf(readScan({ bytes: stlBytes(BOX), name })).code).toBe('UNSUPPORTED_FORMAT');
  });

  it('every way of cutting a binary STL short is an error, never a smaller mesh', () => {
    const bytes = stlBytes(icosphere(10, 1));
    for (let length = 1; length < bytes.length; length += 37)
      expect(read(bytes.subarray(0, length)).ok, `${length} bytes`).toBe(false);
  });

  it('a hundred thousand solids on one line take no longer than on lines of their own', () => {
    // The square of the length would take minutes, longer than any test may.
    expect(problemOf(read('solid a endsolid a '.repeat(1e5))).code).toBe('NO_TRIANGLES');
  });

  it('every way of cutting an ASCII STL short is an error, but for its last word and line end', () => {
    for (let length = 1; length < ONE.indexOf('endsolid') + 8; length++)
      expect(read(ONE.slice(0, length)).ok, `${length} bytes`).toBe(false);
  });
});
