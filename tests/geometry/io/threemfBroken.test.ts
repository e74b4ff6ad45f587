import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { divergenceVolume, readScan } from '../../../src/geometry';
import type { Code } from '../../../src/problem';
import { expectClose } from '../../support/close';
import { problemOf } from '../../support/outcome';
import {
  archive,
  MAIN,
  MESH,
  modelText,
  OBJECT,
  packed,
  RELATIONS,
  withModel,
} from '../../support/threemfFiles';

const read = (bytes: Uint8Array): ReturnType<typeof readScan> => readScan({ bytes, name: 'scan.3mf' });

const TEXT = modelText();
const laughs = `<!DOCTYPE m [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;">]>`;
const chain = (links: number): string =>
  Array.from(
    { length: links },
    (_, i) => `<object id="${i + 2}"><components><component objectid="${i + 1}"/></components></object>`,
  ).join('');
const tenfold = (levels: number): string =>
  Array.from(
    { length: levels },
    (_, i) =>
      `<object id="${i + 2}"><components>${`<component objectid="${i + 1}"/>`.repeat(10)}</components></object>`,
  ).join('');

describe('a broken or hostile 3MF is refused with its code', () => {
  it.each<[string, Uint8Array, Code]>([
    ['no archive', strToU8(TEXT), 'NOT_A_MESH'],
    ['an archive of something else', packed({ 'a.txt': 'a' }), 'NOT_A_MESH'],
    ['a relationship to a part that is not there', packed({ '_rels/.rels': RELATIONS }), 'BAD_REFERENCE'],
    [
      'a relationship that climbs out',
      archive(TEXT, { '_rels/.rels': RELATIONS.replace('/3D/', '/../3D/') }),
      'BAD_REFERENCE',
    ],
    [
      'two parts of one name',
      packed({ '_rels/.rels': RELATIONS, [MAIN]: TEXT, '3d/3dmodel.model': TEXT }),
      'UNSAFE_ARCHIVE',
    ],
    ['no XML', archive('v 1 2 3'), 'SYNTAX'],
    ['XML that stops', archive(TEXT.slice(0, -20)), 'SYNTAX'],
    ['XML of something else', archive('<svg/>'), 'SYNTAX'],
    ['a document type with entities', withModel({ ahead: laughs }), 'UNSAFE_XML'],
    [
      'a document type elsewhere',
      withModel({ ahead: '<!DOCTYPE m SYSTEM "http://127.0.0.1:9/x">' }),
      'UNSAFE_XML',
    ],
    ['an entity that nobody declared', archive(TEXT.replace('id="1"', 'id="&a;"')), 'SYNTAX'],
    [
      'elements in elements without end',
      withModel({ objects: '<a>'.repeat(5000) + '</a>'.repeat(5000) }),
      'UNSAFE_XML',
    ],
    ['a remark without end', withModel({ ahead: `<!--${' '.repeat(5e6)}-->` }), 'UNSAFE_XML'],
    ['bytes that are no UTF-8', archive(Uint8Array.of(...strToU8(TEXT), 0xff)), 'UNSUPPORTED_ENCODING'],
    ['another encoding', archive(TEXT.replace('UTF-8', 'Shift_JIS')), 'UNSUPPORTED_ENCODING'],
    ['a unit nobody knows', withModel({ attributes: 'unit="constructor"' }), 'BAD_UNIT'],
    [
      'an extension that must be known',
      withModel({ attributes: 'xmlns:v="urn:v" requiredextensions="v"' }),
      'UNSUPPORTED_FEATURE',
    ],
    [
      'a lattice of beams',
      archive(TEXT.replace('</mesh>', '<b:beamlattice xmlns:b="urn:b"/></mesh>')),
      'UNSUPPORTED_FEATURE',
    ],
    ['nothing built', withModel({ items: '' }), 'NO_TRIANGLES'],
    ['an object that is not there', withModel({ items: '<item objectid="7"/>' }), 'BAD_REFERENCE'],
    ['two objects of one number', withModel({ objects: OBJECT + OBJECT }), 'BAD_REFERENCE'],
    ['an object without a number', archive(TEXT.replace(' id="1"', '')), 'SYNTAX'],
    ['two meshes in one object', archive(TEXT.replace('</mesh>', `</mesh>${MESH}`)), 'SYNTAX'],
    [
      'an object in itself',
      withModel({ objects: '<object id="1"><components><component objectid="1"/></components></object>' }),
      'CYCLE',
    ],
    ['a coordinate nan', archive(TEXT.replace('x="40"', 'x="nan"')), 'BAD_NUMBER'],
    ['a coordinate in hexadecimal', archive(TEXT.replace('x="40"', 'x="0x28"')), 'BAD_NUMBER'],
    ['a decimal comma', archive(TEXT.replace('x="40"', 'x="40,0"')), 'BAD_NUMBER'],
    ['a coordinate of 1e9', archive(TEXT.replaceAll('x="40"', 'x="1e9"')), 'COORD_RANGE'],
    ['vertex 8 of 0 to 7', archive(TEXT.replace('v1="0"', 'v1="8"')), 'INDEX_OUT_OF_RANGE'],
    ['vertex 9999999999', archive(TEXT.replace('v1="0"', 'v1="9999999999"')), 'INDEX_OUT_OF_RANGE'],
    ['vertex -1', archive(TEXT.replace('v1="0"', 'v1="-1"')), 'BAD_INDEX'],
    [
      'a transform of six numbers',
      withModel({ items: '<item objectid="1" transform="1 0 0 1 0 0"/>' }),
      'SYNTAX',
    ],
    [
      'a transform that is no number',
      withModel({ items: '<item objectid="1" transform="1 0 0 0 one 0 0 0 1 0 0 0"/>' }),
      'BAD_NUMBER',
    ],
    [
      'a transform that flattens',
      withModel({ items: '<item objectid="1" transform="1 0 0 0 1 0 0 0 0 0 0 0"/>' }),
      'BAD_TRANSFORM',
    ],
    [
      'objects in objects without end',
      withModel({ objects: OBJECT + chain(5000), items: '<item objectid="5001"/>' }),
      'TOO_LARGE',
    ],
    [
      'ten of ten of ten ...',
      withModel({ objects: OBJECT + tenfold(60), items: '<item objectid="61"/>' }),
      'TOO_LARGE',
    ],
  ])('%s', (_, bytes, code) => {
    expect(problemOf(read(bytes))).toMatchObject({ code, status: 'stop' });
  });

  it('every way of cutting the archive short is an error', () => {
    const bytes = archive(TEXT);
    for (let length = 1; length < bytes.length; length += 7)
      expect(read(bytes.subarray(0, length)).ok, `${length} bytes`).toBe(false);
  });

  it('a flipped byte of the packed model never gives another mesh', () => {
    const bytes = archive(TEXT);
    const start = 30 + '_rels/.rels'.length;
    for (let at = start; at < bytes.length - 200; at += 11) {
      const flipped = bytes.slice();
      flipped[at]! ^= 0x10;
      const scan = read(flipped);
      if (scan.ok) expectClose(divergenceVolume(scan.value.mesh), 24_000, 1e-12);
    }
  });
});

describe('an archive that unpacks without end is not unpacked', () => {
  const bomb = archive(`${TEXT}${' '.repeat(2 ** 25)}`);
  /** Where the size stands in the directory entry of the model: the last in the archive. */
  const sizeAt = (bytes: Uint8Array): number => {
    const view = new DataView(bytes.buffer);
    for (let at = bytes.length - 46; ; at--) if (view.getUint32(at, true) === 0x02014b50) return at + 24;
  };

  it('one that says so is refused by its size', () => {
    expect(problemOf(read(bomb))).toMatchObject({
      code: 'UNSAFE_ARCHIVE',
      values: { part: 'ratio', limit: 200 },
    });
  });

  it('one that lies about its size is stopped at the first byte more', () => {
    const lying = bomb.slice();
    new DataView(lying.buffer).setUint32(sizeAt(lying), 2000, true);
    expect(problemOf(read(lying))).toMatchObject({
      code: 'UNSAFE_ARCHIVE',
      values: { part: 'more', bytes: 2000 },
    });
  });

  it('one that says it is larger than can be held', () => {
    const huge = bomb.slice();
    new DataView(huge.buffer).setUint32(sizeAt(huge), 0xfffffffe, true);
    expect(problemOf(read(huge))).toMatchObject({
      code: 'TOO_LARGE',
      values: { part: 'bytes', limit: 2 ** 30 },
    });
  });
});
