import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { divergenceVolume, readScan } from '../../../src/geometry';
import { write3mf } from '../../../src/geometry/io/write3mf';
import { sizeScan } from '../../../src/plan';
import { expectClose } from '../../support/close';
import { measured } from '../../support/measured';
import { valueOf } from '../../support/outcome';
import { box, torus } from '../../support/shapes';
import {
  archive,
  MAIN,
  MESH,
  modelText,
  OBJECT,
  packed,
  PRODUCTION,
  RELATIONS,
  utf16,
  withModel,
} from '../../support/threemfFiles';

const BOX = box([40, 30, 20]);

const read = (bytes: Uint8Array): ReturnType<typeof readScan> => readScan({ bytes, name: 'scan.3mf' });

describe('a box of 40 x 30 x 20 comes out of every form of 3MF as 12 triangles and 24 000 mm3', () => {
  it.each<[string, Uint8Array]>([
    ['as it should be', archive(modelText())],
    ['written by us', write3mf(BOX)],
    [
      'stored, not packed',
      zipSync({ '_rels/.rels': strToU8(RELATIONS), [MAIN]: strToU8(modelText()) }, { level: 0 }),
    ],
    ['UTF-16, little-endian', archive(utf16(modelText().replace('UTF-8', 'UTF-16'), true))],
    ['UTF-16, big-endian', archive(utf16(modelText().replace('UTF-8', 'UTF-16'), false))],
    ['a byte order mark', archive(`\ufeff${modelText()}`)],
    [
      'a prefix before every name',
      archive(
        modelText()
          .replace('xmlns="', 'xmlns:c="')
          .replace(/<(\/?)(?=[a-z])/g, '<$1c:'),
      ),
    ],
    ['names of parts in another case', packed({ '_RELS/.rels': RELATIONS, '3d/3DModel.model': modelText() })],
    ['an object that is not built', withModel({ objects: OBJECT + OBJECT.replace('id="1"', 'id="2"') })],
    [
      'metadata and elements of nobody we know',
      withModel({
        attributes: 'xmlns:q="urn:q"',
        objects: `<q:thing><q:mesh/><vertex x="1"/></q:thing>${OBJECT.replace('<mesh>', '<metadatagroup/><mesh>')}`,
      }),
    ],
    [
      'a mesh of another namespace in the object, by its own xmlns',
      withModel({ objects: OBJECT.replace('</mesh>', '</mesh><mesh xmlns="urn:q"><vertices/></mesh>') }),
    ],
    [
      'by way of a component',
      withModel({
        objects: `${OBJECT}<object id="2"><components><component objectid="1" transform="0 1 0 -1 0 0 0 0 1 30 0 0"/></components></object>`,
        items: '<item objectid="2" transform="0 -1 0 1 0 0 0 0 1 0 30 0"/>',
      }),
    ],
    [
      'by way of a part of its own',
      withModel(
        {
          attributes: `xmlns:p="${PRODUCTION}" requiredextensions="p"`,
          objects:
            '<object id="2"><components><component objectid="1" p:path="/3D/Objects/one.model"/></components></object>',
          items: '<item objectid="2"/>',
        },
        { '3D/Objects/one.model': modelText({ items: '' }) },
      ),
    ],
    [
      'names that climb out of the archive, beside it',
      archive(modelText(), { '../../out': 'x', '/tmp/out': 'x', 'C:\\out': 'x' }),
    ],
  ])('%s', (_, bytes) => {
    const scan = valueOf(read(bytes));
    expect(scan).toMatchObject({ format: '3mf', unit: 'mm', trianglesRead: 12, findings: [] });
    expectClose(divergenceVolume(scan.mesh), 24_000, 1e-12);
    expect(measured(scan.mesh)).toMatchObject({ closed: true, pieces: 1, extentsMm: [40, 30, 20] });
  });

  it('a surface of ours comes back to the nanometer', () => {
    const shape = torus(50, 12, 48, 24);
    expectClose(divergenceVolume(valueOf(read(write3mf(shape))).mesh), divergenceVolume(shape), 1e-7);
  });

  it('the build places it: twice, half again as large, and as its mirror image', () => {
    const items = [
      '<item objectid="1" transform="1.5 0 0 0 1.5 0 0 0 1.5 100 0 0"/>',
      '<item objectid="1" transform="-1 0 0 0 1 0 0 0 1 -10 0 0"/>',
    ].join('');
    const { mesh, findings, trianglesRead } = valueOf(read(withModel({ items })));
    expect(trianglesRead).toBe(24);
    expectClose(divergenceVolume(mesh), 24_000 * (1.5 ** 3 + 1), 1e-12);
    expect(measured(mesh)).toMatchObject({ pieces: 2, extentsMm: [210, 45, 30] });
    expect(findings).toEqual([{ code: 'MIRRORED', status: 'fine', values: { count: 1 } }]);
  });

  it('what holds up a print is left out, and said', () => {
    const objects = `${OBJECT}<object id="2" type="support">${MESH}</object>`;
    const items = '<item objectid="1"/><item objectid="2" transform="1 0 0 0 1 0 0 0 1 90 0 0"/>';
    const scan = valueOf(read(withModel({ objects, items })));
    expectClose(divergenceVolume(scan.mesh), 24_000, 1e-12);
    expect(scan.findings).toMatchObject([{ code: 'IGNORED_ELEMENTS', status: 'look', values: { count: 1 } }]);
  });
});

describe('the unit is that of the file', () => {
  it.each([
    ['micron', 1e-3],
    ['millimeter', 1],
    ['centimeter', 10],
    ['inch', 25.4],
    ['foot', 304.8],
    ['meter', 1000],
  ])('%s', (unit, mm) => {
    const size = valueOf(sizeScan(valueOf(read(withModel({ attributes: `unit="${unit}"` })))));
    expectClose(size.volumeCm3.value, 24 * mm ** 3, 1e-9);
    expect(size.scale).toMatchObject({ from: 'file', by: 'own unit', disagreements: [] });
  });

  it('a unit that is given or taped goes before it; that they differ is said', () => {
    const scan = valueOf(read(archive(modelText())));
    const given = valueOf(sizeScan(scan, { fileUnit: 'in' }));
    expectClose(given.volumeCm3.value, 24 * 25.4 ** 3, 1e-9);
    expect(given.scale).toMatchObject({ from: 'given', by: 'file unit' });
    expect(given.findings.map(({ code }) => code)).toContain('UNITS_SUSPECT');
    const taped = valueOf(sizeScan(scan, { taped: [{ along: 'tall', lengthMm: 20.1 }] }));
    expect(taped.scale).toMatchObject({ from: 'taped', by: 'tall' });
    expect(taped.findings.map(({ code }) => code)).not.toContain('UNITS_SUSPECT');
  });
});
