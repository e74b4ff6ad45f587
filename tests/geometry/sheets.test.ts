import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../src/geometry';
import { expectClose } from '../support/close';
import { between, lcg } from '../support/lcg';
import { measured, outcomeOf } from '../support/measured';
import { joined } from '../support/meshTools';
import { problemOf } from '../support/outcome';
import { box } from '../support/shapes';

const SEED = 41;
/** A table top of 300 x 300 mm as a scanner sees it: one side, 5 mm squares, rough by +-0.25 mm (common practice, no source). */
function roughTable(cells = 60, sizeMm = 300): TriangleMesh {
  const random = lcg(SEED);
  const row = cells + 1;
  const positions = new Float64Array(3 * row * row);
  for (let i = 0; i < row * row; i++) {
    positions[3 * i] = (sizeMm * (i % row)) / cells - sizeMm / 2;
    positions[3 * i + 1] = (sizeMm * Math.floor(i / row)) / cells - sizeMm / 2;
    positions[3 * i + 2] = between(random, -0.25, 0.25);
  }
  const triangles: number[] = [];
  for (let y = 0; y < cells; y++) {
    for (let x = 0; x < cells; x++) {
      const a = y * row + x;
      triangles.push(a, a + 1, a + row + 1, a, a + row + 1, a + row);
    }
  }
  return { positions, triangles: Int32Array.from(triangles) };
}

describe(`an open sheet, rough as scans are (seed ${SEED})`, () => {
  const block = box([60, 50, 40], [-30, -25, 1]);

  it('beside a block of 120 cm3 it holds nothing: volume, size and range are those of the block', () => {
    const solid = measured(joined(block, roughTable()));
    // Length x width x height; nothing is rounded here.
    expectClose(solid.volumeMm3, 120_000, 1e-12, 'volume');
    expect(solid.extentsMm).toEqual([60, 50, 40]);
    expect(solid.byRole.sheet.count).toBe(1);
    expect(solid.doubt.capsMm3).toBe(0);
  });

  it('alone it is refused: there is no inside', () => {
    expect(problemOf(outcomeOf(roughTable())).code).toBe('NOT_CLOSED');
  });

  it('a closed plate of 0.2 mm is thin, but solid', () => {
    expectClose(measured(box([200, 150, 0.2])).volumeMm3, 6000, 1e-12, 'plate');
  });
});
