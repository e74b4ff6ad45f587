import { expect, it } from 'vitest';
import { monotoneCurve } from '../../src/plan/mold/monotoneCurve';
import { expectClose } from '../support/close';

/** The radiochemical data of Fritsch and Carlson 1980, from memory: flat, then steep, then flat. A cubic spline swings over them. */
const STEEP = [
  [7.99, 0],
  [8.09, 2.76429e-5],
  [8.19, 4.37498e-2],
  [8.7, 0.169183],
  [9.2, 0.469428],
  [10, 0.94374],
  [12, 0.998636],
  [15, 0.999919],
  [20, 0.999994],
].map(([x, y]) => ({ x: x!, y: y! }));

it('rises wherever the data rise, and never past them (the data of Fritsch and Carlson)', () => {
  const curve = monotoneCurve(STEEP);
  let before = -Infinity;
  for (let n = 0; n <= 2000; n++) {
    const y = curve(7.99 + (12.01 * n) / 2000);
    expect(y).toBeGreaterThanOrEqual(before);
    expect(y).toBeLessThanOrEqual(0.999994 + 1e-12);
    before = y;
  }
});

it('passes through its points, and is a cubic again where its slopes are known', () => {
  // A ball grown by x: (50 + x)^3, by Hermite exact.
  const ball = [1, 6, 15, 40].map((x) => ({ x, y: (50 + x) ** 3, slope: 3 * (50 + x) ** 2 }));
  const curve = monotoneCurve(ball);
  for (const x of [1, 2.5, 6, 11, 22, 40]) expectClose(curve(x), (50 + x) ** 3, 1e-12, `at ${x}`);
});

it('is the parabola where three points are of one and nothing turns', () => {
  const curve = monotoneCurve([1, 2, 3].map((x) => ({ x, y: x * x })));
  for (const x of [1.25, 2.5, 2.9]) expectClose(curve(x), x * x, 1e-12, `at ${x}`);
});

it('stays level between level points, and turns at a top without swinging over it', () => {
  const curve = monotoneCurve([0, 1, 2, 3].map((x) => ({ x, y: [0, 4, 4, 1][x]! })));
  for (let x = 0; x <= 3; x += 0.05) expect(curve(x)).toBeLessThanOrEqual(4 + 1e-12);
  expect(curve(1.5)).toBe(4);
});

it('is not defined beyond its points', () => {
  const curve = monotoneCurve([
    { x: 1, y: 1 },
    { x: 2, y: 2 },
  ]);
  expect([curve(0.99), curve(2.01)]).toEqual([NaN, NaN]);
  expect(monotoneCurve([{ x: 1, y: 5 }])(1)).toBe(5);
});
