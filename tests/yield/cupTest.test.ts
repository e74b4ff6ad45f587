import { describe, expect, it } from 'vitest';
import { cupTest, freeRiseFromCup, freeRiseFromCups } from '../../src/yield/cupTest';
import { waterGPerCm3 } from '../../src/yield/water';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';
import { expectPrinted } from '../support/printed';

const cup = { fullG: 189.2, cupG: 12, waterG: 1105, waterTempC: 25 };

describe('cup test', () => {
  it('T3: volume and free rise of a trimmed cup', () => {
    const result = valueOf(freeRiseFromCup(cup));
    // The reference divides by the rounded 0.99705, which is 3e-6 above the formula; its own 6 digits add 5e-6.
    expectClose(result.cupCm3, 1108.27, 8e-6, 'cup');
    expectPrinted(result.freeRiseKgM3, '159.89', 'free rise');
  });

  it.each([
    [4, '0.99997'],
    [20, '0.99821'],
    [25, '0.99705'],
    [30, '0.99565'],
  ] as const)('water at %d C against the printed tables (CRC Handbook, from memory)', (tempC, published) =>
    expectPrinted(waterGPerCm3(tempC), published),
  );

  it('the range of a cup holds the truth 9 times of 10: 1.645 x 4 % under 100 g, 3 % from there on, by hand', () => {
    const water = { cupG: 0, waterG: 1000 * waterGPerCm3(20), waterTempC: 20 };
    const small = valueOf(cupTest([{ ...water, fullG: 99 }]));
    expect(small).toMatchObject({ uShare: 0.04, freeRiseKgM3: { from: 'cup-test' }, cups: [{ foamG: 99 }] });
    expectClose(small.freeRiseKgM3.low, 99 * (1 - 1.6448536 * 0.04), 1e-8);
    expectClose(small.freeRiseKgM3.high, 99 * (1 + 1.6448536 * 0.04), 1e-8);
    const large = valueOf(cupTest([{ ...water, fullG: 100 }]));
    expectClose(large.freeRiseKgM3.high, 100 * (1 + 1.6448536 * 0.03), 1e-8);
    const two = valueOf(
      cupTest([
        { ...water, fullG: 120 },
        { ...water, fullG: 120 },
      ]),
    );
    expectClose(two.uShare, 0.03 / Math.SQRT2, 1e-12);
    expect(two.cups).toHaveLength(2);
  });

  it('three cups: mean and scatter by hand (155, 164, 173: s = 9, u = 9/sqrt(3)/164)', () => {
    const cups = [155, 164, 173].map((massG) => ({
      fullG: massG,
      cupG: 0,
      waterG: 1000 * waterGPerCm3(20),
      waterTempC: 20,
    }));
    const result = valueOf(freeRiseFromCups(cups));
    expectClose(result.freeRiseKgM3, 164, 1e-12);
    expectClose(result.uShare, 9 / Math.sqrt(3) / 164, 1e-12);
    expect(result.findings).toEqual([]);
  });

  it('one cup is known to 3 %, three equal ones to 1.5 %, a small one to 4 % with a Look', () => {
    expect(valueOf(freeRiseFromCups([cup])).uShare).toBe(0.03);
    expect(valueOf(freeRiseFromCups([cup, cup, cup])).uShare).toBe(0.015);
    const small = valueOf(freeRiseFromCups([{ ...cup, fullG: 65.4 }]));
    expect(small.uShare).toBe(0.04);
    expect(small.findings[0]).toMatchObject({ code: 'CUP_TEST_SMALL', status: 'look' });
  });

  it.each([
    ['a full cup lighter than the empty one', { ...cup, fullG: 11 }, 'CUP_WEIGHTS'],
    ['no water', { ...cup, waterG: 0 }, 'CUP_WEIGHTS'],
    ['boiling water', { ...cup, waterTempC: 95 }, 'INPUT_OUT_OF_BOUNDS'],
    ['a weight that is no number', { ...cup, cupG: Number.NaN }, 'INPUT_NOT_A_NUMBER'],
  ])('refuses %s', (_name, weights, code) => expect(problemOf(freeRiseFromCup(weights)).code).toBe(code));

  it('refuses no cups at all', () => expect(problemOf(freeRiseFromCups([])).code).toBe('INPUT_NOT_A_NUMBER'));
});
