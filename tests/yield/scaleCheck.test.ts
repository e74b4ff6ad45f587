import { describe, expect, it } from 'vitest';
import {
  coarsestStepG,
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

  it('gives a usual step, free of binary dust', () => {
    expect(coarsestStepG(ratio, 7)).toBe(0.02);
    expect(coarsestStepG(ratio, 7000)).toBe(20);
  });
});
