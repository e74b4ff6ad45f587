import { describe, expect, it } from 'vitest';
import {
  coarsestStepG,
  overloadFindings,
  ratioUncertaintyShare,
  scaleFindings,
  smallestTotalG,
} from '../../src/yield/scaleCheck';
import { expectClose } from '../support/close';
import { expectPrinted } from '../support/printed';

const ratio = { a: 20, b: 50, by: 'mass' as const };

describe('is the scale fine enough for the ratio?', () => {
  it.each([
    [1, '0.0219848'],
    [0.1, '0.00219848'],
  ] as const)('T9: 20 + 50 g at steps of %d g', (stepG, published) => {
    expectPrinted(ratioUncertaintyShare({ partAG: 20, partBG: 50, stepG }), published);
  });

  it('a Look names the smallest batch for this scale and the step for this batch, and both would do', () => {
    const [found] = scaleFindings({ ratio, partAG: 20, partBG: 50, stepG: 1, ratioErrorShare: 0.004 });
    expect(found).toMatchObject({
      code: 'SCALE_COARSE',
      status: 'look',
      values: { stepG: 1, neededStepG: 0.2, roundingShare: 0.004 },
    });
    // u falls as 1/total: 70 g x 2 x 2.19848 % / 1 %.
    expectClose(Number(found?.values.smallestTotalG), 70 * 2 * 2.19848, 5e-6);
    expect(2 * ratioUncertaintyShare({ partAG: 20, partBG: 50, stepG: 0.2 })).toBeLessThanOrEqual(0.01);
    expect(2 * ratioUncertaintyShare({ partAG: 20, partBG: 50, stepG: 0.5 })).toBeGreaterThan(0.01);
  });

  it('is silent where twice the uncertainty is 1 % or less', () => {
    const totalG = smallestTotalG(ratio, 1);
    const parts = (sumG: number): { partAG: number; partBG: number } => ({
      partAG: (sumG * 2) / 7,
      partBG: (sumG * 5) / 7,
    });
    expect(scaleFindings({ ratio, ...parts(totalG * 1.001), stepG: 1, ratioErrorShare: 0 })).toEqual([]);
    expect(scaleFindings({ ratio, ...parts(totalG * 0.999), stepG: 1, ratioErrorShare: 0 })).toHaveLength(1);
  });

  it('is the coarsest usual step at which the ratio can be weighed: tried one by one, over two powers of ten', () => {
    const usual = [-3, -2, -1, 0, 1].flatMap((power) => [1, 2, 5].map((step) => Number(`${step}e${power}`)));
    for (let totalG = 5; totalG < 500; totalG *= 1.007) {
      const can = (stepG: number): boolean =>
        2 * ratioUncertaintyShare({ partAG: (totalG * 2) / 7, partBG: (totalG * 5) / 7, stepG }) <= 0.01;
      expect(coarsestStepG(ratio, totalG), `${totalG} g`).toBe(usual.filter(can).at(-1));
    }
  });

  it('A and B together are too much for a scale only above what it takes', () => {
    expect(overloadFindings(2000, undefined)).toEqual([]);
    expect(overloadFindings(2000, 2000)).toEqual([]);
    expect(overloadFindings(2001, 2000)).toMatchObject([
      { code: 'SCALE_OVERLOADED', status: 'look', values: { totalG: 2001, maxG: 2000 } },
    ]);
  });

  it('just 1 % is fine enough', () => {
    const stepG = (0.01 * Math.sqrt(6)) / 2 / Math.hypot(1 / 20, 1 / 50);
    expect(2 * ratioUncertaintyShare({ partAG: 20, partBG: 50, stepG })).toBe(0.01);
    expect(scaleFindings({ ratio, partAG: 20, partBG: 50, stepG, ratioErrorShare: 0 })).toEqual([]);
  });

  it('gives a usual step, free of binary dust', () => {
    expect(coarsestStepG(ratio, 7)).toBe(0.02);
    expect(coarsestStepG(ratio, 7000)).toBe(20);
  });
});
