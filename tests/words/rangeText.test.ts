import { describe, expect, it } from 'vitest';
import { rangeText } from '../../src/words/rangeText';

const numberOf = (text: string): number => Number(text.replaceAll(/\u202f/g, ''));
const decimals = (text: string): number => text.split('.')[1]?.length ?? 0;

describe('a value with its range', () => {
  it.each([
    [{ value: 2353.4, low: 2310.2, high: 2396.6 }, ['2\u202f353', '2\u202f310', '2\u202f397']],
    [{ value: 12.503, low: 12.4999, high: 12.5061 }, ['12.50', '12.49', '12.51']],
    [{ value: 4, low: 4, high: 4 }, ['4.000', '4.000', '4.000']],
    [{ value: 123456, low: 123401, high: 123512 }, ['123\u202f500', '123\u202f400', '123\u202f600']],
    [{ value: 0.5, low: 0, high: 1.23456 }, ['0.500', '0.000', '1.235']],
  ])('%j', (estimate, [value, low, high]) => expect(rangeText(estimate)).toEqual({ value, low, high }));

  it('goes by the step of the scale where there is one', () => {
    expect(rangeText({ value: 588, low: 530.2, high: 645.1 }, { step: 1 })).toEqual({
      value: '588',
      low: '530',
      high: '646',
    });
    expect(rangeText({ value: 120, low: 113.4, high: 125 }, { step: 5 })).toMatchObject({
      low: '110',
      high: '125',
    });
  });

  it('always holds its value, with the same last place, in ten thousand ranges', () => {
    let seed = 20260;
    const random = (): number => (seed = (seed * 48271) % 2147483647) / 2147483647;
    for (let i = 0; i < 10_000; i++) {
      const value = 10 ** (8 * random() - 2);
      const estimate = { value, low: value * (1 - random() ** 4), high: value * (1 + random() ** 4) };
      const text = rangeText(estimate);
      const message = `seed 20260, ${JSON.stringify(estimate)}`;
      expect(numberOf(text.low), message).toBeLessThanOrEqual(Math.min(numberOf(text.value), estimate.low));
      expect(numberOf(text.high), message).toBeGreaterThanOrEqual(
        Math.max(numberOf(text.value), estimate.high),
      );
      expect([decimals(text.low), decimals(text.high)], message).toEqual([
        decimals(text.value),
        decimals(text.value),
      ]);
    }
  });
});
