import { describe, expect, it } from 'vitest';
import { boundsOf, placeMesh, upLooks, UP_AXES, type Look, type TriangleMesh } from '../../src/geometry';
import { joined, moved } from '../support/meshTools';
import { box, sphere } from '../support/shapes';

/** A plate with a post that overhangs near one corner: no turn of it is a mirror image of another. */
const lopsided = joined(box([60, 40, 10]), moved(box([10, 20, 50]), [45, 35, 10]));

/** Share of the frame that is covered, by hand: from the front with z or x up, and with y up. */
const SHARE = { z: (60 * 10 + 10 * 50) / (60 * 60), y: (60 * 40 + 10 * 15) / (60 * 55) };

const isCovered = ({ runs }: Look, row: number, column: number): boolean =>
  runs.some((_, i) => i % 3 === 0 && runs[i] === row && runs[i + 1]! <= column && column < runs[i + 2]!);

describe('how a piece looks with each axis up', () => {
  // Against places on its surface, stood by `placeMesh`, whose turns have tests of their own; the front is seen from +y, so +x is at the left.
  it.each(UP_AXES)('%s: covered where there is surface behind, bare beside it', (up) => {
    const look = upLooks(lopsided)[up];
    const placed = placeMesh(lopsided, { up, mmPerUnit: 1 });
    const { min, max } = boundsOf(placed);
    const cell = Math.max(max[0] - min[0], max[2] - min[2]) / Math.max(look.columns, look.rows);
    for (const [x, z] of middlesOf(placed)) {
      const [row, column] = [Math.floor((max[2] - z) / cell), Math.floor((max[0] - x) / cell)];
      expect(near(look, row, column), `${up} at ${x}, ${z}`).toBe(true);
    }
    // Edges on the grid's lines count whole: a row and a column more of 72.
    const share = areaOf(look) / (look.columns * look.rows);
    const expected = SHARE[up.endsWith('y') ? 'y' : 'z'];
    expect(share).toBeGreaterThan(expected - 0.001);
    expect(share).toBeLessThan(expected + 0.03);
  });

  it('a ball covers pi / 4 of its square, whichever way up', () => {
    for (const look of Object.values(upLooks(sphere(50, 90)))) {
      const { rows, columns } = look;
      const area = areaOf(look);
      // Cells that the edge only touches count whole: half a cell more of radius, at most one.
      expect(area / (rows * columns)).toBeGreaterThan(Math.PI / 4 - 0.01);
      expect(area / (rows * columns)).toBeLessThan((Math.PI / 4) * (1 + 2 / rows) ** 2);
    }
  });

  it('mesh without extent: one cell, no fault', () => {
    const flat: TriangleMesh = {
      positions: Float64Array.from([1, 1, 1]),
      triangles: Int32Array.from([0, 0, 0]),
    };
    expect(upLooks(flat)['+z']).toMatchObject({ columns: 1, rows: 1 });
  });

  it('the post stands at the left of the front view with z up, since +x is the piece\u2019s own right', () => {
    const look = upLooks(lopsided)['+z'];
    // Post: x 45 to 55 of 60, z up to 60 of 60.
    expect(isCovered(look, 0, Math.round(look.columns * (10 / 60)))).toBe(true);
    expect(isCovered(look, 0, Math.round(look.columns * (50 / 60)))).toBe(false);
    const upsideDown = upLooks(lopsided)['-z'];
    expect(isCovered(upsideDown, upsideDown.rows - 1, Math.round(look.columns * (10 / 60)))).toBe(true);
  });
});

function areaOf({ runs }: Look): number {
  let area = 0;
  for (let i = 0; i < runs.length; i += 3) area += runs[i + 2]! - runs[i + 1]!;
  return area;
}

/** Middles of the facets, x and z. */
function middlesOf({ positions: p, triangles }: TriangleMesh): [number, number][] {
  return Array.from({ length: triangles.length / 3 }, (_, t) => {
    const middle = (k: number): number =>
      [0, 1, 2].reduce((sum, c) => sum + p[3 * triangles[3 * t + c]! + k]! / 3, 0);
    return [middle(0), middle(2)];
  });
}

/** The grid of the look begins at the low corner of the file's box, so a row or column may be off by one. */
const near = (look: Look, row: number, column: number): boolean =>
  [-1, 0, 1].some((r) => [-1, 0, 1].some((c) => isCovered(look, row + r, column + c)));
