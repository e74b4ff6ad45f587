import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { joined, moved, turned } from '../../support/meshTools';
import { box, capsuleOutline, revolve } from '../../support/shapes';
import { finely, hurt, thicknessOf } from './thicknessOf';

const SEED = 9;

/** A fin 60 long and 4 thick on a block, from its top 25 up. */
const finOn = (block: TriangleMesh, topMm: number, atY: number, times = 0): TriangleMesh =>
  joined(finely(block, times), finely(box([60, 4, 30], [20, atY, topMm - 5]), times));

const cube = box([100, 100, 100]);

describe('thin places', () => {
  it.each<[string, TriangleMesh]>([
    ['as modeled', finOn(cube, 100, 48)],
    ['with fine facets', finOn(cube, 100, 48, 4)],
    ['turned', turned(finOn(cube, 100, 48), [0.8, 0.3, -0.4, 0.2])],
  ])('a cube with a fin: the fin is the first and only one, no edge is, %s', (_name, mesh) => {
    const { thinnest, minMm } = thicknessOf(mesh);
    expect(thinnest).toHaveLength(1);
    const fin = thinnest[0]!;
    expectClose(fin.thicknessMm, 4, 0.025);
    expect(minMm).toBe(fin.thicknessMm);
    expectClose(fin.lengthMm, 25, 0.1);
    expectClose(fin.slenderness, 25 / 4, 0.1);
    // Both faces, 60 by 25, less what lies beyond the balls along three of the edges.
    expectClose(fin.areaMm2, 2 * 60 * 25, 0.2);
  });

  it(`so with 5 % of its facets each deleted, turned over and doubled, seed ${SEED}`, () => {
    const { thinnest } = thicknessOf(hurt(finOn(box([100, 60, 40]), 40, 28, 5), SEED));
    expect(thinnest).toHaveLength(1);
    expectClose(thinnest[0]!.thicknessMm, 4, 0.025);
    expectClose(thinnest[0]!.lengthMm, 25, 0.1);
  });

  it.each([1, 1.5, 2])('a fin of 3.2 mm is not missed with voxels of %d mm', (voxelMm) => {
    const mesh = joined(box([100, 60, 40]), box([60, 3.2, 30], [20, 28, 35]));
    const { thinnest } = thicknessOf(mesh, { voxelMm });
    expect(thinnest).toHaveLength(1);
    expectClose(thinnest[0]!.thicknessMm, 3.2, 0.025);
  });

  it('a fin thinner than a grid step is not missed either', () => {
    const mesh = joined(box([100, 60, 40]), box([60, 0.8, 30], [20, 28, 35]));
    expectClose(thicknessOf(mesh).thinnest[0]!.thicknessMm, 0.8, 0.025);
  });

  it('a finger on a block: its thickness, and its length from the root to the tip', () => {
    const finger = moved(revolve(capsuleOutline(6, 50, 32), 64), [30, 30, 40]);
    const { thinnest } = thicknessOf(joined(box([60, 60, 30]), finger));
    expect(thinnest).toHaveLength(1);
    expectClose(thinnest[0]!.thicknessMm, 12, 0.01);
    // The tip is at 40 + 25 + 6, the block's top at 30.
    expectClose(thinnest[0]!.lengthMm, 41, 0.1);
    expectClose(thinnest[0]!.slenderness, 41 / 12, 0.1);
  });

  it('two fins and a finger are three, thinnest first', () => {
    const finger = moved(revolve(capsuleOutline(6, 50, 32), 64), [90, 30, 40]);
    const { thinnest } = thicknessOf(
      joined(box([120, 60, 30]), box([40, 3, 20], [10, 10, 25]), box([40, 5, 20], [10, 40, 25]), finger),
    );
    expect(thinnest).toHaveLength(3);
    thinnest.forEach((place, n) => expectClose(place.thicknessMm, [3, 5, 12][n]!, 0.025));
    expectClose(thinnest[0]!.lengthMm, 15, 0.15);
    expectClose(thinnest[1]!.lengthMm, 15, 0.15);
  });

  it('a plate by itself is one place, as long as it is from end to end', () => {
    const { thinnest } = thicknessOf(box([80, 40, 5]));
    expect(thinnest).toHaveLength(1);
    expectClose(thinnest[0]!.thicknessMm, 5, 0.03);
    // Corner to corner, and at most one side where the ends lie along it.
    expect(thinnest[0]!.lengthMm).toBeGreaterThan(75);
    expect(thinnest[0]!.lengthMm).toBeLessThan(1.05 * Math.hypot(80, 40));
  });
});

describe('the cut base', () => {
  // A shallow dome: at the outline of its base, top and base are 50 degrees apart.
  const dome = revolve(
    [
      [0, 0],
      [40, 0],
      ...Array.from({ length: 20 }, (_, n): [number, number] => {
        const a = ((19 - n) / 20) * ((50 * Math.PI) / 180);
        const r = 40 / Math.sin((50 * Math.PI) / 180);
        return [n === 19 ? 0 : r * Math.sin(a), r * (Math.cos(a) - Math.cos((50 * Math.PI) / 180))];
      }),
    ],
    96,
  );

  it('its outline is a thin edge of a body, but not where the sculpt was cut there', () => {
    const asBody = thicknessOf(dome);
    expect(asBody.minMm).toBeLessThan(3);
    const asCut = thicknessOf(dome, { baseMm: 0 });
    expect(asCut.minMm).toBeGreaterThan(10);
  });

  it('a plate along the base still counts', () => {
    const { thinnest } = thicknessOf(joined(box([80, 60, 4]), box([30, 30, 40], [10, 15, 0])), { baseMm: 0 });
    expect(thinnest).toHaveLength(1);
    expectClose(thinnest[0]!.thicknessMm, 4, 0.03);
  });
});

describe('gaps, where the mold has a web of rubber', () => {
  it('between two blocks 5 mm apart it is 5 mm wide, and beyond what is asked for it is told as that', () => {
    const blocks = joined(box([40, 40, 40]), box([40, 40, 40], [45, 0, 0]));
    const gap = thicknessOf(blocks, { side: 'outside', levelsMm: [10], mostMm: 20 });
    expect(gap.cappedMm).toBe(20);
    expect(gap.thinnest).toHaveLength(1);
    expectClose(gap.thinnest[0]!.thicknessMm, 5, 0.01);
    expectClose(gap.thinnest[0]!.areaMm2, 2 * 40 * 40, 0.05);
    expectClose(gap.medianMm, 20, 1e-6);
    expect(gap.thinnest[0]!.atMm[0]).toBeGreaterThan(39.9);
    expect(gap.thinnest[0]!.atMm[0]).toBeLessThan(45.1);
  });

  it('a gap nearly as wide as what is asked for does not take the rest of the surface along', () => {
    const blocks = joined(box([40, 40, 40]), box([40, 40, 40], [55, 0, 0]));
    const { thinnest } = thicknessOf(blocks, { side: 'outside', levelsMm: [10], mostMm: 20 });
    expect(thinnest).toHaveLength(1);
    expectClose(thinnest[0]!.thicknessMm, 15, 0.01);
    expectClose(thinnest[0]!.areaMm2, 2 * 40 * 40, 0.1);
  });

  it('a single block has none, nor has its base', () => {
    const alone = thicknessOf(box([40, 40, 40]), {
      side: 'outside',
      levelsMm: [10],
      mostMm: 20,
      baseMm: 0,
    });
    expect(alone.thinnest).toEqual([]);
    expect(alone.positions.filter((_, c) => c % 3 === 2).every((z) => z > 0.05)).toBe(true);
  });
});
