import type { TriangleMesh } from '../triangleMesh';

/** 80 bytes that must not start with "solid", by which readers tell the text form. STL has no field for the unit. */
const HEADER = 'Risewright binary STL, lengths in millimeters';

/**
 * Binary STL: the header, a little-endian facet count, 50 bytes a facet (unit normal, three corners, attribute 0), in mm as
 * float32. A facet without area gets the normal 0 0 0.
 */
export function writeStl({ positions: p, triangles }: TriangleMesh): Uint8Array {
  const count = triangles.length / 3;
  const bytes = new Uint8Array(84 + 50 * count);
  bytes.set(new TextEncoder().encode(HEADER));
  const view = new DataView(bytes.buffer);
  view.setUint32(80, count, true);
  for (let facet = 0, at = 84; facet < count; facet++, at += 50) {
    const [a, b, c] = [0, 1, 2].map((k) => 3 * triangles[3 * facet + k]!) as [number, number, number];
    writePoint(view, at, normalOf(p, a, b, c));
    [a, b, c].forEach((v, k) => writePoint(view, at + 12 + 12 * k, [p[v]!, p[v + 1]!, p[v + 2]!]));
  }
  return bytes;
}

type Vector = readonly [number, number, number];

function writePoint(view: DataView, at: number, [x, y, z]: Vector): void {
  view.setFloat32(at, x, true);
  view.setFloat32(at + 4, y, true);
  view.setFloat32(at + 8, z, true);
}

function normalOf(p: Float64Array, a: number, b: number, c: number): Vector {
  const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!];
  const [vx, vy, vz] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!];
  const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const length = Math.hypot(x, y, z);
  return length > 0 ? [x / length, y / length, z / length] : [0, 0, 0];
}
