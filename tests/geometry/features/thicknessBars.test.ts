import { describe, expect, it } from 'vitest';
import { expectClose } from '../../support/close';
import { box, revolve } from '../../support/shapes';
import { joined, moved } from '../../support/meshTools';
import type { TriangleMesh } from '../../../src/geometry';
import { thicknessOf } from './thicknessOf';

/** A bar of as many sides on a block, its inscribed circle that wide. */
const barOn = (sides: number, acrossMm: number): ReturnType<typeof box> => {
  const radius = acrossMm / 2 / Math.cos(Math.PI / sides);
  const bar = revolve(
    [
      [0, 35],
      [radius, 35],
      [radius, 90],
      [0, 90],
    ],
    sides,
  );
  return joined(box([60, 60, 40]), moved(bar, [30.3, 29.6, 0]));
};

describe('bars whose faces do not face each other where a ball first touches', () => {
  for (const [sides, name] of [
    [4, 'square'],
    [6, 'hexagonal'],
    [8, 'eight-sided'],
  ] as const)
    for (const acrossMm of [4, 8])
      it(`a ${name} bar ${acrossMm} mm across is the thin place, as thick as its inscribed circle`, () => {
        const { thinnest, minMm } = thicknessOf(barOn(sides, acrossMm));
        expectClose(minMm, acrossMm, 0.04);
        expectClose(thinnest[0]!.thicknessMm, acrossMm, 0.04);
        expect(thinnest[0]!.atMm[2]).toBeGreaterThan(39);
        // Its foot is rounded by nothing: only the bar is thin.
        expect(thinnest.filter(({ thicknessMm }) => thicknessMm < 1.3 * acrossMm)).toHaveLength(1);
      });

  it('a three-sided bar is as thick as its inscribed circle, not as its edges', () => {
    const { minMm } = thicknessOf(barOn(3, 8));
    expectClose(minMm, 8, 0.04);
  });

  it('the edges and corners of a box are not among the thin places', () => {
    const { thinnest } = thicknessOf(box([40, 60, 90]));
    for (const { thicknessMm } of thinnest) expect(thicknessMm).toBeGreaterThan(39);
  });
});

describe('posts with a flat tip', () => {
  const block = box([100, 80, 40]);
  const rod = (acrossMm: number, highMm: number): TriangleMesh =>
    revolve(
      [
        [0, 30],
        [acrossMm / 2, 30],
        [acrossMm / 2, 40 + highMm],
        [0, 40 + highMm],
      ],
      64,
    );

  for (const [name, post, acrossMm, highMm] of [
    ['a rod of 10 mm, 60 mm high', rod(10, 60), 10, 60],
    ['a rod of 8 mm, 80 mm high', rod(8, 80), 8, 80],
    ['a square post of 4 mm, 60 mm high', box([4, 4, 70], [-2, -2, 30]), 4, 60],
  ] as const)
    for (const voxelMm of [0.75, 1])
      it(`${name}, is as long as it is high: its tip is no thicker material, voxels of ${voxelMm} mm`, () => {
        const { thinnest } = thicknessOf(joined(block, moved(post, [50, 40, 0])), { voxelMm });
        expect(thinnest).toHaveLength(1);
        expectClose(thinnest[0]!.thicknessMm, acrossMm, 0.025);
        expectClose(thinnest[0]!.lengthMm, highMm, 0.1);
        expectClose(thinnest[0]!.slenderness, highMm / acrossMm, 0.1);
      });
});
