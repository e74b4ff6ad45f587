import { describe, expect, it } from 'vitest';
import { divergenceVolume, readScan } from '../../../src/geometry';
import type { Code, Place } from '../../../src/problem';
import { expectClose } from '../../support/close';
import { measured } from '../../support/measured';
import { problemOf, valueOf } from '../../support/outcome';
import { box } from '../../support/shapes';
import { objText, textBytes } from '../../support/writeMesh';

const read = (bytes: Uint8Array | string): ReturnType<typeof readScan> =>
  readScan({ bytes: typeof bytes === 'string' ? textBytes(bytes) : bytes, name: 'scan.obj' });

const CORNERS = ['0 0 0', '40 0 0', '40 30 0', '0 30 0', '0 0 20', '40 0 20', '40 30 20', '0 30 20'];
const QUADS = [
  [1, 4, 3, 2],
  [5, 6, 7, 8],
  [1, 2, 6, 5],
  [2, 3, 7, 6],
  [3, 4, 8, 7],
  [4, 1, 5, 8],
];
const v = CORNERS.map((c) => `v ${c}\n`).join('');
const faces = (write: (vertex: number, face: number) => string | number): string =>
  QUADS.map((q, i) => `f ${q.map((n) => write(n, i)).join(' ')}\n`).join('');

describe('a box of 40 x 30 x 20 comes out of every form of OBJ as 12 triangles and 24 000 mm3', () => {
  const plain = v + faces((n) => n);
  it.each<[string, string]>([
    ['quads', plain],
    ['triangles', objText(box([40, 30, 20]))],
    ['counted back from the end', v + faces((n) => n - 9)],
    [
      'faces between the vertices, counted back',
      QUADS.map((q) => q.map((n) => `v ${CORNERS[n - 1]}\n`).join('') + 'f -4 -3 -2 -1\n').join(''),
    ],
    ['faces before their vertices', faces((n) => n) + v],
    ['v/vt', v + 'vt 0 0\n' + faces((n) => `${n}/1`)],
    ['v//vn', v + 'vn 0 0 1\n' + faces((n) => `${n}//1`)],
    ['v/vt/vn', v + 'vt 0 0 0\nvn 0 0 1\n' + faces((n) => `${n}/1/1`)],
    ['v/vt/vn counted back', v + 'vt 0 0\nvn 0 0 1\n' + faces((n) => `${n - 9}/-1/-1`)],
    ['colors behind the vertices', v.replaceAll('\n', ' 0.5 0.25 1\n') + faces((n) => n)],
    ['colors with alpha', v.replaceAll('\n', ' 0.5 0.25 1 1\n') + faces((n) => n)],
    ['a weight of 1', v.replaceAll('\n', ' 1.0\n') + faces((n) => n)],
    [
      'groups, objects, smoothing, materials',
      `mtllib ../../etc/passwd\no box\ng a b\ns off\nusemtl red\n${v}l 1 2\np 1\n${faces((n) => n)}`,
    ],
    ['comments and blank lines', `# by a test\n\n${plain.replaceAll('\n', ' # here\n\n')}`],
    ['CRLF', plain.replaceAll('\n', '\r\n')],
    ['CR alone', plain.replaceAll('\n', '\r')],
    ['a byte order mark', `\ufeff${plain}`],
    [
      'lines continued by a backslash',
      plain.replaceAll('f 1 4 3 2', 'f 1 4 \\\n3 \\\r\n2').replace('v 40 30 20', 'v 40 \\\n 30 20'),
    ],
    ['tabs and spaces', plain.replaceAll(' ', ' \t ')],
    ['no last line end', plain.trimEnd()],
    ['vertices written twice', v + v + faces((n, i) => (i % 2 === 0 ? n : n + 8))],
    ['a stray vertex far away', `${plain}v 1e30 0 0\n`],
  ])('%s', (_, text) => {
    const scan = valueOf(read(text));
    expect(scan).toMatchObject({ format: 'obj', trianglesRead: 12, findings: [] });
    expectClose(divergenceVolume(scan.mesh), 24_000, 1e-12);
    expect(measured(scan.mesh)).toMatchObject({ closed: true, pieces: 1, extentsMm: [40, 30, 20] });
  });
});

describe('concave faces keep their area and volume', () => {
  const plan = [
    [0, 0],
    [50, 0],
    [50, 10],
    [10, 10],
    [10, 40],
    [0, 40],
  ];
  const prism =
    [0, 25].flatMap((z) => plan.map(([x, y]) => `v ${x} ${y} ${z}\n`)).join('') +
    `f 6 5 4 3 2 1\nf 7 8 9 10 11 12\n${plan.map((_, i) => `f ${i + 1} ${((i + 1) % 6) + 1} ${((i + 1) % 6) + 7} ${i + 7}\n`).join('')}`;

  it('an L-shaped prism: plan (50 x 10 + 10 x 30) mm2, 25 mm high', () => {
    const solid = measured(valueOf(read(prism)).mesh);
    expectClose(solid.volumeMm3, 800 * 25, 1e-12, 'volume');
    expectClose(solid.areaMm2, 2 * 800 + 25 * (50 + 10 + 40 + 30 + 10 + 40), 1e-12, 'area');
    expect(solid.closed).toBe(true);
  });

  it('a face that is not flat is cut all the same, and said', () => {
    const bent = v.replace('40 30 20', '40 30 24') + faces((n) => n);
    const scan = valueOf(read(bent));
    expect(scan.findings).toEqual([{ code: 'NON_PLANAR', status: 'look', values: { count: 1 } }]);
    expect(measured(scan.mesh).closed).toBe(true);
  });
});

const BOX_TEXT = v + faces((n) => n);
const OPEN_TEXT = BOX_TEXT.replace('f 5 6 7 8\n', '');
const lineOf = (text: string, part: string): Place => ({
  line: text.slice(0, text.indexOf(part)).split('\n').length,
  byte: text.indexOf(part),
});

describe('a broken OBJ is refused with its code, its line and its byte', () => {
  it.each<[string, string, Code, string | undefined]>([
    ['blank', ' \n\n', 'EMPTY_FILE', undefined],
    ['points only', v, 'NO_TRIANGLES', undefined],
    ['two coordinates', BOX_TEXT.replace('v 40 30 20', 'v 40 30'), 'SYNTAX', 'v 40 30\n'],
    ['five numbers behind v', BOX_TEXT.replace('v 40 30 20', 'v 40 30 20 1 1'), 'SYNTAX', 'v 40 30 20 1 1'],
    ['a decimal comma', BOX_TEXT.replace('v 40 30 20', 'v 40 30,5 20'), 'BAD_NUMBER', '30,5'],
    ['nan', BOX_TEXT.replace('v 40 30 20', 'v nan 30 20'), 'BAD_NUMBER', 'nan'],
    ['an overflow', BOX_TEXT.replace('v 40 30 20', 'v 40 30 1e999'), 'BAD_NUMBER', '1e999'],
    ['a color that is no number', BOX_TEXT.replace('v 40 30 20', 'v 40 30 20 1 1 red'), 'BAD_NUMBER', 'red'],
    [
      'a coordinate of 1e9 that a face uses',
      BOX_TEXT.replace('v 40 30 20', 'v 40 30 1e9'),
      'COORD_RANGE',
      'f 5 6 7 8',
    ],
    ['a rational weight', BOX_TEXT.replace('v 40 30 20', 'v 40 30 20 0.5'), 'UNSUPPORTED_FEATURE', '0.5'],
    ['a face of two, and another is missing', `${OPEN_TEXT}f 1 2\n`, 'SYNTAX', 'f 1 2\n'],
    ['vertex 0', `${BOX_TEXT}f 0 2 3\n`, 'INDEX_OUT_OF_RANGE', '0 2 3\n'],
    ['vertex 9 of 8', `${BOX_TEXT}f 1 9 3\n`, 'INDEX_OUT_OF_RANGE', '9 3\n'],
    ['vertex -9 of 8', `${BOX_TEXT}f 1 2 -9\n`, 'INDEX_OUT_OF_RANGE', '-9\n'],
    ['a vertex number that is a word', `${BOX_TEXT}f 1 two 3\n`, 'BAD_INDEX', 'two'],
    ['a vertex number with a fraction', `${BOX_TEXT}f 1 2.5 3\n`, 'BAD_INDEX', '2.5'],
    ['a slash too many', `${BOX_TEXT}f 1 2/1/1/1 3\n`, 'BAD_INDEX', '2/1/1/1'],
    ['a slash with nothing behind', `${BOX_TEXT}f 1 2/ 3\n`, 'BAD_INDEX', '2/ 3'],
    ['no vertex before the slash', `${BOX_TEXT}f 1 /2 3\n`, 'BAD_INDEX', '/2 3'],
    [
      'a number far beyond 2^53',
      `${BOX_TEXT}f 1 2 99999999999999999999\n`,
      'INDEX_OUT_OF_RANGE',
      '99999999999999999999',
    ],
    ['a free-form surface', `${OPEN_TEXT}cstype bspline\n`, 'UNSUPPORTED_FEATURE', 'cstype'],
    ['a curve', `${OPEN_TEXT}curv 0 1 1 2\n`, 'UNSUPPORTED_FEATURE', 'curv'],
    ['a face of 5 000 corners', `${BOX_TEXT}f${' 1 2 3 4'.repeat(1250)}\n`, 'BAD_POLYGON', 'f 1 2 3 4 1'],
    ['a face that crosses itself', `${BOX_TEXT}f 1 3 2 4\n`, 'BAD_POLYGON', 'f 1 3 2 4'],
  ])('%s', (_, text, code, part) => {
    const problem = problemOf(read(text));
    expect(problem).toMatchObject({ code, status: 'stop' });
    if (part !== undefined) expect(problem.at).toEqual(lineOf(text, part));
  });

  it('lines of CRLF files are counted once', () => {
    const text = BOX_TEXT.replace('v 40 30 20', 'v 40 30 x');
    expect(problemOf(read(text.replaceAll('\n', '\r\n'))).at?.line).toBe(lineOf(text, 'x').line);
  });

  it.each<[string, Uint8Array, Code]>([
    ['zeros', new Uint8Array(500), 'NOT_A_MESH'],
    ['a zip archive', Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0), 'NOT_A_MESH'],
    [
      'UTF-32 text that stops in a character',
      Uint8Array.of(0xff, 0xfe, 0, 0, 0x76, 0, 0),
      'UNSUPPORTED_ENCODING',
    ],
  ])('%s that is called .obj', (_, bytes, code) => {
    expect(problemOf(read(bytes)).code).toBe(code);
  });
});
