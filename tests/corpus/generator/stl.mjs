import { Buffer } from 'node:buffer';
import { box, joined, soup, turnedOver, wedge } from './shapes.mjs';
import { stlBinary, stlFacet, stlText } from './write.mjs';

const BOX = box([40, 30, 20]);
const VOLUME = 24_000;
const WEDGE = wedge([60, 40, 30]);
const FACETS = soup(BOX);
const SECOND_BOX = box([40, 30, 20], [90, 0, 0]);
const SECOND = soup(SECOND_BOX);
const TEXT = stlText(BOX);
const oneLine = (text) => text.replaceAll(/\s+/g, ' ');

const exact = (volume_mm3 = VOLUME, more = {}) => ({ outcome: 'exact', volume_mm3, ...more });
const warn = (warnings_any_of, volume_mm3 = VOLUME, more = {}) => ({
  outcome: 'warn',
  volume_mm3,
  warnings_any_of,
  ...more,
});
const reject = (...error_codes_any_of) => ({ outcome: 'reject', error_codes_any_of });
const noVolume = (...codes) => ({ outcome: 'no_volume', warnings_any_of: codes, error_codes_any_of: codes });

const binary = (wish) => stlBinary(FACETS, wish);
const withFloat = (value, facet, slot) => {
  const bytes = binary();
  bytes.writeFloatLE(value, 84 + 50 * facet + 12 + 4 * slot);
  return bytes;
};
const withTail = (bytes, tail) => Buffer.concat([bytes, Buffer.from(tail)]);
/** Every number of the file with its bytes the other way round. */
function bigEndian() {
  const bytes = binary();
  bytes.writeUInt32BE(FACETS.length, 80);
  for (let t = 0; t < FACETS.length; t++) bytes.subarray(84 + 50 * t, 84 + 50 * t + 48).swap32();
  return bytes;
}
/** The same box in other units: one unit of the file is so many mm. */
const scaled = (mmPerUnit) => box([40, 30, 20].map((side) => side / mmPerUnit));
const far = (mm) => soup(box([64, 32, 16], [mm, 0, 0]));
const moved = (shape, [dx, dy, dz]) => ({
  ...shape,
  points: shape.points.map(([x, y, z]) => [x + dx, y + dy, z + dz]),
});

export const STL = [
  ['stl-binary-plain', binary(), exact()],
  ['stl-binary-header-says-solid', binary({ header: 'solid made by a scanner' }), exact()],
  ['stl-binary-colors-in-attributes', binary({ attribute: (t) => 0x8000 | (t * 321) }), exact()],
  [
    'stl-binary-colors-in-header',
    binary({ header: 'COLOR=\x80\x40\x20\xff', attribute: () => 0xffff }),
    exact(),
  ],
  ['stl-binary-count-one-too-many', binary({ count: 13 }), warn(['COUNT_MISMATCH'])],
  ['stl-binary-count-one-too-few', binary({ count: 11 }), warn(['COUNT_MISMATCH'])],
  ['stl-binary-count-zero', binary({ count: 0 }), warn(['COUNT_MISMATCH'])],
  ['stl-binary-count-four-billion', binary({ count: 0xffffffff }), warn(['COUNT_MISMATCH'])],
  [
    'stl-binary-bytes-behind-the-last-facet',
    withTail(binary(), 'made by a scanner'),
    warn(['TRAILING_DATA']),
  ],
  ['stl-binary-last-attribute-missing', binary().subarray(0, -2), warn(['TRUNCATED'])],
  ['stl-binary-big-endian', bigEndian(), warn(['ENDIAN'])],
  // The first box alone is closed, and both are: which of them is meant cannot be told.
  [
    'stl-binary-counts-one-box-holds-two',
    stlBinary([...FACETS, ...SECOND], { count: 12 }),
    reject('COUNT_MISMATCH'),
  ],
  // What follows the closed box reads as facets, though they close nothing, or as another file.
  [
    'stl-binary-counts-one-box-an-open-one-follows',
    stlBinary([...FACETS, ...SECOND.slice(1)], { count: 12 }),
    reject('COUNT_MISMATCH'),
  ],
  [
    'stl-binary-counts-one-box-two-and-a-tail-follow',
    withTail(stlBinary([...FACETS, ...SECOND], { count: 12 }), 'ten bytes.'),
    reject('COUNT_MISMATCH'),
  ],
  ['stl-binary-two-files-in-one', Buffer.concat([binary(), stlBinary(SECOND)]), reject('COUNT_MISMATCH')],
  ['stl-binary-zeros-behind-the-last-facet', withTail(binary(), Buffer.alloc(120)), warn(['TRAILING_DATA'])],
  // Three facets too many announced can be no box that is missing; twelve can.
  ['stl-binary-count-three-too-many', binary({ count: 15 }), warn(['COUNT_MISMATCH'])],
  ['stl-binary-count-of-two-boxes-holds-one', binary({ count: 24 }), reject('TRUNCATED')],
  ['stl-binary-last-facet-missing', binary().subarray(0, -50), reject('TRUNCATED')],
  ['stl-binary-cut-in-a-facet', binary().subarray(0, 400), reject('TRUNCATED')],
  ['stl-binary-cut-in-the-header', binary().subarray(0, 70), reject('TRUNCATED')],
  ['stl-binary-coordinate-nan', withFloat(NaN, 5, 4), reject('BAD_NUMBER')],
  ['stl-binary-coordinate-infinite', withFloat(Infinity, 0, 0), reject('BAD_NUMBER')],
  ['stl-binary-coordinate-1e30', withFloat(1e30, 11, 8), reject('COORD_RANGE')],
  ['stl-binary-empty', Buffer.alloc(0), reject('EMPTY_FILE')],
  [
    'stl-binary-ten-kilometers-from-zero',
    stlBinary(far(1e7)),
    {
      ...warn(['FAR_FROM_ORIGIN', 'PRECISION'], 64 * 32 * 16),
      outcome: 'either',
      error_codes_any_of: ['PRECISION'],
    },
  ],
  [
    'stl-binary-hundred-meters-from-zero',
    stlBinary(far(1e5)),
    warn(['FAR_FROM_ORIGIN', 'PRECISION'], 64 * 32 * 16),
  ],
  ['stl-binary-in-inches', stlBinary(soup(scaled(25.4))), warn(['UNITS_SUSPECT'], VOLUME / 25.4 ** 3)],
  ['stl-binary-in-meters', stlBinary(soup(scaled(1000))), warn(['UNITS_SUSPECT'], VOLUME / 1e9)],
  ['stl-binary-inside-out', stlBinary(soup(turnedOver(BOX))), warn(['INSIDE_OUT'])],
  [
    'stl-binary-void-inside',
    stlBinary(soup(joined(BOX, turnedOver(box([20, 10, 10], [10, 10, 5]))))),
    warn(['NESTED_SHELL'], VOLUME - 2000),
  ],
  [
    'stl-binary-two-pieces',
    stlBinary(soup(joined(BOX, moved(WEDGE, [100, 0, 0])))),
    warn(['MULTI_SHELL'], VOLUME + 36_000),
  ],
  ['stl-binary-facet-twice', stlBinary([...FACETS, FACETS[3]]), warn(['DUPLICATE_FACES'])],
  [
    'stl-binary-facet-collapsed',
    stlBinary([...FACETS, [FACETS[0][0], FACETS[0][0], FACETS[0][1]]]),
    warn(['DEGENERATE_FACES']),
  ],
  ['stl-binary-base-missing', stlBinary(FACETS.slice(2)), noVolume('NOT_CLOSED')],
  ['stl-binary-one-triangle', stlBinary(FACETS.slice(0, 1)), noVolume('NOT_CLOSED')],
  ['stl-ascii-utf8-byte-order-mark', `\ufeff${TEXT}`, exact()],
  ['stl-ascii-carriage-returns-alone', TEXT.replaceAll('\n', '\r'), exact()],
  ['stl-ascii-one-line', oneLine(TEXT), exact()],
  ['stl-ascii-upper-case', TEXT.toUpperCase(), exact()],
  ['stl-ascii-exponents-and-plus-signs', stlText(BOX, 'box', (x) => `+${x.toExponential(6)}`), exact()],
  [
    'stl-ascii-name-of-keywords',
    TEXT.replaceAll('solid box', 'solid facet normal of 1 2 endsolid'),
    warn(['SYNTAX']),
  ],
  ['stl-ascii-utf16-with-mark', Buffer.from(`\ufeff${TEXT}`, 'utf16le'), warn(['ENCODING'])],
  ['stl-ascii-utf16-without-mark', Buffer.from(TEXT, 'utf16le'), warn(['ENCODING'])],
  [
    'stl-ascii-utf32-without-mark',
    Buffer.from([...TEXT].flatMap((c) => [0, 0, 0, c.charCodeAt(0)])),
    warn(['ENCODING']),
  ],
  ['stl-ascii-comments', `; a box\n${TEXT.replaceAll('endfacet', 'endfacet # done')}`, warn(['SYNTAX'])],
  ['stl-ascii-zero-byte', TEXT.replace('outer loop', 'outer\0loop'), warn(['SYNTAX'])],
  ['stl-ascii-without-normals', TEXT.replaceAll(' normal 0 0 0', ''), warn(['SYNTAX'])],
  ['stl-ascii-without-endsolid', TEXT.replace('endsolid box\n', ''), warn(['TRUNCATED'])],
  [
    'stl-ascii-weight-behind-a-vertex',
    TEXT.replace('vertex 40 30 20', 'vertex 40 30 20 1.0'),
    warn(['SYNTAX']),
  ],
  [
    'stl-ascii-last-facet-missing',
    `${TEXT.slice(0, TEXT.lastIndexOf('  facet'))}endsolid box\n`,
    noVolume('NOT_CLOSED'),
  ],
  [
    'stl-ascii-last-facet-and-endsolid-missing',
    TEXT.slice(0, TEXT.lastIndexOf('  facet')),
    reject('TRUNCATED'),
  ],
  ['stl-ascii-facet-of-four-vertices', TEXT.replace(/(vertex .*\n)(\s*endloop)/, '$1$1$2'), reject('SYNTAX')],
  ['stl-ascii-decimal-comma', stlText(BOX, 'box', (x) => `${x},0`), reject('BAD_NUMBER')],
  ['stl-ascii-coordinate-nan', TEXT.replace('vertex 40 30 20', 'vertex 40 nan 20'), reject('BAD_NUMBER')],
  [
    'stl-ascii-one-line-second-solid-unsaid',
    oneLine(TEXT + stlText(SECOND_BOX).replace('solid box', '')),
    reject('SYNTAX'),
  ],
  [
    'stl-ascii-remark-swallows-a-second-box',
    `${oneLine(TEXT.replace('endsolid box', '# the other'))}${oneLine(stlText(SECOND_BOX))}`,
    reject('SYNTAX'),
  ],
  ['stl-ascii-without-facets', 'solid box\nendsolid box\n', reject('NO_TRIANGLES')],
  [
    'stl-web-page',
    '<!DOCTYPE html><html><body>Not found</body></html>\n',
    reject('TRUNCATED', 'SYNTAX', 'NOT_A_MESH'),
  ],
  [
    'stl-holds-ascii-facets-on-one-side',
    `solid\n${stlFacet([
      [0, 0, 0],
      [40, 0, 0],
      [0, 30, 0],
    ])}${stlFacet([
      [0, 0, 0],
      [0, 30, 0],
      [40, 0, 0],
    ])}endsolid\n`,
    noVolume('ZERO_VOLUME'),
  ],
].map(([name, bytes, expect]) => ({ file: `${name}.stl`, bytes: Buffer.from(bytes), expect }));
