import type { TriangleMesh } from '../triangleMesh';

/**
 * Winding number of a closed chain about a point off it: the sum of signed solid angles over 4 pi (van Oosterom and
 * Strackee 1983, IEEE Trans. Biomed. Eng. 30:125). Takes the triangles of the
 * list. Linear in their number.
 */
export function windingNumber(
  mesh: TriangleMesh,
  point: readonly [number, number, number],
  list: Int32Array,
): number {
  const { positions: p, triangles } = mesh;
  let angle = 0;
  for (const t of list) {
    const a = 3 * triangles[3 * t]!,
      b = 3 * triangles[3 * t + 1]!,
      c = 3 * triangles[3 * t + 2]!;
    const ax = p[a]! - point[0],
      ay = p[a + 1]! - point[1],
      az = p[a + 2]! - point[2];
    const bx = p[b]! - point[0],
      by = p[b + 1]! - point[1],
      bz = p[b + 2]! - point[2];
    const cx = p[c]! - point[0],
      cy = p[c + 1]! - point[1],
      cz = p[c + 2]! - point[2];
    const la = Math.hypot(ax, ay, az),
      lb = Math.hypot(bx, by, bz),
      lc = Math.hypot(cx, cy, cz);
    const triple = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    const lower =
      la * lb * lc +
      (ax * bx + ay * by + az * bz) * lc +
      (bx * cx + by * cy + bz * cz) * la +
      (cx * ax + cy * ay + cz * az) * lb;
    angle += 2 * Math.atan2(triple, lower);
  }
  return angle / (4 * Math.PI);
}
