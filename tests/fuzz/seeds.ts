import { textBytes, stlBytes, stlText, objText } from '../support/writeMesh';
import { ascii, BE, big, binary, headerOf, LE, little, rows, TRIANGLES } from '../support/plyFiles';
import { MESH, modelText, OBJECT, PRODUCTION, RELATIONS, utf16, type Wish } from '../support/threemfFiles';
import { box, icosphere, torus } from '../support/shapes';
import { sampleBytes } from '../support/samples';
import { joined } from '../support/meshTools';

/** Good files that mutants are made from. Small ones: a mutation then meets what counts, and many are tried a second. */

const TWO = joined(box([40, 30, 20]), box([10, 10, 10], [60, 0, 0]));
const ROUND = icosphere(25, 1);

export const STL_BINARY: readonly Uint8Array[] = [
  stlBytes(box([40, 30, 20])),
  stlBytes(box([40, 30, 20]), 'solid as some headers begin'),
  stlBytes(ROUND),
  stlBytes(TWO),
  sampleBytes('box-with-void.stl'),
];

export const STL_ASCII: readonly Uint8Array[] = [
  sampleBytes('box-40x30x20-ascii.stl'),
  textBytes(stlText(box([40, 30, 20]), 'my solid box')),
  textBytes(stlText(ROUND, '')),
  textBytes(stlText(TWO).toUpperCase().replaceAll('\n', '\r\n')),
  textBytes(stlText(box([4, 3, 2])).replaceAll('\n', ' ')),
  textBytes(stlText(box([40, 30, 20]), 'one') + stlText(box([5, 5, 5], [80, 0, 0]), 'two')),
];

/** A house: its gables are pentagons, one of them turned in by a step so that it has a concave corner. */
const HOUSE = `# a house
mtllib house.mtl
o house
v 0 0 0
v 40 0 0
v 40 0 20
v 20 0 12
v 0 0 20
v 0 30 0
v 40 30 0
v 40 30 20
v 20 30 12
v 0 30 20
vt 0.5 0.5
vn 0 -1 0
g front
usemtl wood
s off
f 1/1/1 2/1/1 3/1/1 4/1/1 5/1/1
f 10 9 8 7 6
f -10//1 -5//1 -4//1 -9//1
f 2 7 8 3
f 3 8 9 4
f 4 9 10 5
f 5 10 \\
 6 1
`;

export const OBJ: readonly Uint8Array[] = [
  sampleBytes('box-40x30x20-quads.obj'),
  textBytes(HOUSE),
  textBytes(HOUSE.replaceAll('\n', '\r\n')),
  textBytes(objText(ROUND)),
  textBytes(objText(TWO).replace(/^(v .*)$/gm, '$1 0.2 0.4 0.6')),
  textBytes(objText(torus(30, 8, 8, 6))),
];

const MORE = { vertex: ['double x', 'double y', 'double z', 'uchar red'], faces: TRIANGLES };
const COLORED = rows('Float64', 'Uint8', 'Int16', TRIANGLES).flatMap((value, k): ReturnType<typeof rows> =>
  k < 24 && k % 3 === 2 ? [value, ['Uint8', 200]] : [value],
);

export const PLY: readonly Uint8Array[] = [
  textBytes(ascii()),
  textBytes(
    ascii({ vertex: ['float x', 'float y', 'float z', 'uchar red', 'float nx'], vertexTail: ' 12 0.5' }),
  ),
  textBytes(ascii({ faces: TRIANGLES }).replaceAll('\n', '\r\n')),
  textBytes(
    ascii({
      ahead: 'element light 2\nproperty int x\nproperty list uchar int ids',
      aheadRows: '1 2 7 8\n3 0\n',
    }),
  ),
  little,
  big,
  binary(headerOf({ ...MORE, format: LE, face: ['list uchar short vertex_index'] }), COLORED, true),
  binary(headerOf({ ...MORE, format: BE, face: ['list uchar short vertex_index'] }), COLORED, false),
];

/** The texts of a package: mutants are made in them or in the packed bytes. */
export interface Package {
  relations: Uint8Array;
  model: Uint8Array;
  more?: Readonly<Record<string, Uint8Array>>;
}

const packageOf = (wish: Wish, more?: Package['more']): Package => ({
  relations: textBytes(RELATIONS),
  model: textBytes(modelText(wish)),
  ...(more === undefined ? {} : { more }),
});

const TURNED = '0 1 0 -1 0 0 0 0 1 5 5 5';
const PAIR = `<object id="2"><components><component objectid="1"/><component objectid="1" transform="-1 0 0 0 1 0 0 0 1 -10 0 0"/></components></object>`;
const OTHER_PART = modelText({ objects: `<object id="7">${MESH}</object>`, items: '' });

export const PACKAGES: readonly Package[] = [
  packageOf({}),
  packageOf({
    attributes: 'unit="inch" xml:lang="en"',
    items: `<item objectid="1" transform="${TURNED}" partnumber="a"/>`,
  }),
  packageOf({
    objects: OBJECT + PAIR,
    items: '<item objectid="2"/><item objectid="1" transform="1 0 0 0 1 0 0 0 1 0 0 90"/>',
  }),
  packageOf({
    objects: OBJECT.replace(
      '<mesh>',
      '<!-- a box --><metadatagroup><metadata name="x">a &amp; b</metadata></metadatagroup><mesh>',
    ),
  }),
  packageOf(
    {
      objects: '',
      attributes: `unit="centimeter" xmlns:p="${PRODUCTION}"`,
      items: '<item objectid="7" p:path="/3D/Other.model"/>',
    },
    { '3D/other.model': textBytes(OTHER_PART) },
  ),
  { ...packageOf({}), model: utf16(modelText({}).replace('UTF-8', 'UTF-16'), true) },
];
