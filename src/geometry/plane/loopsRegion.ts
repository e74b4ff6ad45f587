import { sectionOf } from '../measure/section';
import type { TriangleMesh } from '../triangleMesh';

/**
 * Outlines of the section of a closed chain of triangles that faces outward (mm, Z up) at a height, for `growRegion`: u0 = x0,
 * v0 = y0, u1, v1 of each directed segment, mm, solid on the left. A vertex at the height counts as above it: a height flush
 * with a flat bottom gives none, so ask a little higher. Not for `measureRegion`, which wants no segment along u.
 */
export function loopsRegion(mesh: TriangleMesh, zMm: number): Float64Array {
  const { outlines } = sectionOf(mesh, { point: [0, 0, zMm], normal: [0, 0, 1] });
  const segments: number[] = [];
  for (const outline of outlines) {
    for (let i = 0; i < outline.length; i += 3) {
      const next = (i + 3) % outline.length;
      segments.push(outline[i]!, outline[i + 1]!, outline[next]!, outline[next + 1]!);
    }
  }
  return Float64Array.from(segments);
}
