import type { TriangleMesh } from '../../src/geometry';
import { writeStl } from '../../src/geometry/io/writeStl';

/** Writers for tests. The published layouts: text STL by its facets, OBJ by its `v` and `f` lines. */

/** Binary STL by our own writer (checked against three-stdlib in io/writers.test.ts), under a header of the test's. */
export function stlBytes(mesh: TriangleMesh, header = 'a test'): Uint8Array {
  const bytes = writeStl(mesh).fill(0, 0, 80);
  bytes.set(new TextEncoder().encode(header).subarray(0, 80));
  return bytes;
}

export function stlText(mesh: TriangleMesh, name = 'a test'): string {
  const lines = [`solid ${name}`];
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    lines.push('facet normal 0 0 0', 'outer loop');
    for (let c = t; c < t + 3; c++) lines.push(`vertex ${pointText(mesh, mesh.triangles[c]!)}`);
    lines.push('endloop', 'endfacet');
  }
  return `${[...lines, `endsolid ${name}`].join('\n')}\n`;
}

export function objText(mesh: TriangleMesh): string {
  const lines: string[] = [];
  for (let v = 0; v < mesh.positions.length / 3; v++) lines.push(`v ${pointText(mesh, v)}`);
  for (let t = 0; t < mesh.triangles.length; t += 3)
    lines.push(`f ${[0, 1, 2].map((k) => mesh.triangles[t + k]! + 1).join(' ')}`);
  return `${lines.join('\n')}\n`;
}

export const textBytes = (text: string): Uint8Array => new TextEncoder().encode(text);

const pointText = (mesh: TriangleMesh, v: number): string =>
  [0, 1, 2].map((k) => mesh.positions[3 * v + k]!).join(' ');
