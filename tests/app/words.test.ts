import { describe, expect, it } from 'vitest';
import { gramsText } from '../../src/units';
import { oneTwoFive } from '../../src/viewer/oneTwoFive';

describe('grams as the scale shows them', () => {
  it.each([
    [379, 1, '379'],
    [12.5, 0.05, '12.50'],
    [1234.5, 0.1, '1\u2009234.5'],
    [21000, 10, '21\u2009000'],
  ])('%f g in steps of %f is %s', (massG, stepG, text) => expect(gramsText(massG, stepG)).toBe(text));
});

describe('the length of a scale bar', () => {
  it.each([
    [120, 100],
    [99.9, 50],
    [20, 20],
    [0.019, 0.01],
    [1, 1],
    [4999, 2000],
  ])('at most %f is %f', (limit, length) => expect(oneTwoFive(limit)).toBe(length));

  it('is 1, 2 or 5 times a power of ten, and more than 40 % of what is allowed', () => {
    for (let limit = 0.003; limit < 5000; limit *= 1.07) {
      const length = oneTwoFive(limit);
      expect(length).toBeLessThanOrEqual(limit);
      expect(length).toBeGreaterThan(0.399 * limit);
      expect(['1', '2', '5']).toContain(length.toExponential()[0]);
    }
  });
});
