import { describe, expect, it } from 'vitest';
import { readScan } from '../../../src/geometry';
import type { Code } from '../../../src/problem';
import { problemOf } from '../../support/outcome';
import { ascii, BE, big, binary, headerOf, LE, little, QUADS, rows } from '../../support/plyFiles';
import { textBytes } from '../../support/writeMesh';

const read = (bytes: Uint8Array | string): ReturnType<typeof readScan> =>
  readScan({ bytes: typeof bytes === 'string' ? textBytes(bytes) : bytes, name: 'scan.ply' });

const TEXT = ascii();
const withHeader = (from: string, to: string): string => TEXT.replace(from, to);

describe('a broken PLY is refused with its code and its place', () => {
  it.each<[string, Uint8Array | string, Code, number | undefined]>([
    ['no ply at its start', TEXT.slice(4), 'NOT_A_MESH', undefined],
    ['a format nobody knows', withHeader('ascii', 'text'), 'SYNTAX', 2],
    ['version 2.0', withHeader('1.0', '2.0'), 'SYNTAX', 2],
    ['no format', withHeader('format ascii 1.0\n', ''), 'SYNTAX', 9],
    ['no end_header', withHeader('end_header\n', ''), 'SYNTAX', 10],
    ['nothing but a header line', 'ply\nformat ascii 1.0\n', 'TRUNCATED', 3],
    ['a count below zero', withHeader('vertex 8', 'vertex -8'), 'BAD_NUMBER', 4],
    ['half a vertex', withHeader('vertex 8', 'vertex 8.5'), 'BAD_NUMBER', 4],
    ['a type nobody knows', withHeader('float y', 'real y'), 'SYNTAX', 6],
    ['a length of a list with a fraction', withHeader('list uchar int', 'list float int'), 'SYNTAX', 9],
    ['no z', withHeader('property float z\n', ''), 'SYNTAX', undefined],
    ['no list of vertices', withHeader('vertex_indices', 'corners'), 'SYNTAX', undefined],
    [
      'an element without properties',
      withHeader('element vertex', 'element bare 3\nelement vertex'),
      'SYNTAX',
      undefined,
    ],
    ['points only', withHeader('face 6', 'face 0').split('4 0 3')[0]!, 'NO_TRIANGLES', undefined],
    ['no element vertex', withHeader('element vertex', 'element points'), 'NO_TRIANGLES', undefined],
    ['a vertex too few', TEXT.replace('40 30 20\n', ''), 'SYNTAX', 18],
    ['a coordinate too few', TEXT.replace('40 30 20\n', '40 30\n'), 'SYNTAX', 17],
    ['a coordinate too many', TEXT.replace('40 30 20\n', '40 30 20 1\n'), 'SYNTAX', 17],
    ['a corner too few', TEXT.replace('4 0 3 2 1\n', '4 0 3 2\n'), 'SYNTAX', 19],
    ['a face too many', `${TEXT}3 0 1 2\n`, 'TRAILING_DATA', 25],
    ['a decimal comma', TEXT.replace('40 30 20', '40 30,5 20'), 'BAD_NUMBER', 17],
    ['nan', TEXT.replace('40 30 20', '40 nan 20'), 'BAD_NUMBER', 17],
    ['a coordinate of 1e9 that a face uses', TEXT.replace('40 30 20', '40 30 1e9'), 'COORD_RANGE', 20],
    ['vertex 8 of 0 to 7', TEXT.replace('4 0 3 2 1', '4 0 3 2 8'), 'INDEX_OUT_OF_RANGE', 19],
    ['vertex -1', TEXT.replace('4 0 3 2 1', '4 0 3 2 -1'), 'INDEX_OUT_OF_RANGE', 19],
    ['vertex 2.5', TEXT.replace('4 0 3 2 1', '4 0 3 2.5 1'), 'BAD_INDEX', 19],
    ['a face of two', TEXT.replace('4 0 3 2 1', '2 0 3'), 'SYNTAX', 19],
    ['a face that crosses itself', TEXT.replace('4 0 3 2 1', '4 0 2 3 1'), 'BAD_POLYGON', 19],
    ['strips', withHeader('element face 6', 'element tristrips 6'), 'UNSUPPORTED_FEATURE', undefined],
  ])('%s', (_, bytes, code, line) => {
    const problem = problemOf(read(bytes));
    expect(problem).toMatchObject({ code, status: 'stop' });
    if (line !== undefined) expect(problem.at?.line).toBe(line);
  });

  it('counts are held against the length of the file before anything is made', () => {
    for (const count of ['4294967295', '9007199254740991']) {
      expect(problemOf(read(withHeader('vertex 8', `vertex ${count}`))).code).toBe('TRUNCATED');
      expect(problemOf(read(withHeader('face 6', `face ${count}`))).code).toBe('TRUNCATED');
      const header = headerOf({ format: LE }).replace('vertex 8', `vertex ${count}`);
      expect(problemOf(read(binary(header, rows('Float32', 'Uint8', 'Int32'), true))).code).toBe('TRUNCATED');
    }
  });

  it('more faces than can be held are refused by the header, with the number that would do', () => {
    const header = headerOf({ format: LE, faces: { length: 10_000_001 } as never });
    const head = textBytes(header);
    // Long enough for what it announces: each face is a byte and no corner.
    const bytes = new Uint8Array(head.length + 12 * 8 + 10_000_001);
    bytes.set(head);
    expect(problemOf(read(bytes))).toMatchObject({
      code: 'TOO_LARGE',
      values: { count: 10_000_001, limit: 1e7 },
    });
  });

  it('a header that never ends is given up early', () => {
    expect(problemOf(read(`ply\n${'x'.repeat(1e6)}`)).code).toBe('SYNTAX');
    expect(problemOf(read(`ply\n${'comment a\n'.repeat(1e5)}`)).code).toBe('SYNTAX');
  });

  it('the other byte order than the one it says, and a face is missing', () => {
    const faces = QUADS.slice(1);
    const swapped = binary(headerOf({ format: BE, faces }), rows('Float32', 'Uint8', 'Int32', faces), true);
    expect(problemOf(read(swapped))).toMatchObject({
      code: 'ENDIAN',
      values: { said: 'big-endian', is: 'little-endian' },
    });
  });

  it('every way of cutting it short is an error, never a smaller mesh', () => {
    for (const bytes of [little, big, textBytes(TEXT.trimEnd())])
      for (let length = 1; length < bytes.length; length++)
        expect(read(bytes.subarray(0, length)).ok, `${length} bytes`).toBe(false);
  });

  it('a byte more behind a binary body is an error', () => {
    const longer = new Uint8Array(little.length + 1).fill(1);
    longer.set(little);
    expect(problemOf(read(longer))).toMatchObject({ code: 'TRAILING_DATA', values: { bytes: 1 } });
  });
});
