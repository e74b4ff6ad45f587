import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { strFromU8, unzipSync } from 'fflate';
import { STLLoader } from 'three-stdlib';
import { describe, expect, it } from 'vitest';
import {
  boundsOf,
  divergenceVolume,
  readScan,
  triangleCount,
  type TriangleMesh,
} from '../../../src/geometry';
import { MESH_WRITERS, writerFor } from '../../../src/geometry/io/writers';
import { write3mf } from '../../../src/geometry/io/write3mf';
import { writeStl } from '../../../src/geometry/io/writeStl';
import { expectClose } from '../../support/close';
import { moved } from '../../support/meshTools';
import { problemOf, valueOf } from '../../support/outcome';
import { box, icosphere, torus } from '../../support/shapes';

const TORUS = torus(50, 12, 48, 24);
const text = (bytes: Uint8Array, from: number, to: number): string => strFromU8(bytes.subarray(from, to));

describe('binary STL', () => {
  const bytes = writeStl(TORUS);

  it('our reader takes it: the same facets, corners as float32, closed', () => {
    const scan = valueOf(readScan({ bytes, name: 'torus.stl' }));
    expect(scan).toMatchObject({ trianglesRead: triangleCount(TORUS), findings: [] });
    expect(cornersOf(scan.mesh)).toEqual(cornersOf(TORUS).map(Math.fround));
    expectClose(divergenceVolume(scan.mesh), divergenceVolume(TORUS), 1e-6);
  });

  it('three-stdlib reads the same corners, and normals that are those of its own geometry', () => {
    const geometry = new STLLoader().parse(bytes.buffer as ArrayBuffer);
    expect([...geometry.getAttribute('position').array]).toEqual(cornersOf(TORUS).map(Math.fround));
    const written = [...geometry.getAttribute('normal').array];
    geometry.computeVertexNormals();
    const computed = geometry.getAttribute('normal').array;
    expect(Math.max(...written.map((x, i) => Math.abs(x - computed[i]!)))).toBeLessThan(1e-5);
  });

  it('its header does not start with "solid", which would say text, and names the unit', () => {
    expect(text(bytes, 0, 80)).toMatch(/^(?!solid).*millimeters/);
    expect(bytes.length).toBe(84 + 50 * triangleCount(TORUS));
  });

  it('a facet without area has the normal 0 0 0 and not NaN', () => {
    const { positions, triangles } = box([1, 1, 1]);
    const flat = writeStl({ positions, triangles: Int32Array.of(...triangles, 0, 1, 1) });
    const view = new DataView(flat.buffer, flat.length - 50);
    expect([0, 4, 8].map((at) => view.getFloat32(at, true))).toEqual([0, 0, 0]);
  });
});

describe('3MF (3MF Core Specification 1.4.0), unzipped by fflate and parsed by fast-xml-parser', () => {
  const bytes = write3mf(TORUS);
  const parts = Object.fromEntries(Object.entries(unzipSync(bytes)).map(([k, v]) => [k, strFromU8(v)]));
  const parsed = (name: string): Parsed =>
    new XMLParser({ ignoreAttributes: false, attributeNamePrefix: '' }).parse(parts[name]!) as Parsed;

  it('has the three parts a package needs, each sound XML', () => {
    expect(Object.keys(parts).sort()).toEqual(['3D/3dmodel.model', '[Content_Types].xml', '_rels/.rels']);
    for (const part of Object.values(parts)) expect(XMLValidator.validate(part)).toBe(true);
  });

  it('its root relationship leads to the model, whose content type is declared by its ending', () => {
    const { Relationship } = parsed('_rels/.rels').Relationships!;
    expect(Relationship.Target).toBe('/3D/3dmodel.model');
    expect(Relationship.Type).toBe('http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel');
    expect(parsed('[Content_Types].xml').Types!.Default).toContainEqual({
      Extension: 'model',
      ContentType: 'application/vnd.ms-package.3dmanufacturing-3dmodel+xml',
    });
  });

  it('says millimeter, and builds its one object', () => {
    const { unit, xmlns, resources, build } = parsed('3D/3dmodel.model').model!;
    expect(unit).toBe('millimeter');
    expect(xmlns).toBe('http://schemas.microsoft.com/3dmanufacturing/core/2015/02');
    expect(resources.object.type).toBe('model');
    expect(build.item.objectid).toBe(resources.object.id);
  });

  it('holds the same facets on the same vertices, to a nanometer', () => {
    const mesh = meshOf3mf(parsed('3D/3dmodel.model'));
    expect(mesh.triangles).toEqual(TORUS.triangles);
    expect(mesh.positions.length).toBe(TORUS.positions.length);
    const offBy = mesh.positions.map((x, i) => Math.abs(x - TORUS.positions[i]!));
    expect(Math.max(...offBy)).toBeLessThanOrEqual(0.51e-6);
  });

  it('every number is one that the schema takes (ST_Number), also small, large and negative zero', () => {
    const positions = Float64Array.of(-0, 1e-7, -4e-7, 1e-6, -1.5e-6, 9.9e7, 123_456.789_012_3, 1 / 3, -1e5);
    const small = write3mf({ positions, triangles: Int32Array.of(0, 1, 2) });
    const xml = strFromU8(unzipSync(small)['3D/3dmodel.model']!);
    const numbers = [...xml.matchAll(/ [xyz]="([^"]*)"/g)].map(([, number]) => number!);
    expect(numbers.length).toBe(9);
    const schema = /^(-|\+)?(([0-9]+(\.[0-9]+)?)|(\.[0-9]+))((e|E)(-|\+)?[0-9]+)?$/;
    numbers.forEach((number, i) => {
      expect(number).toMatch(schema);
      expect(Math.abs(Number(number) - positions[i]!)).toBeLessThanOrEqual(0.51e-6);
    });
  });

  it('its parts carry the date 1980-01-01 0:00, whatever the clock says (MS-DOS date 33, time 0)', () => {
    const view = new DataView(bytes.buffer, bytes.byteOffset);
    expect(view.getUint32(0, true)).toBe(0x04034b50);
    expect(text(bytes, 30, 49)).toBe('[Content_Types].xml');
    expect([view.getUint16(10, true), view.getUint16(12, true)]).toEqual([0, 33]);
  });
});

describe('the list of writers', () => {
  it.each(MESH_WRITERS)('$title: equal meshes give equal bytes, and the mesh is left alone', ({ write }) => {
    const [one, two] = [icosphere(20, 2), icosphere(20, 2)];
    expect(write(one)).toEqual(write(two));
    expect(one).toEqual(icosphere(20, 2));
  });

  it.each(MESH_WRITERS)(
    '$title: coordinates come back to half the step it claims',
    ({ key, stepMm, write }) => {
      const mesh = moved(icosphere(20, 1), [1234.5678, -0.1, 77.7]);
      const bytes = write(mesh);
      const back =
        key === 'stl'
          ? valueOf(readScan({ bytes, name: 'a.stl' })).mesh
          : meshOf3mf(parsedModel(strFromU8(unzipSync(bytes)['3D/3dmodel.model']!)));
      const limit = 0.51 * stepMm(Math.max(...boundsOf(mesh).max));
      const theirs = cornersOf(back);
      cornersOf(mesh).forEach((x, i) => expect(Math.abs(x - theirs[i]!)).toBeLessThanOrEqual(limit));
    },
  );

  it('the ending of the name chooses, in any case', () => {
    expect(valueOf(writerFor('a/b.c/skin.STL')).key).toBe('stl');
    expect(valueOf(writerFor('skin.3mf')).key).toBe('3mf');
  });

  it.each([
    ['skin.obj', 'obj'],
    ['skin', ''],
    ['my.folder/skin', ''],
    ['stl', ''],
  ])('%s is not written', (name, format) => {
    expect(problemOf(writerFor(name))).toMatchObject({
      code: 'UNSUPPORTED_FORMAT',
      values: { format, known: 'STL, 3MF' },
    });
  });
});

interface Parsed {
  Relationships?: { Relationship: { Target: string; Type: string } };
  Types?: { Default: { Extension: string; ContentType: string }[] };
  model?: {
    unit: string;
    xmlns: string;
    resources: {
      object: {
        id: string;
        type: string;
        mesh: {
          vertices: { vertex: { x: string; y: string; z: string }[] };
          triangles: { triangle: { v1: string; v2: string; v3: string }[] };
        };
      };
    };
    build: { item: { objectid: string } };
  };
}

const parsedModel = (xml: string): Parsed =>
  new XMLParser({ ignoreAttributes: false, attributeNamePrefix: '' }).parse(xml) as Parsed;

function meshOf3mf({ model }: Parsed): TriangleMesh {
  const { vertices, triangles } = model!.resources.object.mesh;
  return {
    positions: Float64Array.from(vertices.vertex.flatMap(({ x, y, z }) => [x, y, z].map(Number))),
    triangles: Int32Array.from(triangles.triangle.flatMap(({ v1, v2, v3 }) => [v1, v2, v3].map(Number))),
  };
}

/** x, y, z of every corner of every facet, in order. */
const cornersOf = ({ positions, triangles }: TriangleMesh): number[] =>
  [...triangles].flatMap((v) => [...positions.subarray(3 * v, 3 * v + 3)]);
