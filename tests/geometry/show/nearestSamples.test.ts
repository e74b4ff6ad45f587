import { describe, expect, it } from 'vitest';
import { nearestSamples } from '../../../src/geometry';
import { lcg } from '../../support/lcg';

describe('the nearest sample to each of some points', () => {
  it('is the one that a look at all of them finds, or none within reach', () => {
    const next = lcg(7);
    const numbers = (count: number): Float32Array =>
      Float32Array.from({ length: 3 * count }, () => 100 * next() - 50);
    const [points, samples, reach] = [numbers(400), numbers(600), 9];
    const found = nearestSamples(points, samples, reach);
    let none = 0;
    found.forEach((s, v) => {
      const far = Array.from({ length: 600 }, (_, n) =>
        Math.hypot(...[0, 1, 2].map((a) => samples[3 * n + a]! - points[3 * v + a]!)),
      );
      const least = Math.min(...far);
      if (s < 0) {
        none++;
        expect(least).toBeGreaterThan(reach);
      } else expect(far[s]).toBe(least);
    });
    expect(none).toBeGreaterThan(10);
    expect(none).toBeLessThan(300);
  });

  it('is the first of several as near, and none where there are no samples', () => {
    const same = Float32Array.from([1, 0, 0, 1, 0, 0, -1, 0, 0]);
    expect([...nearestSamples(Float32Array.of(0.9, 0, 0), same, 5)]).toEqual([0]);
    expect([...nearestSamples(Float32Array.of(0, 0, 0), new Float32Array(0), 5)]).toEqual([-1]);
  });
});
