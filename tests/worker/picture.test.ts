import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../src/geometry';
import { drawPicture, picturePoints } from '../../src/worker/picture';
import { scanOf } from '../support/moldBench';
import { valueOf } from '../support/outcome';
import { box, torus } from '../support/shapes';

/** 200 000 triangles. */
const RING = torus(50, 10, 500, 200);

const drawn = (mesh: TriangleMesh) => valueOf(drawPicture(scanOf(mesh), { up: '+z' }));

describe('the picture of a scan', () => {
  it('shows a small one as it is', () => {
    const picture = drawn(box([2, 4, 6], [10, 10, 10]));
    expect(picture.triangles).toBe(12);
    expect(picture.shownTriangles).toBe(12);
    expect(picture.openEdges).toBe(0);
    expect(picture.halfUnits).toEqual([1, 2, 3]);
    expect(picture.middleUnits).toEqual([11, 12, 13]);
  });

  it('shows fewer triangles of a large one, and counts them all', () => {
    const picture = drawn(RING);
    expect(picture.triangles).toBe(200_000);
    expect(picture.shownTriangles).toBe(picture.index.length / 3);
    expect(picture.shownTriangles).toBeLessThan(132_000);
    expect(picture.shownTriangles).toBeGreaterThan(90_000);
    expect(picture.halfUnits[0]).toBeCloseTo(60, 9);
    const { positions } = valueOf(picturePoints(scanOf(RING), { up: '+z' }));
    expect(positions).toHaveLength(picture.positions.length);
    expect(positions.every((c, i) => c === picture.positions[i])).toBe(true);
  });

  it('has the open edges of the whole surface, at most 200 000 of them, spread evenly', () => {
    const lid = drawn({ ...RING, triangles: RING.triangles.slice(3) });
    expect(lid.openEdges).toBe(3);
    expect(lid.rims).toHaveLength(3 * 6);
    // No two triangles with a corner in common: every side is open.
    const { positions: p, triangles } = RING;
    const corners = Float64Array.from({ length: 3 * triangles.length }, (_, i) => {
      const v = triangles[Math.floor(i / 3)]!;
      return p[3 * v + (i % 3)]!;
    });
    const loose = drawn({ positions: corners, triangles: Int32Array.from(triangles.keys()) });
    expect(loose.openEdges).toBe(600_000);
    expect(loose.rims).toHaveLength(200_000 * 6);
  });
});
