import { Buffer } from 'node:buffer';
import { box, bracket, joined, turnedOver } from './shapes.mjs';
import { objFaces, objText, objVertices, stlBinary } from './write.mjs';
import { soup } from './shapes.mjs';

const BOX = box([40, 30, 20]);
const VOLUME = 24_000;
const TEXT = objText(BOX);
const V = objVertices(BOX);
const F = objFaces(BOX);
const BESIDE = box([10, 10, 10], [90, 0, 0]);
const OTHER = objVertices(BESIDE) + objFaces(BESIDE, (v) => v + 9);
const OPEN = TEXT.replace('f 5 6 7 8\n', '');

const exact = (volume_mm3 = VOLUME) => ({ outcome: 'exact', volume_mm3 });
const warn = (warnings_any_of, volume_mm3 = VOLUME) => ({ outcome: 'warn', volume_mm3, warnings_any_of });
const reject = (...error_codes_any_of) => ({ outcome: 'reject', error_codes_any_of });

export const OBJ = [
  ['obj-negative-indices', V + objFaces(BOX, (v) => v - 8), exact()],
  [
    'obj-negative-indices-between-vertices',
    BOX.faces
      .map((face) => `${face.map((v) => `v ${BOX.points[v].join(' ')}\n`).join('')}f -4 -3 -2 -1\n`)
      .join(''),
    exact(),
  ],
  ['obj-faces-before-vertices', F + V, exact()],
  ['obj-continuation-lines', TEXT.replaceAll(/^f (\d+) (\d+)/gm, 'f $1 \\\n  $2'), exact()],
  ['obj-carriage-returns-alone', TEXT.replaceAll('\n', '\r'), exact()],
  ['obj-utf8-byte-order-mark', `\ufeff${TEXT}`, exact()],
  ['obj-comments-with-faces', TEXT.replaceAll('\n', ' # f 1 2 3\n'), exact()],
  ['obj-colors-behind-vertices', V.replaceAll('\n', ' 0.5 0.25 1\n') + F, exact()],
  [
    'obj-texture-and-normal-numbers',
    `${V}vt 0 0\nvn 0 0 1\n${objFaces(BOX, (v) => `${v + 1}/1/1`)}`,
    exact(),
  ],
  [
    'obj-material-file-elsewhere',
    `mtllib ../../../elsewhere.mtl\nusemtl http://127.0.0.1:9/x\n${TEXT}`,
    exact(),
  ],
  ['obj-names-of-prototypes', `o __proto__\ng constructor\n${TEXT}`, exact()],
  ['obj-concave-ends-in-one-face', objText(bracket(25)), exact(800 * 25)],
  ['obj-stray-vertex-far-away', `${TEXT}v 1e9 0 0\n`, exact()],
  ['obj-stray-vertex-nan', `${TEXT}v nan nan nan\n`, warn(['BAD_NUMBER'])],
  ['obj-upper-case-statements', TEXT.replaceAll('v ', 'V ').replaceAll('f ', 'F '), warn(['SYNTAX'])],
  ['obj-utf16-big-endian-without-mark', Buffer.from(TEXT, 'utf16le').swap16(), warn(['ENCODING'])],
  [
    'obj-utf32-with-mark',
    Buffer.from([...`\ufeff${TEXT}`].flatMap((c) => [c.charCodeAt(0) & 255, c.charCodeAt(0) >> 8, 0, 0])),
    warn(['ENCODING']),
  ],
  ['obj-face-of-two-vertices', `${TEXT}f 1 2\n`, warn(['SYNTAX'])],
  ['obj-backslash-at-the-end', `${TEXT}f 1 2 \\`, warn(['SYNTAX'])],
  ['obj-slash-with-nothing-behind', V + objFaces(BOX, (v) => `${v + 1}/`), warn(['BAD_INDEX'])],
  ['obj-face-words-with-a-slip', TEXT + OTHER.replaceAll('f ', 'f, '), reject('SYNTAX')],
  ['obj-faces-of-the-old-word', TEXT + OTHER.replaceAll('f ', 'fo '), reject('SYNTAX')],
  ['obj-old-patch-beside-the-faces', `${TEXT}bzp 1 2 3 4\n`, warn(['UNSUPPORTED_FEATURE'])],
  ['obj-curve-beside-the-faces', `cstype bspline\ndeg 3\n${TEXT}`, warn(['UNSUPPORTED_FEATURE'])],
  ['obj-two-pieces', objText(joined(BOX, BESIDE)), warn(['MULTI_SHELL'], VOLUME + 1000)],
  ['obj-inside-out', objText(turnedOver(BOX)), warn(['INSIDE_OUT'])],
  ['obj-is-a-binary-stl', stlBinary(soup(BOX)), warn(['WRONG_FORMAT'])],
  ['obj-face-of-two-vertices-and-a-gap', `${OPEN}f 1 2\n`, reject('SYNTAX')],
  ['obj-index-zero', `${TEXT}f 0 1 2\n`, reject('INDEX_OUT_OF_RANGE')],
  ['obj-index-beyond-the-last', TEXT.replace('f 5 6 7 8', 'f 5 6 7 9'), reject('INDEX_OUT_OF_RANGE')],
  ['obj-index-negative-beyond-the-first', `${TEXT}f -9 -8 -7\n`, reject('INDEX_OUT_OF_RANGE')],
  ['obj-index-with-a-fraction', TEXT.replace('f 5 6 7 8', 'f 5 6 7.0 8'), reject('BAD_INDEX')],
  ['obj-coordinate-nan-in-a-face', TEXT.replace('v 40 30 20', 'v 40 nan 20'), reject('BAD_NUMBER')],
  ['obj-decimal-comma', V.replaceAll(/(\d)(?=[ \n])/g, '$1,0') + F, reject('BAD_NUMBER')],
  ['obj-weight-of-two', TEXT.replace('v 40 30 20', 'v 40 30 20 2'), reject('UNSUPPORTED_FEATURE')],
  ['obj-points-only', V, reject('NO_TRIANGLES')],
  ['obj-cut-in-a-face', TEXT.slice(0, -9), reject('SYNTAX')],
].map(([name, bytes, expect]) => ({ file: `${name}.obj`, bytes: Buffer.from(bytes), expect }));
