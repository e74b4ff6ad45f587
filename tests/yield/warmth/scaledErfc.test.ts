import { describe, it } from 'vitest';
import { riseShare } from '../../../src/yield/warmth/semiInfinite';
import { expectClose } from '../../support/close';

/** exp(x^2) erfc(x) by its continued fraction (Abramowitz & Stegun 7.1.14), from the inside out; 400 levels are enough from 1 on. */
function byFraction(x: number): number {
  let below = x;
  for (let level = 400; level >= 1; level -= 1) below = x + level / 2 / below;
  return 1 / (Math.sqrt(Math.PI) * below);
}

/** On the surface only exp(b^2) erfc(b) is left of the formula, b being the heat transfer. */
const scaled = (b: number): number => 1 - riseShare(0, b, 1);

describe('what air has brought to the face of a thick body', () => {
  it.each([
    [1, 0.427583576],
    [2, 0.255395676],
  ])('exp(x^2) erfc(x) at %d is %d (Abramowitz & Stegun, table 7.2, from memory)', (x, printed) => {
    expectClose(scaled(x), printed, 2e-8);
    expectClose(byFraction(x), printed, 2e-8);
  });

  // 1 - share loses the last digits of a small one: 1e-16 of 5e-4 at the far end.
  it.each([1, 3, 6, 9, 11.9, 12, 12.1, 15, 30, 100, 1000])(
    'a transfer of %d, by a continued fraction',
    (b) => {
      expectClose(scaled(b), byFraction(b), 1e-8);
    },
  );
});
