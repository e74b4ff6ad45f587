import { describe, expect, it } from 'vitest';
import { isOverlap, type FlatRing } from '../../../src/geometry/features/demoldRings';
import { lcg } from '../../support/lcg';

const SEED = 20;

/** Columns side by side on one line, each so many squares high: all their sides lie on the lines of a grid. */
interface Skyline {
  left: number;
  foot: number;
  /** -1: it hangs down. */
  up: 1 | -1;
  heights: readonly number[];
}

const skyline = (random: () => number): Skyline => {
  const whole = (low: number, high: number): number => low + Math.floor(random() * (high - low + 1));
  return {
    left: whole(0, 4),
    foot: whole(0, 4),
    up: random() < 0.5 ? 1 : -1,
    heights: Array.from({ length: whole(1, 4) }, () => whole(1, 3)),
  };
};

/** The squares it holds, counted one by one. */
function squaresOf({ left, foot, up, heights }: Skyline): string[] {
  return heights.flatMap((height, n) =>
    Array.from({ length: height }, (_, h) => `${left + n} ${up > 0 ? foot + h : foot - 1 - h}`),
  );
}

const isSharing = (a: Skyline, b: Skyline): boolean => {
  const squares = new Set(squaresOf(a));
  return squaresOf(b).some((square) => squares.has(square));
};

/** Its outline around solid, with points within the sides as cut facets leave them, turned by an angle. */
function outlineOf({ left, foot, up, heights }: Skyline, angle: number, random: () => number): FlatRing {
  const top = heights.flatMap((height, n): [number, number][] => [
    [left + n, foot + up * height],
    [left + n + 1, foot + up * height],
  ]);
  const corners: [number, number][] = [[left, foot], ...top, [left + heights.length, foot]];
  // Along the top from left to right is around solid only where it hangs down.
  if (up > 0) corners.reverse();
  const points = corners.flatMap(([u, v], n): [number, number][] => {
    const [nextU, nextV] = corners[(n + 1) % corners.length]!;
    const share = random();
    return random() < 0.5
      ? [[u, v]]
      : [
          [u, v],
          [u + share * (nextU - u), v + share * (nextV - v)],
        ];
  });
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return Float64Array.from(points.flatMap(([u, v]) => [13.7 * (c * u - s * v), 13.7 * (s * u + c * v)]));
}

describe('outlines in one plane', () => {
  it(`of 4000 pairs whose sides lie on common lines, those overlap that share a square of the grid, seed ${SEED}`, () => {
    const random = lcg(SEED);
    const seen = { overlap: 0, apart: 0 };
    for (let n = 0; n < 4000; n++) {
      const [a, b] = [skyline(random), skyline(random)];
      const angle = n % 4 === 0 ? 0 : 2 * Math.PI * random();
      const [p, q] = [outlineOf(a, angle, random), outlineOf(b, angle, random)];
      const isTrue = isSharing(a, b);
      seen[isTrue ? 'overlap' : 'apart']++;
      const told = `pair ${n}: ${JSON.stringify([a, b])}`;
      expect(isOverlap(p, q), told).toBe(isTrue);
      expect(isOverlap(q, p), told).toBe(isTrue);
    }
    expect(Math.min(seen.overlap, seen.apart)).toBeGreaterThan(1000);
  });

  it(`so with corners in single precision, as a binary STL has them, seed ${SEED + 1}`, () => {
    const random = lcg(SEED + 1);
    for (let n = 0; n < 1000; n++) {
      const [a, b] = [skyline(random), skyline(random)];
      const angle = 2 * Math.PI * random();
      const [p, q] = [a, b].map((one) => Float64Array.from(outlineOf(one, angle, random), Math.fround)) as [
        FlatRing,
        FlatRing,
      ];
      expect(isOverlap(p, q), `pair ${n}: ${JSON.stringify([a, b])}`).toBe(isSharing(a, b));
    }
  });

  const square = (low: number, high: number): FlatRing =>
    Float64Array.of(low, low, high, low, high, high, low, high);

  it('one within the other overlaps it, though their sides never meet', () => {
    expect(isOverlap(square(0, 10), square(4, 5))).toBe(true);
    expect(isOverlap(square(4, 5), square(0, 10))).toBe(true);
  });

  it('one whose corners all lie on the sides of the other overlaps it', () => {
    const diamond = Float64Array.of(5, 0, 10, 5, 5, 10, 0, 5);
    expect(isOverlap(square(0, 10), diamond)).toBe(true);
    expect(isOverlap(diamond, square(0, 10))).toBe(true);
  });

  it('squares that meet in a corner or along a side touch, and a hundredth of a millimeter more overlaps', () => {
    expect(isOverlap(square(0, 10), square(10, 20))).toBe(false);
    const beside = (from: number): FlatRing => Float64Array.of(from, 2, from + 10, 2, from + 10, 8, from, 8);
    expect(isOverlap(square(0, 10), beside(10))).toBe(false);
    expect(isOverlap(square(0, 10), beside(9.99))).toBe(true);
  });
});
