import { describe, expect, it } from 'vitest';
import { cutPolygon, outOfPlane, POLYGON_LIMIT } from '../../../src/geometry/io/polygon';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';

type Plan = readonly (readonly [number, number])[];

/** Gauss's shoelace formula. */
const shoelace = (plan: Plan): number =>
  plan.reduce((sum, [x, y], i) => {
    const [nx, ny] = plan[(i + 1) % plan.length]!;
    return sum + (x * ny - nx * y) / 2;
  }, 0);

/** Puts a plan on a tilted plane of orthonormal axes: areas stay. */
const tilted = (plan: Plan): Float64Array =>
  Float64Array.from(plan.flatMap(([x, y]) => [0.6 * x + 3, 0.8 * x - 1, y + 2]));

/** Signed area of every triangle, seen in the plan. */
function cutAreas(plan: Plan, points = tilted(plan)): number[] | undefined {
  const triangles = cutPolygon(
    points,
    plan.map((_, i) => i),
  );
  if (triangles === undefined) return undefined;
  expect(triangles.length).toBe(3 * (plan.length - 2));
  const areas: number[] = [];
  for (let t = 0; t < triangles.length; t += 3)
    areas.push(shoelace([plan[triangles[t]!]!, plan[triangles[t + 1]!]!, plan[triangles[t + 2]!]!]));
  return areas;
}

const sum = (areas: readonly number[]): number => areas.reduce((a, b) => a + b, 0);
const SEED = 19;

describe('triangles cover a polygon once: all turn one way and their areas add up to the shoelace area', () => {
  it(`500 star-shaped polygons of 4 to 60 corners on a tilted plane, seed ${SEED}`, () => {
    const random = lcg(SEED);
    for (let i = 0; i < 500; i++) {
      const n = 4 + Math.floor(between(random, 0, 57));
      const plan = Array.from({ length: n }, (_, k): [number, number] => {
        const [angle, r] = [(2 * Math.PI * (k + between(random, 0, 0.9))) / n, between(random, 1, 20)];
        return [r * Math.cos(angle), r * Math.sin(angle)];
      });
      const areas = cutAreas(plan);
      expect(areas, `polygon ${i}`).toBeDefined();
      // Sums of 60 products of doubles.
      expectClose(sum(areas!), shoelace(plan), 1e-12, `polygon ${i}`);
      expect(Math.min(...areas!), `polygon ${i}`).toBeGreaterThanOrEqual(-1e-12 * shoelace(plan));
    }
  });

  const named: [string, Plan][] = [
    [
      'an L',
      [
        [0, 0],
        [4, 0],
        [4, 1],
        [1, 1],
        [1, 3],
        [0, 3],
      ],
    ],
    [
      'a U',
      [
        [0, 0],
        [5, 0],
        [5, 4],
        [4, 4],
        [4, 1],
        [1, 1],
        [1, 4],
        [0, 4],
      ],
    ],
    [
      'an arrow quad',
      [
        [0, 0],
        [3, 0],
        [0.8, 0.8],
        [0, 3],
      ],
    ],
    [
      'an arrow quad from its dent',
      [
        [0.8, 0.8],
        [0, 3],
        [0, 0],
        [3, 0],
      ],
    ],
    [
      'a square with points along its sides',
      [
        [0, 0],
        [1, 0],
        [2, 0],
        [3, 0],
        [3, 1],
        [3, 2],
        [3, 3],
        [2, 3],
        [1, 3],
        [0, 3],
        [0, 2],
        [0, 1],
      ],
    ],
    [
      'a comb',
      Array.from({ length: 41 }, (_, k): [number, number] =>
        k === 40 ? [20, -1] : k === 0 ? [-1, -1] : [k / 2, k % 2 === 0 ? 0 : 9],
      ),
    ],
    [
      'a ring opened by a bridge',
      [
        [0, 0],
        [6, 0],
        [6, 6],
        [0, 6],
        [0, 0],
        [2, 2],
        [2, 4],
        [4, 4],
        [4, 2],
        [2, 2],
      ],
    ],
  ];
  it.each(named.map(([name, plan]) => [name, shoelace(plan) > 0 ? plan : [...plan].reverse()] as const))(
    '%s',
    (_, plan) => {
      for (let start = 0; start < plan.length; start++) {
        const turned = [...plan.slice(start), ...plan.slice(0, start)];
        const areas = cutAreas(turned)!;
        expect(areas, `from corner ${start}`).toBeDefined();
        expectClose(sum(areas), shoelace(plan), 1e-12, `from corner ${start}`);
        expect(Math.min(...areas), `from corner ${start}`).toBeGreaterThanOrEqual(-1e-12);
      }
    },
  );

  it('keeps the turning sense: the same outline backwards gives triangles that turn backwards', () => {
    const plan = named[0]![1];
    const back = [...plan].reverse();
    expect(Math.max(...cutAreas(back)!)).toBeLessThanOrEqual(0);
    expectClose(sum(cutAreas(back)!), -shoelace(plan), 1e-12);
  });
});

it.each<[string, Plan]>([
  [
    'a bow tie',
    [
      [0, 0],
      [4, 3],
      [4, 0],
      [0, 4],
    ],
  ],
  [
    'a pentagram',
    [0, 2, 4, 1, 3].map((k): [number, number] => [
      Math.cos((2 * Math.PI * k) / 5),
      Math.sin((2 * Math.PI * k) / 5),
    ]),
  ],
  [
    'a hexagon with two corners swapped',
    [
      [0, 0],
      [2, -1],
      [4, 2],
      [4, 0],
      [2, 3],
      [0, 2],
    ],
  ],
])('an outline that crosses itself has no cut: %s', (_, plan) => {
  expect(
    cutPolygon(
      tilted(plan),
      plan.map((_, i) => i),
    ),
  ).toBeUndefined();
});

it('how far a corner is off the plane: a unit square with one corner up by h has its corners off by about h/4', () => {
  const points = Float64Array.of(0, 0, 0, 1, 0, 0, 1, 1, 0.01, 0, 1, 0);
  // Mean plane of the square: heights deviate by h (1/2 +- 1/4) of the corner; for small h, h/4 within h^2 (derived by hand).
  expectClose(outOfPlane(points, [0, 1, 2, 3]), 0.0025, 0.01);
  expect(
    outOfPlane(
      tilted([
        [0, 0],
        [4, 0],
        [4, 4],
        [0, 4],
      ]),
      [0, 1, 2, 3],
    ),
  ).toBeLessThan(1e-12);
});

it('a star of the largest number of corners is cut, and exactly', () => {
  const plan = Array.from({ length: POLYGON_LIMIT }, (_, k): [number, number] => {
    const [angle, r] = [(2 * Math.PI * k) / POLYGON_LIMIT, k % 2 === 0 ? 10 : 9];
    return [r * Math.cos(angle), r * Math.sin(angle)];
  });
  expectClose(sum(cutAreas(plan)!), shoelace(plan), 1e-11);
});

describe('a file of long spirals does not take forever', () => {
  it('what the polygons of one file may take is bounded', () => {
    const turns = 300;
    const arm = (out: number, i: number): [number, number] => [
      (10 + i + out) * Math.cos(0.3 * i),
      (10 + i + out) * Math.sin(0.3 * i),
    ];
    const there = Array.from({ length: turns }, (_, i) => arm(0, i));
    const back = Array.from({ length: turns }, (_, i) => arm(1.5, turns - 1 - i));
    const flat = Float64Array.from([...there, ...back].flatMap(([x, y]) => [x, y, 0]));
    const ring = Array.from({ length: 2 * turns }, (_, i) => i);
    const work = { left: 1e8 };
    expect(cutPolygon(flat, ring, work)).toHaveLength(3 * (2 * turns - 2));
    expect(work.left).toBeLessThan(1e8);
    expect(cutPolygon(flat, ring, { left: 1000 })).toBeUndefined();
  });
});
