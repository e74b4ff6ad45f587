import { describe, expect, it } from 'vitest';
import { divergenceVolume, readScan } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { measured } from '../../support/measured';
import { valueOf } from '../../support/outcome';
import {
  ascii,
  BE,
  big,
  binary,
  CORNERS,
  headerOf,
  LE,
  little,
  rows,
  TRIANGLES,
  XYZ,
  type Scalar,
} from '../../support/plyFiles';
import { textBytes } from '../../support/writeMesh';

const read = (bytes: Uint8Array | string): ReturnType<typeof readScan> =>
  readScan({ bytes: typeof bytes === 'string' ? textBytes(bytes) : bytes, name: 'scan.ply' });

describe('a box of 40 x 30 x 20 comes out of every form of PLY as 12 triangles and 24 000 mm3', () => {
  const colors = ['float x', 'float y', 'float z', 'uchar red', 'uchar green', 'uchar blue'];
  it.each<[string, Uint8Array | string]>([
    ['ASCII, quads', ascii()],
    ['ASCII, triangles', ascii({ faces: TRIANGLES })],
    ['binary, little-endian', little],
    ['binary, big-endian', big],
    [
      'binary, little-endian, lines of the header ended by CR and LF',
      binary(headerOf({ format: LE }).replaceAll('\n', '\r\n'), rows('Float32', 'Uint8', 'Int32'), true),
    ],
    [
      'binary, lines of the header ended by CR, and a first coordinate that starts with a line feed',
      binary(
        headerOf({ format: LE, vertex: ['uchar red', ...XYZ] }).replaceAll('\n', '\r'),
        [
          ...CORNERS.flatMap((p): [Scalar, number][] => [
            ['Uint8', 10],
            ...p.map((x): [Scalar, number] => ['Float32', x]),
          ]),
          ...rows('Float32', 'Uint8', 'Int32').slice(24),
        ],
        true,
      ),
    ],
    [
      'doubles, counts of four bytes, unsigned numbers',
      binary(
        headerOf({
          format: BE,
          vertex: ['double x', 'float64 y', 'double z'],
          face: ['list uint uint32 vertex_index'],
        }),
        rows('Float64', 'Uint32', 'Uint32'),
        false,
      ),
    ],
    [
      'whole numbers of two bytes',
      binary(
        headerOf({
          format: LE,
          vertex: ['short x', 'int16 y', 'short z'],
          face: ['list uint8 int8 vertex_index'],
        }),
        rows('Int16', 'Uint8', 'Int8'),
        true,
      ),
    ],
    ['colors behind the vertices', ascii({ vertex: colors, vertexTail: ' 255 0 128' })],
    [
      'axes in another order, after a list',
      ascii({ vertex: ['float x', 'float y', 'float z', 'list uchar int near'], vertexTail: ' 2 5 6' }),
    ],
    ['CRLF', ascii().replaceAll('\n', '\r\n')],
    ['CR alone', ascii().replaceAll('\n', '\r')],
    ['a byte order mark', `\ufeff${ascii()}`],
    ['blank lines and tabs', ascii().replaceAll(' 30 ', ' \t30 ').replace('end_header\n', 'end_header\n\n')],
    ['no last line end', ascii().trimEnd()],
    ['an obj_info', ascii().replace('comment', 'obj_info')],
  ])('%s', (_, bytes) => {
    const scan = valueOf(read(bytes));
    expect(scan).toMatchObject({ format: 'ply', trianglesRead: 12, findings: [] });
    expectClose(divergenceVolume(scan.mesh), 24_000, 1e-12);
    expect(measured(scan.mesh)).toMatchObject({ closed: true, pieces: 1, extentsMm: [40, 30, 20] });
  });

  it('other elements are passed over, and counted', () => {
    const scan = valueOf(
      read(
        ascii({
          ahead: 'element camera 2\nproperty float near\nproperty list uchar int frames',
          aheadRows: '0.5 2 7 8\n0.25 0\n',
        }),
      ),
    );
    expect(scan.findings).toEqual([
      { code: 'IGNORED_ELEMENTS', status: 'fine', values: { count: 2, text: 'camera' } },
    ]);
    expectClose(divergenceVolume(scan.mesh), 24_000, 1e-12);
  });

  it('faces under a name that is none are looked at: a part of the surface may stand there', () => {
    const scan = valueOf(
      read(
        ascii({
          ahead:
            'element camera 1\nproperty float near\nelement faces 2\nproperty list uchar int vertex_index',
          aheadRows: '0.5\n3 0 1 2\n3 0 2 1\n',
        }),
      ),
    );
    expect(scan.findings).toEqual([
      { code: 'IGNORED_ELEMENTS', status: 'look', values: { part: 'unknown', count: 2, text: 'faces' } },
      { code: 'IGNORED_ELEMENTS', status: 'fine', values: { count: 1, text: 'camera' } },
    ]);
  });

  it('faces may stand before the vertices', () => {
    const [head, body] = ascii().split('end_header\n') as [string, string];
    const face = 'element face 6\nproperty list uchar int vertex_indices\n';
    const lines = body.trimEnd().split('\n');
    const turned = [...lines.slice(8), ...lines.slice(0, 8)].join('\n');
    const text = `${head.replace(face, '').replace('element vertex', `${face}element vertex`)}end_header\n${turned}`;
    expectClose(divergenceVolume(valueOf(read(text)).mesh), 24_000, 1e-12);
  });

  it('the step of coordinates: that of float32, of float64, of whole numbers', () => {
    const doubles = binary(
      headerOf({ format: LE, vertex: ['double x', 'double y', 'double z'] }),
      rows('Float64', 'Uint8', 'Int32'),
      true,
    );
    const whole = binary(
      headerOf({ format: LE, vertex: ['short x', 'short y', 'short z'] }),
      rows('Int16', 'Uint8', 'Int32'),
      true,
    );
    // 40 lies in 32..64: 24 and 53 bits of significand (IEEE 754).
    expect([little, doubles, whole].map((bytes) => valueOf(read(bytes)).coordinateStep)).toEqual([
      2 ** -18,
      2 ** -47,
      1,
    ]);
  });
});
