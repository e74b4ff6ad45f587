import { expect, it } from 'vitest';
import { mixtureQuantiles } from '../../../src/yield/learn/mixture';
import { normalQuantile } from '../../../src/yield/normal';

const mixture = (rows: readonly (readonly [middle: number, sd: number, weight: number])[]) => ({
  middle: Float64Array.from(rows, ([middle]) => middle),
  sd: Float64Array.from(rows, ([, sd]) => sd),
  weight: Float64Array.from(rows, ([, , weight]) => weight),
});

it('one normal distribution, in parts of any weight, is that distribution', () => {
  const same = mixture([
    [20, 4, 1],
    [20, 4, 3],
  ]);
  const shares = [0.001, 0.05, 0.5, 0.9, 0.999];
  mixtureQuantiles(same, shares).forEach((y, i) => {
    expect(Math.abs(y - (20 + 4 * normalQuantile(shares[i]!)))).toBeLessThan(1e-4 * 4);
  });
});

it('two far apart and narrow, where a step of Newton leads astray: the middle of each at its half of the weight', () => {
  // Of 1 at 0 and 3 at 100, 1/8 lies below the middle of the first and 5/8 below that of the second. Known to 1e-4 of the spread of both, 43.3.
  const apart = mixture([
    [0, 0.5, 1],
    [100, 0.5, 3],
  ]);
  const [first, second, end] = mixtureQuantiles(apart, [1 / 8, 5 / 8, 0.25 + 0.75 * 0.99]);
  expect(Math.abs(first!)).toBeLessThan(0.005);
  expect(Math.abs(second! - 100)).toBeLessThan(0.005);
  expect(Math.abs(end! - (100 + 0.5 * normalQuantile(0.99)))).toBeLessThan(0.005);
});
