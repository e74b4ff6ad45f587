import { facetNormal } from '../facetVector';
import type { TriangleMesh } from '../triangleMesh';

/** 80 bytes that must not start with "solid", by which readers tell the text form. STL has no field for the unit. */
const HEADER = 'Risewright binary STL, lengths in millimeters';

/**
 * Binary STL: the header, a little-endian facet count, 50 bytes a facet (unit normal, three corners, attribute 0), in mm as
 * float32. A facet without area gets the normal 0 0 0.
 */
export function writeStl(mesh: TriangleMesh): Uint8Array {
  const { positions: p, triangles } = mesh;
  const count = triangles.length / 3;
  const bytes = new Uint8Array(84 + 50 * count);
  bytes.set(new TextEncoder().encode(HEADER));
  const view = new DataView(bytes.buffer);
  view.setUint32(80, count, true);
  for (let facet = 0, at = 84; facet < count; facet++, at += 50) {
    writePoint(view, at, facetNormal(mesh, 3 * facet));
    for (let k = 0; k < 3; k++) {
      const v = 3 * triangles[3 * facet + k]!;
      writePoint(view, at + 12 + 12 * k, [p[v]!, p[v + 1]!, p[v + 2]!]);
    }
  }
  return bytes;
}

function writePoint(view: DataView, at: number, [x, y, z]: readonly [number, number, number]): void {
  view.setFloat32(at, x, true);
  view.setFloat32(at + 4, y, true);
  view.setFloat32(at + 8, z, true);
}
