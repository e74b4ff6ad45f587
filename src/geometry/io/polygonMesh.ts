import { bad, finding, good, type Outcome, type Problem } from '../../problem';
import type { TriangleMesh } from '../triangleMesh';
import { cutPolygon, newCutWork, outOfPlane, POLYGON_LIMIT } from './polygon';
import { COORDINATE_LIMIT, tooManyTriangles, TRIANGLE_LIMIT } from './scanFile';
import { intList, pushInt, type IntList, type NumberList } from './text';
import { weldPoints } from './weld';

/** Vertices and polygons as a file lists them. A face may name a vertex that comes later, so faces are cut last. */
export interface PolygonMesh {
  /** x, y, z of every vertex. */
  points: NumberList;
  /** `count, byte, v0, v1, ...` a face, the byte being where it stands in the file. */
  corners: IntList;
  faces: number;
  /** What the file counts its first vertex as, for messages. */
  firstVertex: 0 | 1;
}

/** One mesh as it goes out, with the largest coordinate a facet uses. */
export interface CutMesh {
  mesh: TriangleMesh;
  largest: number;
  findings: Problem[];
}

/**
 * Cuts the polygons into triangles and makes vertices at equal places one. Every vertex named must be there.
 * Errors, with the byte of the face: COORD_RANGE, BAD_POLYGON, TOO_LARGE.
 */
export function cutFaces({ points: list, corners, firstVertex }: PolygonMesh): Outcome<CutMesh> {
  const points = list.data;
  const named = intList(Math.max(16, corners.length));
  const bent = { count: 0, worst: 0 };
  const work = newCutWork();
  for (let i = 0; i < corners.length;) {
    const count = corners.data[i]!;
    const byte = corners.data[i + 1]!;
    const first = i + 2;
    i = first + count;
    const far = farCorner(points, corners.data, first, i);
    if (far !== undefined)
      return bad('COORD_RANGE', { text: `vertex ${far + firstVertex}`, limit: COORDINATE_LIMIT }, { byte });
    if (count === 3) {
      for (let c = first; c < i; c++) pushInt(named, corners.data[c]!);
      continue;
    }
    const ring = Array.from(corners.data.subarray(first, i));
    const triangles = cutPolygon(points, ring, work);
    if (triangles === undefined)
      return bad(
        'BAD_POLYGON',
        { part: work.left > 0 ? 'outline' : 'work', corners: count, limit: POLYGON_LIMIT },
        { byte },
      );
    noteFlatness(bent, points, ring);
    for (const v of triangles) pushInt(named, v);
    if (named.length > 3 * TRIANGLE_LIMIT) return tooManyTriangles(named.length / 3, { byte });
  }
  const { positions, index } = weldPoints(points.slice(0, list.length));
  const triangles = new Int32Array(named.length);
  let largest = 0;
  for (let c = 0; c < triangles.length; c++) {
    const v = index[named.data[c]!]!;
    triangles[c] = v;
    for (let k = 0; k < 3; k++) largest = Math.max(largest, Math.abs(positions[3 * v + k]!));
  }
  const findings = bent.count === 0 ? [] : [finding('NON_PLANAR', 'look', { count: bent.count })];
  return good({ mesh: { positions, triangles }, largest, findings });
}

/** The first corner too far out. Only vertices that faces use count: scanners leave strays behind. */
function farCorner(p: Float64Array, corners: Int32Array, from: number, to: number): number | undefined {
  for (let c = from; c < to; c++) {
    const v = corners[c]!;
    for (let k = 3 * v; k < 3 * v + 3; k++) if (Math.abs(p[k]!) > COORDINATE_LIMIT) return v;
  }
  return undefined;
}

/** A corner more than 1 % of the polygon's size off its plane makes the volume depend on where it is cut. */
function noteFlatness(bent: { count: number; worst: number }, points: Float64Array, ring: number[]): void {
  const off = outOfPlane(points, ring);
  const [a, b] = [3 * ring[0]!, 3 * ring[2]!];
  const size = Math.hypot(
    points[a]! - points[b]!,
    points[a + 1]! - points[b + 1]!,
    points[a + 2]! - points[b + 2]!,
  );
  if (off <= 0.01 * size) return;
  bent.count++;
  bent.worst = Math.max(bent.worst, off);
}
