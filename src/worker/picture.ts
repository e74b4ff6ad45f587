import { bad, good, type Outcome } from '../problem';
import { boundsOf, cutMesh, extentsOf, placeMesh, type ScanFile, type TriangleMesh } from '../geometry';
import { nextCorner, OPEN, pairEdges } from '../geometry/repair/edges';
import type { Picture, PicturePlace } from './protocol';

/** The surface to draw, turned up and centered before it is rounded to float32. Error: CUT_EMPTY. */
export function drawPicture(scan: ScanFile, { up, cut }: PicturePlace): Outcome<Picture> {
  const turned = placeMesh(scan.mesh, { up, mmPerUnit: 1 });
  const mesh =
    cut === undefined ? turned : cutMesh(turned, [{ axis: 2, atMm: cut.atUnits, keep: cut.keep }]).mesh;
  if (mesh.triangles.length === 0) return bad('CUT_EMPTY');
  const bounds = boundsOf(mesh);
  const middle = bounds.min.map((low, k) => (low + bounds.max[k]!) / 2);
  const positions = new Float32Array(mesh.positions.length);
  for (let i = 0; i < positions.length; i++) positions[i] = mesh.positions[i]! - middle[i % 3]!;
  const [wide, deep, tall] = extentsOf(bounds);
  return good({
    positions,
    normals: vertexNormals(positions, mesh.triangles),
    index: Uint32Array.from(mesh.triangles),
    rims: openEdges(mesh, positions),
    halfUnits: [wide / 2, deep / 2, tall / 2],
    triangles: mesh.triangles.length / 3,
  });
}

/** Both ends of every edge that belongs to one triangle only. */
function openEdges(mesh: TriangleMesh, positions: Float32Array): Float32Array {
  const { mate } = pairEdges(mesh);
  const ends: number[] = [];
  for (let h = 0; h < mate.length; h++) {
    if (mate[h] !== OPEN) continue;
    for (const corner of [h, nextCorner(h)]) {
      const v = 3 * mesh.triangles[corner]!;
      ends.push(positions[v]!, positions[v + 1]!, positions[v + 2]!);
    }
  }
  return Float32Array.from(ends);
}

/** Twice the area vector of every triangle is added to its corners: large neighbors count more. */
function vertexNormals(p: Float32Array, triangles: Int32Array): Float32Array {
  const normals = new Float32Array(p.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t]!,
      b = 3 * triangles[t + 1]!,
      c = 3 * triangles[t + 2]!;
    const ux = p[b]! - p[a]!,
      uy = p[b + 1]! - p[a + 1]!,
      uz = p[b + 2]! - p[a + 2]!;
    const vx = p[c]! - p[a]!,
      vy = p[c + 1]! - p[a + 1]!,
      vz = p[c + 2]! - p[a + 2]!;
    const [nx, ny, nz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    for (const corner of [a, b, c]) {
      normals[corner]! += nx;
      normals[corner + 1]! += ny;
      normals[corner + 2]! += nz;
    }
  }
  for (let v = 0; v < normals.length; v += 3) {
    const length = Math.hypot(normals[v]!, normals[v + 1]!, normals[v + 2]!) || 1;
    for (let k = 0; k < 3; k++) normals[v + k]! /= length;
  }
  return normals;
}
