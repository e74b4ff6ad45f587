import { Buffer } from 'node:buffer';
import { box, soup, triangles } from './shapes.mjs';
import { stlBinary } from './write.mjs';
import { zip } from './zip.mjs';

const BOX = box([40, 30, 20]);
const VOLUME = 24_000;

const exact = (volume_mm3 = VOLUME) => ({ outcome: 'exact', volume_mm3 });
const warn = (warnings_any_of, volume_mm3 = VOLUME) => ({ outcome: 'warn', volume_mm3, warnings_any_of });
const reject = (...error_codes_any_of) => ({ outcome: 'reject', error_codes_any_of });

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
const RELATIONS =
  '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="r" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>';

const MESH = `<mesh><vertices>${BOX.points.map(([x, y, z]) => `<vertex x="${x}" y="${y}" z="${z}"/>`).join('')}</vertices><triangles>${triangles(
  BOX,
)
  .map(([a, b, c]) => `<triangle v1="${a}" v2="${b}" v3="${c}"/>`)
  .join('')}</triangles></mesh>`;
const OBJECT = `<object id="1" type="model">${MESH}</object>`;

const model = ({ unit = '', ahead = '', objects = OBJECT, items = '<item objectid="1"/>' } = {}) =>
  `<?xml version="1.0" encoding="UTF-8"?>${ahead}<model ${unit}xmlns="${CORE}"><resources>${objects}</resources><build>${items}</build></model>`;
const parts = (text, more = {}) => [
  { name: '_rels/.rels', text: RELATIONS },
  { name: '3D/3dmodel.model', text, ...more },
];
const archive = (wish, more = {}) => zip(parts(model(wish), more));
const at = (transform) => `<item objectid="1" transform="${transform}"/>`;
const BLANKS = model() + ' '.repeat(17 * 2 ** 20);

/** The packed model with one bit turned. */
function damaged() {
  const bytes = archive({}, { packed: true });
  bytes[bytes.indexOf('3dmodel.model') + 200] ^= 4;
  return bytes;
}

export const THREEMF = [
  ['3mf-in-millimeters', archive({ unit: 'unit="millimeter" ' }), exact()],
  ['3mf-without-a-unit', archive(), exact()],
  ['3mf-in-inches', archive({ unit: 'unit="inch" ' }), exact(VOLUME * 25.4 ** 3)],
  ['3mf-in-meters', archive({ unit: 'unit="meter" ' }), warn(['UNITS_SUSPECT'], VOLUME * 1e9)],
  ['3mf-in-microns', archive({ unit: 'unit="micron" ' }), warn(['UNITS_SUSPECT'], VOLUME / 1e9)],
  [
    '3mf-placed-twice',
    archive({ items: at('1 0 0 0 1 0 0 0 1 0 0 0') + at('1 0 0 0 1 0 0 0 1 90 0 0') }),
    warn(['MULTI_SHELL'], 2 * VOLUME),
  ],
  [
    '3mf-placed-half-again-as-large',
    archive({ items: at('1.5 0 0 0 1.5 0 0 0 1.5 0 0 0') }),
    exact(1.5 ** 3 * VOLUME),
  ],
  ['3mf-placed-mirrored', archive({ items: at('-1 0 0 0 1 0 0 0 1 0 0 0') }), warn(['MIRRORED'])],
  [
    '3mf-components-of-components',
    archive({
      objects: `${OBJECT}<object id="2"><components><component objectid="1"/><component objectid="1" transform="1 0 0 0 1 0 0 0 1 60 0 0"/></components></object><object id="3"><components><component objectid="2"/></components></object>`,
      items: '<item objectid="3"/>',
    }),
    warn(['MULTI_SHELL'], 2 * VOLUME),
  ],
  [
    '3mf-object-that-is-not-built',
    archive({ objects: OBJECT + OBJECT.replace('id="1"', 'id="2"') }),
    exact(),
  ],
  ['3mf-packed', archive({}, { packed: true }), exact()],
  ['3mf-sizes-of-64-bits', zip(parts(model(), { packed: true }), { wide: true }), exact()],
  [
    '3mf-path-out-of-the-archive',
    zip([
      ...parts(model()),
      { name: '../../../climbed-out', text: 'x' },
      { name: 'C:\\climbed-out', text: 'x' },
    ]),
    exact(),
  ],
  ['3mf-without-relations', zip(parts(model()).slice(1)), warn(['BAD_REFERENCE'])],
  ['3mf-is-a-binary-stl', stlBinary(soup(BOX)), warn(['WRONG_FORMAT'])],
  ['3mf-bomb-of-blanks', zip(parts(BLANKS, { packed: true })), reject('UNSAFE_ARCHIVE')],
  [
    '3mf-bomb-that-lies-about-its-size',
    zip(parts(BLANKS, { packed: true, bytes: 2000 })),
    reject('UNSAFE_ARCHIVE'),
  ],
  [
    '3mf-document-type-with-entities',
    archive({ ahead: '<!DOCTYPE m [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;">]>' }),
    reject('UNSAFE_XML'),
  ],
  [
    '3mf-document-type-elsewhere',
    archive({ ahead: '<!DOCTYPE m SYSTEM "http://127.0.0.1:9/x.dtd">' }),
    reject('UNSAFE_XML'),
  ],
  ['3mf-encrypted', archive({}, { flags: 1 }), reject('UNSUPPORTED_FORMAT')],
  ['3mf-packed-by-an-unknown-method', archive({}, { method: 99 }), reject('UNSUPPORTED_FORMAT')],
  ['3mf-checksum-wrong', archive({}, { crc: 1234 }), reject('CORRUPT_ARCHIVE')],
  ['3mf-bit-turned-in-the-packed-model', damaged(), reject('CORRUPT_ARCHIVE')],
  ['3mf-cut-in-two', archive().subarray(0, 900), reject('CORRUPT_ARCHIVE')],
  [
    '3mf-part-listed-twice',
    zip([...parts(model()), { name: '3d/3DMODEL.MODEL', text: model() }]),
    reject('UNSAFE_ARCHIVE'),
  ],
  ['3mf-unit-nobody-knows', archive({ unit: 'unit="cubit" ' }), reject('BAD_UNIT')],
  [
    '3mf-object-in-itself',
    archive({ objects: '<object id="1"><components><component objectid="1"/></components></object>' }),
    reject('CYCLE'),
  ],
  [
    '3mf-builds-an-object-that-is-missing',
    archive({ items: '<item objectid="7"/>' }),
    reject('BAD_REFERENCE'),
  ],
  ['3mf-transform-flattens', archive({ items: at('1 0 0 0 1 0 0 0 0 0 0 0') }), reject('BAD_TRANSFORM')],
  [
    '3mf-index-beyond-the-last',
    archive({ objects: OBJECT.replace('v1="0"', 'v1="8"') }),
    reject('INDEX_OUT_OF_RANGE'),
  ],
  ['3mf-coordinate-nan', archive({ objects: OBJECT.replace('x="40"', 'x="NaN"') }), reject('BAD_NUMBER')],
  [
    '3mf-builds-an-empty-object-beside-the-box',
    archive({
      objects: `${OBJECT}<object id="2"><mesh><vertices/><triangles/></mesh></object>`,
      items: '<item objectid="1"/><item objectid="2"/>',
    }),
    warn(['IGNORED_ELEMENTS']),
  ],
  ['3mf-nothing-built', archive({ items: '' }), reject('NO_TRIANGLES')],
  ['3mf-model-stops-early', zip(parts(model().slice(0, -30))), reject('SYNTAX')],
].map(([name, bytes, expect]) => ({ file: `${name}.3mf`, bytes: Buffer.from(bytes), expect }));
