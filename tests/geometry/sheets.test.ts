import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../src/geometry';
import { expectClose } from '../support/close';
import { measured, outcomeOf } from '../support/measured';
import { joined, moved } from '../support/meshTools';
import { problemOf } from '../support/outcome';
import { roughTable } from '../support/roughTable';
import { box, revolve, revolvedVolume, sphereOutline } from '../support/shapes';

const SEED = 41;

describe(`an open sheet, rough as scans are (seed ${SEED})`, () => {
  const block = box([60, 50, 40], [-30, -25, 1]);

  it('beside a block of 120 cm3 it holds nothing: volume, size and range are those of the block', () => {
    const solid = measured(joined(block, roughTable(SEED)));
    // Length x width x height; nothing is rounded here.
    expectClose(solid.volumeMm3, 120_000, 1e-12, 'volume');
    expect(solid.extentsMm).toEqual([60, 50, 40]);
    expect(solid.byRole.sheet.count).toBe(1);
    expect(solid.doubt.capsMm3).toBe(0);
  });

  it('alone it is refused: there is no inside', () => {
    expect(problemOf(outcomeOf(roughTable(SEED))).code).toBe('NOT_CLOSED');
  });

  it('a closed plate of 0.2 mm is thin, but solid', () => {
    expectClose(measured(box([200, 150, 0.2])).volumeMm3, 6000, 1e-12, 'plate');
  });
});

/** A strip along x, bent like a wave from side to side: no thickness, and a rim that no plane holds. */
function wavyFin(lengthMm: number, tallMm: number, swingMm: number): TriangleMesh {
  const cells = 60;
  const points: number[] = [];
  const triangles: number[] = [];
  for (let i = 0; i <= cells; i++) {
    const [x, y] = [(lengthMm * i) / cells, swingMm * Math.sin((3 * Math.PI * i) / cells)];
    points.push(x, y, 0, x, y, tallMm);
    if (i < cells) triangles.push(2 * i, 2 * i + 2, 2 * i + 3, 2 * i, 2 * i + 3, 2 * i + 1);
  }
  return { positions: Float64Array.from(points), triangles: Int32Array.from(triangles) };
}

/** What a ball of 50 mm keeps above a height: an open cap, and what it holds over its flat rim (frusta of polygons). */
function ballCap(fromMm: number): { cap: TriangleMesh; heldMm3: number } {
  const outline = sphereOutline(50, 96).filter(([, z]) => z > fromMm);
  return { cap: revolve(outline, 96), heldMm3: revolvedVolume(outline, 96) };
}

describe('an open piece whose caps could change more than it holds', () => {
  const block = box([200, 60, 60], [0, -30, -60]);
  const fin = wavyFin(180, 30, 25);

  it('beside a larger body it is left out: 200 x 60 x 60, and nothing in doubt', () => {
    const solid = measured(joined(block, fin));
    expectClose(solid.volumeMm3, 720_000, 1e-12, 'volume');
    expect(solid.byRole.sheet.count).toBe(1);
    expect(solid.byRole.sheet.heldMm3, 'its cone makes it hold more than a flat sheet').toBeGreaterThan(2000);
    expect(solid.doubt.capsMm3).toBe(0);
  });

  it('alone it is refused as open, not as empty', () => {
    expect(problemOf(outcomeOf(fin)).code).toBe('NOT_CLOSED');
  });

  it('beside a body smaller than it may be it stays: no volume of a mere part', () => {
    expect(problemOf(outcomeOf(joined(box([25, 25, 25], [0, 60, 0]), fin))).code).toBe('NOT_CLOSED');
  });

  it('two of them and no body: refused as open', () => {
    expect(problemOf(outcomeOf(joined(fin, moved(fin, [0, 80, 0])))).code).toBe('NOT_CLOSED');
  });

  it.each([10, 25, 40])('an open cap of a ball, from %d mm up, beside the block counts', (fromMm) => {
    const { cap, heldMm3 } = ballCap(fromMm);
    const solid = measured(joined(block, moved(cap, [100, 0, 50])));
    expect(solid.byRole).toMatchObject({ body: { count: 2 }, sheet: { count: 0 } });
    expectClose(solid.volumeMm3, 720_000 + heldMm3, 1e-11, 'sum');
  });
});
