import { describe, expect, it } from 'vitest';
import { checkPack, overpackFromPack, packFindings, packFromOverpack } from '../../src/yield/packFactor';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';

describe('pack factor and overpack are two terms', () => {
  it('T2: overpack 110 % of a minimum fill of 180 over a free rise of 160 is pack 1.2375, and back', () => {
    const fill = { minFillKgM3: 180, freeRiseKgM3: 160 };
    expectClose(packFromOverpack({ overpackShare: 1.1, ...fill }), 1.2375, 1e-12);
    expectClose(overpackFromPack({ packFactor: 1.2375, ...fill }), 1.1, 1e-12);
  });

  it.each([1, 1.3, 2.5])('takes %d', (packFactor) => expect(valueOf(checkPack(packFactor))).toBe(packFactor));

  it.each([0, 0.99, 2.51, -1])('refuses %d', (packFactor) => {
    expect(problemOf(checkPack(packFactor))).toMatchObject({
      code: 'PACK_REFUSED',
      values: { packFactor, low: 1, high: 2.5 },
    });
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses %d as no number', (packFactor) => {
    expect(problemOf(checkPack(packFactor)).code).toBe('INPUT_NOT_A_NUMBER');
  });

  it.each([
    [1.05, 'look'],
    [1.1, undefined],
    [1.3, undefined],
    [1.6, undefined],
    [1.61, 'look'],
    [2, 'look'],
    [2.01, 'stop'],
  ])('%d is said as %s', (packFactor, status) => expect(packFindings(packFactor)[0]?.status).toBe(status));
});
