import { describe, expect, it } from 'vitest';
import { lineLength, lineShare } from '../../../src/geometry/plane/lineShare';
import { between, lcg } from '../../support/lcg';

/** The unit square clipped to the near side of the line, corner by corner: area and the length along the line. */
function clipped(d: number, a: number, b: number): { share: number; length: number } {
  const ring: [number, number][] = [
    [-0.5, -0.5],
    [0.5, -0.5],
    [0.5, 0.5],
    [-0.5, 0.5],
  ];
  const over = ([u, v]: [number, number]): number => a * u + b * v + d;
  const kept: [number, number][] = [];
  const onLine: [number, number][] = [];
  ring.forEach((p, i) => {
    const q = ring[(i + 1) % 4]!;
    if (over(p) <= 0) kept.push(p);
    if (over(p) <= 0 === over(q) <= 0) return;
    const share = over(p) / (over(p) - over(q));
    const cut: [number, number] = [p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])];
    kept.push(cut);
    onLine.push(cut);
  });
  const share = kept.reduce((sum, p, i) => {
    const q = kept[(i + 1) % kept.length]!;
    return sum + (p[0] * q[1] - q[0] * p[1]) / 2;
  }, 0);
  const [from, to] = onLine;
  return { share, length: from && to ? Math.hypot(to[0] - from[0], to[1] - from[1]) : 0 };
}

describe('a square cut by a straight line', () => {
  it('corner to corner: half of it, and the diagonal', () => {
    expect(lineShare(0, Math.SQRT1_2, -Math.SQRT1_2)).toBeCloseTo(0.5, 14);
    expect(lineLength(0, Math.SQRT1_2, -Math.SQRT1_2)).toBeCloseTo(Math.SQRT2, 14);
  });

  it('random lines: as a square clipped by hand', () => {
    for (let seed = 1; seed <= 500; seed++) {
      const random = lcg(seed);
      const [angle, d] = [between(random, 0, 2 * Math.PI), between(random, -0.8, 0.8)];
      const [a, b] = [Math.cos(angle), Math.sin(angle)];
      const { share, length } = clipped(d, a, b);
      expect(Math.abs(lineShare(d, a, b) - share), `seed ${seed}`).toBeLessThan(1e-12);
      expect(Math.abs(lineLength(d, a, b) - length), `seed ${seed}`).toBeLessThan(1e-10);
    }
  });

  it('along a side: all or nothing, and half of the line belongs to each neighbor', () => {
    expect(lineShare(-0.5, 1, 0)).toBeCloseTo(1, 4);
    expect(lineShare(0.5, 0, -1)).toBeCloseTo(0, 4);
    expect(lineLength(0.5, 1, 0) + lineLength(-0.5, 1, 0)).toBeCloseTo(1, 3);
    expect(lineLength(0.51, 1, 0)).toBe(0);
  });
});
