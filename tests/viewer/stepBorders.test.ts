import { describe, expect, it } from 'vitest';
import { weighed } from '../../src/viewer/paintMaterial';
import { stepBorders } from '../../src/viewer/stepBorders';

/** So many values spread evenly over a range, and some that are not known. */
const spread = (low: number, high: number, count = 5000): Float32Array =>
  Float32Array.from({ length: count }, (_, i) =>
    i % 7 === 0 && i > 0 && i < count - 1 ? NaN : low + ((high - low) * i) / (count - 1),
  );

describe('borders between six steps of thickness', () => {
  it.each([
    ['ears of 3 mm on a body of 200 mm', spread(3, 200), [5, 10, 20, 50, 100]],
    ['3 to 60 mm', spread(3, 60), [2, 5, 10, 20, 50]],
    ['20 to 40 mm', spread(20, 40), [15, 20, 25, 30, 35]],
    ['a wall of one thickness', spread(30, 30), [1, 2, 5, 10, 20]],
    ['0.2 to 0.5 mm', spread(0.2, 0.5), [0.25, 0.3, 0.35, 0.4, 0.45]],
  ])('%s', (_, values, borders) =>
    [...(stepBorders(values) ?? [])].forEach((border, i) => expect(border).toBeCloseTo(borders[i]!, 9)),
  );

  it('few thin places among many thick ones still have steps of their own', () => {
    const values = spread(90, 100);
    values[10] = 2;
    const borders = stepBorders(values)!;
    expect(borders[0]).toBeLessThanOrEqual(5);
  });

  it('rise, are round, and the thickest places lie above the last one', () => {
    for (let low = 0.5; low < 60; low *= 1.37)
      for (const factor of [1.05, 1.6, 2.9, 4.9, 8, 40]) {
        const borders = stepBorders(spread(low, factor * low))!;
        const what = `${low} to ${factor * low}: ${borders.join()}`;
        for (let i = 1; i < 5; i++) expect(borders[i]!, what).toBeGreaterThan(borders[i - 1]!);
        expect(borders[0], what).toBeGreaterThan(0);
        expect(borders[4], what).toBeLessThan(factor * low);
        for (const border of borders) expect(border, what).toBeCloseTo(Number(border.toPrecision(3)), 9);
      }
  });

  it('none where nothing is known', () => {
    expect(stepBorders(Float32Array.of(NaN, NaN))).toBeUndefined();
    expect(stepBorders(new Float32Array(0))).toBeUndefined();
  });
});

it('what is not known weighs nothing, so that it never thins what is', () =>
  expect([...weighed(Float32Array.of(40, NaN, 0.5))]).toEqual([40, 1, 0, 0, 0.5, 1]));
