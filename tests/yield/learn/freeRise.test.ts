import { describe, expect, it } from 'vitest';
import { learnFreeRise } from '../../../src/yield/learn/freeRise';
import type { FreeRisePour } from '../../../src/yield/learn/freeRise';
import { expectClose } from '../../support/close';
import { lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';

const PCF = 0.45359237 / 0.3048 ** 3;
/** 500 g of water at 20 C in the cup: 500.9 cm3. */
const CUP_L = 0.5 / 0.998207;

/** Box and Muller on a seeded generator. */
function normals(seed: number): () => number {
  const random = lcg(seed);
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

describe('free rise', () => {
  it('one normal cup with a normal sheet, in closed form on the logarithms', () => {
    const { freeRiseKgM3, uShare } = valueOf(
      learnFreeRise({
        cups: [{ freeRiseKgM3: 106, uFreeRiseShare: 0.03 }],
        pours: [],
        sheet: { freeRiseKgM3: 96, uFreeRiseShare: 0.08 },
      }),
    );
    const precise = 1 / 0.03 ** 2 + 1 / 0.08 ** 2;
    const mean = (Math.log(106) / 0.03 ** 2 + Math.log(96) / 0.08 ** 2) / precise;
    expectClose(Math.log(freeRiseKgM3.value), mean, 1e-6);
    expectClose(uShare, 1 / Math.sqrt(precise), 1e-3);
    // Within a thirtieth of a step of the grid, 1.85e-3.
    expectClose(Math.log(freeRiseKgM3.low), mean - 1.644854 / Math.sqrt(precise), 1.3e-5);
    expectClose(Math.log(freeRiseKgM3.high), mean + 1.644854 / Math.sqrt(precise), 1.3e-5);
    expect(freeRiseKgM3.from).toBe('cup-test');
  });

  it('the sample shop: cups at 20 and 30 C and the short pour put the light foam above its data sheet', () => {
    const sheetKgM3 = 6 * PCF;
    const learned = valueOf(
      learnFreeRise({
        cups: [
          { freeRiseKgM3: 53.4 / CUP_L, roomC: 20, uFreeRiseShare: 0.04 },
          { freeRiseKgM3: 50.3 / CUP_L, roomC: 30, uFreeRiseShare: 0.04 },
        ],
        pours: [{ outcome: 'short', castingG: 487, filledCm3: 4478 * (1 - 0.027), roomC: 19 }],
        sheet: { freeRiseKgM3: sheetKgM3 },
        at: { roomC: 22 },
      }),
    );
    expect(learned).toMatchObject({ cups: 2, shortPours: 1, bounds: 0, leftOut: 0 });
    expect(learned.freeRiseKgM3.low).toBeGreaterThan(sheetKgM3);
    expect(learned.freeRiseKgM3.value).toBeGreaterThan(100);
    expect(learned.freeRiseKgM3.value).toBeLessThan(107);
  });

  it('rooms over 8 K away, and other foams, are left out and counted', () => {
    const learned = valueOf(
      learnFreeRise({
        cups: [
          { freeRiseKgM3: 106, roomC: 20, foam: 'one' },
          { freeRiseKgM3: 90, roomC: 29, foam: 'one' },
          { freeRiseKgM3: 200, roomC: 20, foam: 'other' },
        ],
        pours: [],
        at: { roomC: 20, foam: 'one' },
      }),
    );
    expect(learned).toMatchObject({ cups: 1, leftOut: 2 });
    expectClose(learned.freeRiseKgM3.value, 106, 1e-6);
  });

  it('a full pour below what the cups say pulls the estimate down, one far above says nothing', () => {
    const withFull = (castingG: number): number =>
      valueOf(
        learnFreeRise({
          cups: [{ freeRiseKgM3: 106 }],
          pours: [{ outcome: 'full', castingG, filledCm3: 1000 }],
        }),
      ).freeRiseKgM3.value;
    expectClose(withFull(160), 106, 1e-5);
    expect(withFull(108)).toBeLessThan(105);
  });

  it('full pours alone bound nothing from below: refused without a cup, a short pour or a sheet', () => {
    const pours: FreeRisePour[] = [{ outcome: 'full', castingG: 500, filledCm3: 4000 }];
    expect(problemOf(learnFreeRise({ cups: [], pours })).values.value).toBe('none');
    const sheetOnly = valueOf(learnFreeRise({ cups: [], pours, sheet: { freeRiseKgM3: 96 } }));
    expect(sheetOnly.freeRiseKgM3.from).toBe('data-sheet');
  });

  it('evidence at odds with itself still ends in a number, between the two', () => {
    const torn = valueOf(learnFreeRise({ cups: [{ freeRiseKgM3: 40 }, { freeRiseKgM3: 400 }], pours: [] }));
    expectClose(torn.freeRiseKgM3.value, Math.sqrt(40 * 400), 1e-6);
  });

  it('refuses a cup that is no number', () => {
    const nan = { freeRiseKgM3: Number.NaN };
    expect(problemOf(learnFreeRise({ cups: [nan], pours: [] })).values.input).toBe('freeRiseKgM3');
  });
});

describe('thirty full, capped, overpacked pours', () => {
  const TRUE_KG_M3 = 102;
  const PACK = 1.3;
  const LITERS = 4.478;

  /** What a book does that takes every casting for a free rise: the mean of sheet and castings, then packs on top of it. */
  function naive(seed: number): number {
    const normal = normals(seed);
    const seen = [96.1];
    for (let pour = 0; pour < 30; pour += 1) {
      const estimate = seen.reduce((sum, one) => sum + one, 0) / seen.length;
      seen.push(estimate * PACK * (1 + 0.02 * normal()));
    }
    return seen.reduce((sum, one) => sum + one, 0) / seen.length;
  }

  /** The same shop with censored rows: each pour is planned on the estimate of the pours before it. */
  function ours(seed: number): { first: number; last: number } {
    const normal = normals(seed);
    const pours: FreeRisePour[] = [];
    const cups = [{ freeRiseKgM3: TRUE_KG_M3 * (1 + 0.03 * normal()) }];
    const estimate = (): number =>
      valueOf(learnFreeRise({ cups, pours, sheet: { freeRiseKgM3: 96.1 } })).freeRiseKgM3.value;
    const first = estimate();
    for (let pour = 0; pour < 30; pour += 1) {
      const castingG = estimate() * PACK * LITERS * (1 + 0.02 * normal());
      pours.push({ outcome: 'full', castingG, filledCm3: 1000 * LITERS });
    }
    return { first, last: estimate() };
  }

  it.each([1, 2, 3, 4, 5])('seed %d: the naive estimate climbs past twice the truth, ours stays', (seed) => {
    expect(naive(seed)).toBeGreaterThan(2 * TRUE_KG_M3);
    const { first, last } = ours(seed);
    expect(Math.abs(last / first - 1)).toBeLessThan(0.002);
    expect(Math.abs(last / TRUE_KG_M3 - 1)).toBeLessThan(0.1);
  });
});
