import { describe, expect, it } from 'vitest';
import { tightestRectangle, type Rectangle } from '../../../src/geometry/plane/tightestRectangle';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';

type Point = readonly [number, number];
const around = (points: readonly Point[], padding = 0): Rectangle =>
  tightestRectangle(
    Float64Array.from(points, (p) => p[0]),
    Float64Array.from(points, (p) => p[1]),
    padding,
  );
const turned = ([u, v]: Point, angle: number): Point => [
  u * Math.cos(angle) - v * Math.sin(angle),
  u * Math.sin(angle) + v * Math.cos(angle),
];
const block = (long: number, wide: number): Point[] => [
  [0, 0],
  [long, 0],
  [long, wide],
  [0, wide],
  [long / 3, wide / 2],
];
const padded = ([a, b]: readonly [number, number], padding: number): number =>
  (a + 2 * padding) * (b + 2 * padding);

/** Sides of the upright box after turning the points back. */
function sidesAt(points: readonly Point[], angle: number): [number, number] {
  const back = points.map((p) => turned(p, -angle));
  const extent = (k: 0 | 1): number =>
    Math.max(...back.map((p) => p[k])) - Math.min(...back.map((p) => p[k]));
  return [extent(0), extent(1)];
}

describe('the smallest box around an outline seen from above', () => {
  it.each([
    [0, 0],
    [10, 10],
    [40, 40],
    [50, -40],
    [90, 0],
    [-20, -20],
    [135, 45],
    [170, -10],
  ])('a block of 60 x 20 mm turned by %d degrees: itself, its first side at %d degrees', (turn, first) => {
    const angle = (turn * Math.PI) / 180;
    const box = around(block(60, 20).map((p) => turned(p, angle)));
    const center = turned([30, 10], angle);
    expect(Math.abs(box.angleRad - (first * Math.PI) / 180)).toBeLessThan(1e-12);
    const isSwapped = Math.round((angle - box.angleRad) / (Math.PI / 2)) % 2 !== 0;
    expectClose(box.sides[isSwapped ? 1 : 0], 60, 1e-12, 'long side');
    expectClose(box.sides[isSwapped ? 0 : 1], 20, 1e-12, 'short side');
    expect(Math.hypot(box.center[0] - center[0], box.center[1] - center[1])).toBeLessThan(1e-12 * 60);
  });

  it('random outlines: as small as the best of 20 000 angles, and every point is in it', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const random = lcg(seed);
      const count = 3 + Math.floor(between(random, 0, 20));
      const points = Array.from({ length: count }, (): Point => [
        between(random, 0, 90),
        between(random, 0, 40),
      ]);
      const padding = seed % 2 === 0 ? 0 : between(random, 1, 40);
      const box = around(points, padding);
      const area = padded(box.sides, padding);
      let scanned = Infinity;
      for (let i = 0; i < 20_000; i++)
        scanned = Math.min(scanned, padded(sidesAt(points, (i * Math.PI) / 40_000), padding));
      expect(area, `seed ${seed}`).toBeLessThanOrEqual(scanned * (1 + 1e-9));
      // The scan misses the best angle by up to 4e-5 rad; a side then grows by that times the size of the outline.
      expect(area, `seed ${seed}`).toBeGreaterThan(scanned * (1 - 1e-3));
      expectClose(area, padded(sidesAt(points, box.angleRad), padding), 1e-11, `seed ${seed}`);
      for (const point of points) {
        const [u, v] = turned([point[0] - box.center[0], point[1] - box.center[1]], -box.angleRad);
        expect(Math.abs(u), `seed ${seed}`).toBeLessThanOrEqual(box.sides[0] / 2 + 1e-9);
        expect(Math.abs(v), `seed ${seed}`).toBeLessThanOrEqual(box.sides[1] / 2 + 1e-9);
      }
    }
  });

  it('the walls decide: far off the sum of both sides counts, near by their product (best of 20 000 angles)', () => {
    // Base times height is the same along each of its sides, so without walls all three tie.
    const triangle: Point[] = [
      [0, 0],
      [20, 0],
      [3, 10],
    ];
    const scanned = Array.from({ length: 20_000 }, (_, i) => sidesAt(triangle, (i * Math.PI) / 40_000));
    expectClose(padded(around(triangle).sides, 0), 200, 1e-12);
    for (const padding of [5, 20, 1000]) {
      const best = Math.min(...scanned.map((sides) => padded(sides, padding)));
      expectClose(padded(around(triangle, padding).sides, padding), best, 1e-4);
    }
    const [a, b] = around(triangle, 1000).sides;
    expectClose(a + b, Math.min(...scanned.map((sides) => sides[0] + sides[1])), 1e-4);
  });

  it('stands straight where turning gains nothing, whatever rounding says', () => {
    for (const upright of [
      block(30, 30),
      block(60, 20),
      block(0.1, 0.3).map(([u, v]): Point => [u + 1 / 3, v + 1e3]),
    ])
      expect(around(upright).angleRad).toBe(0);
  });

  it('64 points around a circle: boxed from flat to flat, not from corner to corner', () => {
    const round = Array.from({ length: 64 }, (_, k): Point => turned([50, 0], (k * Math.PI) / 32));
    expectClose(around(round).sides[0], 100 * Math.cos(Math.PI / 64), 1e-12);
  });

  it('100 000 points around a circle', () => {
    const round = Array.from({ length: 100_000 }, (_, k): Point => turned([50, 0], (k * Math.PI) / 50_000));
    // From flat to flat is (2 pi / 100 000)^2 / 8 = 5e-10 less than across.
    expectClose(padded(around(round, 10).sides, 10), 120 * 120, 2e-9);
  });

  it('points on a slanted line: a box without width; one point: without length too', () => {
    const line = around([
      [0, 0],
      [30, 40],
      [3, 4],
    ]);
    expectClose(Math.max(...line.sides), 50, 1e-12);
    expect(Math.min(...line.sides)).toBeLessThan(1e-12);
    expect(around([[5, 6]], 3)).toEqual({ angleRad: 0, sides: [0, 0], center: [5, 6] });
  });

  it('refuses walls inside the outline, walls nowhere, and no outline', () => {
    expect(() => around(block(2, 1), -1)).toThrow('padding of 0 or more');
    expect(() => around(block(2, 1), NaN)).toThrow('padding of 0 or more');
    expect(() => around([])).toThrow('expected points');
  });
});
