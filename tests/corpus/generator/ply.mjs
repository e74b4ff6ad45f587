import { Buffer } from 'node:buffer';
import { box, triangles } from './shapes.mjs';
import { plyBinary, plyText } from './write.mjs';

const BOX = box([40, 30, 20]);
const VOLUME = 24_000;
const TEXT = plyText(BOX);
const LITTLE = plyBinary(BOX, { little: true });

const exact = (volume_mm3 = VOLUME) => ({ outcome: 'exact', volume_mm3 });
const warn = (warnings_any_of, volume_mm3 = VOLUME) => ({ outcome: 'warn', volume_mm3, warnings_any_of });
const reject = (...error_codes_any_of) => ({ outcome: 'reject', error_codes_any_of });

export const PLY = [
  ['ply-little-endian', LITTLE, exact()],
  ['ply-big-endian', plyBinary(BOX, { little: false }), exact()],
  [
    'ply-triangles-with-counts-of-four-bytes',
    plyBinary(
      { ...BOX, faces: triangles(BOX) },
      { little: true, count: 4, face: 'list uint uint vertex_indices' },
    ),
    exact(),
  ],
  [
    'ply-indices-of-two-bytes',
    plyBinary(BOX, { little: false, index: 2, face: 'list uint8 uint16 vertex_index' }),
    exact(),
  ],
  ['ply-carriage-returns-and-line-feeds', TEXT.replaceAll('\n', '\r\n'), exact()],
  [
    'ply-edges-beside-faces',
    `${plyText(BOX, { more: 'element edge 1\nproperty int a\nproperty int b\n' })}0 1\n`,
    warn(['IGNORED_ELEMENTS']),
  ],
  ['ply-says-big-is-little-endian', plyBinary(BOX, { little: true, said: false }), warn(['ENDIAN'])],
  // Lists of single bytes read the same either way: only the coordinates tell.
  [
    'ply-says-little-is-big-endian-lists-of-bytes',
    plyBinary(BOX, { little: false, said: true, index: 1, face: 'list uchar uchar vertex_indices' }),
    warn(['ENDIAN']),
  ],
  ['ply-count-of-vertices-four-billion', TEXT.replace('vertex 8', 'vertex 4294967295'), reject('TRUNCATED')],
  ['ply-one-face-less-than-announced', TEXT.replace('face 6', 'face 7'), reject('TRUNCATED')],
  ['ply-one-face-more-than-announced', TEXT.replace('face 6', 'face 5'), reject('TRAILING_DATA')],
  ['ply-index-beyond-the-last', TEXT.replace('4 4 5 6 7', '4 4 5 6 8'), reject('INDEX_OUT_OF_RANGE')],
  ['ply-index-negative', TEXT.replace('4 4 5 6 7', '4 4 5 6 -1'), reject('INDEX_OUT_OF_RANGE')],
  ['ply-coordinate-nan', TEXT.replace('40 30 20', '40 30 nan'), reject('BAD_NUMBER')],
  ['ply-little-endian-cut', LITTLE.subarray(0, -7), reject('TRUNCATED')],
  [
    'ply-points-only',
    TEXT.slice(0, TEXT.indexOf('element face')) +
      'end_header\n' +
      BOX.points.map((p) => `${p.join(' ')}\n`).join(''),
    reject('NO_TRIANGLES'),
  ],
].map(([name, bytes, expect]) => ({ file: `${name}.ply`, bytes: Buffer.from(bytes), expect }));
