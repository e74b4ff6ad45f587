import type { TriangleMesh } from '../../src/geometry';

/** Writers for tests. The published layouts: STL by its facet records, OBJ by its `v` and `f` lines. */

/** Binary STL: 80 bytes, a count, 50 bytes a facet (normals left 0, as allowed). */
export function stlBytes(mesh: TriangleMesh, header = 'a test'): Uint8Array {
  const count = mesh.triangles.length / 3;
  const bytes = new Uint8Array(84 + 50 * count);
  const view = new DataView(bytes.buffer);
  bytes.set(new TextEncoder().encode(header).subarray(0, 80));
  view.setUint32(80, count, true);
  for (let c = 0; c < mesh.triangles.length; c++) {
    const at = 84 + 50 * Math.floor(c / 3) + 12 + 12 * (c % 3);
    for (let k = 0; k < 3; k++)
      view.setFloat32(at + 4 * k, mesh.positions[3 * mesh.triangles[c]! + k]!, true);
  }
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
