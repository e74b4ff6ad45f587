// The plain file of a shape in each format. What makes a file odd is done to it in its own module.
import { Buffer } from 'node:buffer';
import { soup } from './shapes.mjs';

export function stlBinary(
  facets,
  { header = 'a box of ours', attribute = () => 0, count = facets.length } = {},
) {
  const bytes = Buffer.alloc(84 + 50 * facets.length);
  bytes.write(header.slice(0, 80), 0, 'latin1');
  bytes.writeUInt32LE(count, 80);
  facets.forEach((corners, t) => {
    const at = 84 + 50 * t;
    corners.flat().forEach((x, k) => bytes.writeFloatLE(x, at + 12 + 4 * k));
    bytes.writeUInt16LE(attribute(t), at + 48);
  });
  return bytes;
}

export const stlFacet = (corners, write = String) =>
  [
    '  facet normal 0 0 0',
    '    outer loop',
    ...corners.map((corner) => `      vertex ${corner.map(write).join(' ')}`),
    '    endloop',
    '  endfacet',
    '',
  ].join('\n');

export const stlText = (shape, name = 'box', write = String) =>
  `solid ${name}\n${soup(shape)
    .map((corners) => stlFacet(corners, write))
    .join('')}endsolid ${name}\n`;

export const objVertices = ({ points }) => points.map((p) => `v ${p.join(' ')}\n`).join('');
export const objFaces = ({ faces }, write = (v) => v + 1) =>
  faces.map((face) => `f ${face.map(write).join(' ')}\n`).join('');
export const objText = (shape) => objVertices(shape) + objFaces(shape);

export const plyHeader = (
  { points, faces },
  { format = 'ascii', more = '', face = 'list uchar int vertex_indices' } = {},
) =>
  `ply\nformat ${format} 1.0\nelement vertex ${points.length}\nproperty float x\nproperty float y\nproperty float z\n` +
  `element face ${faces.length}\nproperty ${face}\n${more}end_header\n`;

export const plyText = (shape, wish = {}) =>
  plyHeader(shape, wish) +
  shape.points.map((p) => `${p.join(' ')}\n`).join('') +
  shape.faces.map((f) => `${f.length} ${f.join(' ')}\n`).join('');

/** Binary of either byte order; the list of a face takes `count` and `index` bytes a number. */
export function plyBinary(shape, { little, said = little, count = 1, index = 4, ...wish }) {
  const format = said ? 'binary_little_endian' : 'binary_big_endian';
  const parts = [Buffer.from(plyHeader(shape, { format, ...wish }))];
  const float = (x) => put(4, (bytes) => (little ? bytes.writeFloatLE(x) : bytes.writeFloatBE(x)));
  const whole = (x, size) =>
    put(size, (bytes) => (little ? bytes.writeUIntLE(x, 0, size) : bytes.writeUIntBE(x, 0, size)));
  parts.push(...shape.points.flat().map(float));
  for (const face of shape.faces) parts.push(whole(face.length, count), ...face.map((v) => whole(v, index)));
  return Buffer.concat(parts);
}

function put(size, write) {
  const bytes = Buffer.alloc(size);
  write(bytes);
  return bytes;
}
