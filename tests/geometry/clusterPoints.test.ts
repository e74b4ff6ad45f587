import { describe, expect, it } from 'vitest';
import { clusterPoints } from '../../src/geometry/repair/clusterPoints';
import { between, lcg } from '../support/lcg';

describe('points that lie together', () => {
  it('a chain of points each within reach of the next does not become one: no group is wider than twice the reach', () => {
    const points = Float64Array.from({ length: 300 }, (_, i) => (i % 3 === 0 ? 0.3 * Math.floor(i / 3) : 0));
    const { index, centers } = clusterPoints(points, 1);
    for (let group = 0; group < centers.length / 3; group++) {
      const members = [...index].flatMap((g, i) => (g === group ? [points[3 * i]!] : []));
      expect(Math.max(...members) - Math.min(...members)).toBeLessThanOrEqual(2);
    }
  });

  it('points further apart than the reach stay to the bit where they were; seed 9', () => {
    const random = lcg(9);
    const points = Float64Array.from(
      { length: 600 },
      (_, i) => 10 * Math.floor(i / 3) + between(random, 0, 1),
    );
    const { index, centers } = clusterPoints(points, 1);
    for (let i = 0; i < 200; i++)
      for (let k = 0; k < 3; k++) expect(centers[3 * index[i]! + k]).toBe(points[3 * i + k]);
  });

  it('a crowd goes to its mean, whichever point comes first; far from zero and across zero alike; seed 10', () => {
    const random = lcg(10);
    for (const at of [0, 1e6, -50]) {
      const points = Float64Array.from({ length: 60 }, () => at + between(random, -0.2, 0.2));
      const { index, centers } = clusterPoints(points, 1);
      expect(new Set(index).size).toBe(1);
      for (let k = 0; k < 3; k++) {
        const own = [...points].filter((_, c) => c % 3 === k);
        const mean = own.reduce((sum, x) => sum + (x - at), 0) / own.length;
        expect(Math.abs(centers[k]! - at - mean)).toBeLessThan(1e-9);
      }
    }
  });
});
