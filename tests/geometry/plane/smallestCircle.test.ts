import { describe, expect, it } from 'vitest';
import { smallestCircle, type Circle } from '../../../src/geometry/plane/smallestCircle';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';

/** Sums of doubles. */
const EXACT = 1e-12;

type Point = readonly [number, number];
const around = (points: readonly Point[]): Circle =>
  smallestCircle(
    Float64Array.from(points, (p) => p[0]),
    Float64Array.from(points, (p) => p[1]),
  );

const reach = ([u, v]: Point, points: readonly Point[]): number =>
  Math.max(...points.map((p) => Math.hypot(p[0] - u, p[1] - v)));

/** The smallest of all circles across two points or through three that hold all others: four nested loops, nothing clever. */
function byTrial(points: readonly Point[]): number {
  let smallest = Infinity;
  for (let i = 0; i < points.length; i++)
    for (let j = i + 1; j < points.length; j++) {
      const [a, b] = [points[i]!, points[j]!];
      smallest = Math.min(smallest, reach([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], points));
      for (let k = j + 1; k < points.length; k++)
        smallest = Math.min(smallest, reach(circumcenter(a, b, points[k]!), points));
    }
  return smallest;
}

/** By the two perpendicular bisectors (Cramer's rule). */
function circumcenter(a: Point, b: Point, c: Point): Point {
  const rows = [b, c].map((p) => [
    p[0] - a[0],
    p[1] - a[1],
    (p[0] ** 2 - a[0] ** 2 + p[1] ** 2 - a[1] ** 2) / 2,
  ]);
  const [[m, n, p], [q, r, s]] = rows as [[number, number, number], [number, number, number]];
  const determinant = m * r - n * q;
  return [(p * r - n * s) / determinant, (m * s - p * q) / determinant];
}

describe('the smallest round mold around an outline', () => {
  it.each<[string, Point[], Circle]>([
    [
      'triangle with equal sides of 2: through its corners',
      [
        [0, 0],
        [2, 0],
        [1, Math.sqrt(3)],
      ],
      { u: 1, v: 1 / Math.sqrt(3), radius: 2 / Math.sqrt(3) },
    ],
    [
      'obtuse triangle: across its longest side',
      [
        [0, 0],
        [5, 1],
        [10, 0],
      ],
      { u: 5, v: 0, radius: 5 },
    ],
    [
      'rectangle of 30 x 40: across its diagonal',
      [
        [0, 0],
        [30, 0],
        [30, 40],
        [0, 40],
      ],
      { u: 15, v: 20, radius: 25 },
    ],
    ['one point', [[3, 4]], { u: 3, v: 4, radius: 0 }],
    [
      'the same point three times',
      [
        [3, 4],
        [3, 4],
        [3, 4],
      ],
      { u: 3, v: 4, radius: 0 },
    ],
    [
      'points on a line, some twice',
      [
        [2, 2],
        [0, 0],
        [8, 8],
        [8, 8],
        [1, 1],
        [0, 0],
      ],
      { u: 4, v: 4, radius: Math.hypot(4, 4) },
    ],
  ])('%s', (_, points, expected) => {
    const circle = around(points);
    expectClose(circle.radius, expected.radius, EXACT, 'radius');
    expect(Math.hypot(circle.u - expected.u, circle.v - expected.v)).toBeLessThan(1e-12 * 10);
  });

  it('random points: as the best of all circles through two or three of them, tried one by one', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const random = lcg(seed);
      const count = 2 + Math.floor(between(random, 0, 14));
      const points = Array.from({ length: count }, (): Point => [
        between(random, 100, 200),
        between(random, 0, 1) ** 2 * 100,
      ]);
      expectClose(around(points).radius, byTrial(points), 1e-11, `seed ${seed}`);
    }
  });

  it('points of a round grid, where many circles tie', () => {
    const points = Array.from({ length: 49 }, (_, i): Point => [i % 7, Math.floor(i / 7)]);
    expectClose(around(points).radius, Math.hypot(3, 3), EXACT);
  });

  it('holds every one of 100 000 points around a circle of 50 mm, and is that circle', () => {
    const random = lcg(7);
    const points = Array.from({ length: 100_000 }, (): Point => {
      const angle = between(random, 0, 2 * Math.PI);
      return [1000 + 50 * Math.cos(angle), -300 + 50 * Math.sin(angle)];
    });
    const circle = around(points);
    expectClose(circle.radius, 50, 1e-9);
    for (const [u, v] of points)
      if (Math.hypot(u - circle.u, v - circle.v) > circle.radius * (1 + EXACT))
        expect.fail(`${u} ${v} is outside`);
  });

  it('does not depend on the order of the points, nor on where they lie', () => {
    const random = lcg(11);
    const points = Array.from({ length: 500 }, (): Point => [between(random, 0, 9), between(random, 0, 7)]);
    const { radius } = around(points);
    expectClose(around([...points].reverse()).radius, radius, EXACT, 'reversed');
    expectClose(around(points.map(([u, v]) => [u + 1e4, v - 1e4])).radius, radius, 1e-10, 'moved');
  });

  it('around nothing there is none', () => {
    expect(around([]).u).toBeNaN();
  });
});
