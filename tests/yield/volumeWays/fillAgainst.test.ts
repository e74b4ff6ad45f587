import { expect, it } from 'vitest';
import type { Estimate } from '../../../src/estimate';
import { fillAgainst } from '../../../src/yield';
import { expectClose } from '../../support/close';

const known = (value: number, half: number): Estimate => ({
  value,
  low: value - half,
  high: value + half,
  from: 'given',
});

it('4000 cm3 known to 80 and a fill of 4100 known to 41: 2.5 % apart, within hypot(3, 2, 1) % (by hand)', () => {
  const { share, allowedShare, isFar } = fillAgainst(known(4000, 80), known(4100, 41));
  expectClose(share, 0.025, 1e-12);
  // Twice the 1.5 % of what lies between scan and mold; a range of 95 of 100 is already twice its doubt.
  expectClose(allowedShare, Math.sqrt(0.03 ** 2 + 0.02 ** 2 + 0.01 ** 2), 1e-12);
  expect(isFar).toBe(false);
});

it.each([
  [4118, false],
  [4122, true],
  [3882, false],
  [3878, true],
])('4000 cm3 known for sure and a fill of %d: farther than 3 %% apart is %s', (fillCm3, isFar) => {
  expect(fillAgainst(known(4000, 0), known(fillCm3, 0)).isFar).toBe(isFar);
});
