import { Buffer } from 'node:buffer';
import { cross, dot, minus, pointAt } from './measure.mjs';

/** Binary STL: 80-byte header, uint32 count, 50 bytes a triangle, little endian. */
export function binaryStl(header, mesh) {
  if (header.startsWith('solid') || header.length > 80) throw new Error(`binaryStl: bad header '${header}'`);
  const count = mesh.triangles.length / 3;
  const bytes = Buffer.alloc(84 + 50 * count);
  bytes.write(header.padEnd(80, ' '), 0, 'latin1');
  bytes.writeUInt32LE(count, 80);
  for (let t = 0; t < count; t += 1) {
    const facet = facetOf(mesh, t);
    facet.forEach((v, n) => bytes.writeFloatLE(v, 84 + 50 * t + 4 * n));
  }
  return bytes;
}

/** ASCII STL, for small meshes. */
export function asciiStl(name, mesh) {
  const lines = [`solid ${name}`];
  for (let t = 0; t < mesh.triangles.length / 3; t += 1) {
    const f = facetOf(mesh, t);
    lines.push(`  facet normal ${f.slice(0, 3).join(' ')}`, '    outer loop');
    for (const at of [3, 6, 9]) lines.push(`      vertex ${f.slice(at, at + 3).join(' ')}`);
    lines.push('    endloop', '  endfacet');
  }
  return Buffer.from([...lines, `endsolid ${name}`, ''].join('\n'), 'latin1');
}

/** Wavefront OBJ; faces may have any number of corners, indices from 0. */
export function obj(comment, { points, faces }) {
  const lines = [`# ${comment}`];
  for (let v = 0; v < points.length / 3; v += 1) lines.push(`v ${pointAt(points, v).join(' ')}`);
  for (const face of faces) lines.push(`f ${face.map((v) => v + 1).join(' ')}`);
  return Buffer.from([...lines, ''].join('\n'), 'latin1');
}

// Normal and corners, 12 numbers; the normal comes from the float32 corners as written.
function facetOf({ points, triangles }, t) {
  const corners = [0, 1, 2].map((n) => pointAt(points, triangles[3 * t + n]).map(Math.fround));
  const n = cross(minus(corners[1], corners[0]), minus(corners[2], corners[0]));
  const size = Math.sqrt(dot(n, n));
  if (size === 0) throw new Error(`facetOf: expected a triangle with an area, got none at ${corners[0]}`);
  return [...n.map((c) => c / size + 0), ...corners.flat()];
}
