import { expect } from 'vitest';

/**
 * Relative closeness: |actual - expected| <= relative x |expected|. The one closeness test of this project, because an
 * absolute one is wrong for 500 000 mm3 and for 0.3 g alike.
 */
export function expectClose(actual: number, expected: number, relative: number, what = 'value'): void {
  const offBy = Math.abs(actual - expected) / Math.max(Math.abs(expected), Number.MIN_VALUE);
  expect(
    offBy <= relative,
    `${what}: got ${actual}, expected ${expected}, off by ${(100 * offBy).toPrecision(3)} %, allowed ${100 * relative} %`,
  ).toBe(true);
}
