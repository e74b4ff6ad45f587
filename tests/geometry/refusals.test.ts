import { describe, expect, it } from 'vitest';
import { measureSolid, type TriangleMesh } from '../../src/geometry';
import { sizeScan } from '../../src/plan';
import type { Code } from '../../src/problem';
import { between, lcg } from '../support/lcg';
import { outcomeOf } from '../support/measured';
import { moved, scaled } from '../support/meshTools';
import { problemOf } from '../support/outcome';
import { box, sphere } from '../support/shapes';

const mesh = (points: readonly number[][], triangles: readonly number[][]): TriangleMesh => ({
  positions: Float64Array.from(points.flat()),
  triangles: Int32Array.from(triangles.flat()),
});

const SQUARE = [
  [0, 0, 0],
  [50, 0, 0],
  [50, 50, 0],
  [0, 50, 0],
];

/** A flat grid, one-sided. */
function sheet(bulge: (x: number, y: number) => number): TriangleMesh {
  const n = 20;
  const points: number[][] = [];
  for (let j = 0; j <= n; j++) for (let i = 0; i <= n; i++) points.push([5 * i, 5 * j, bulge(i / n, j / n)]);
  const triangles: number[][] = [];
  for (let j = 0; j < n; j++)
    for (let i = 0; i < n; i++) {
      const a = j * (n + 1) + i;
      triangles.push([a, a + 1, a + n + 2], [a, a + n + 2, a + n + 1]);
    }
  return mesh(points, triangles);
}

/** A band with one half turn: it has one side (Moebius 1858, Listing 1861). */
function moebius(): TriangleMesh {
  const n = 90;
  const points: number[][] = [];
  for (let i = 0; i < n; i++) {
    const angle = (2 * Math.PI * i) / n;
    for (const side of [-10, 10]) {
      const r = 50 + side * Math.cos(angle / 2);
      points.push([r * Math.cos(angle), r * Math.sin(angle), side * Math.sin(angle / 2)]);
    }
  }
  const triangles: number[][] = [];
  for (let i = 0; i < n; i++) {
    const [a, b] = [2 * i, 2 * i + 1];
    const [c, d] = i + 1 < n ? [2 * i + 2, 2 * i + 3] : [1, 0];
    triangles.push([a, c, b], [b, c, d]);
  }
  return mesh(points, triangles);
}

const SOUP_SEED = 20240611;
function soup(): TriangleMesh {
  const random = lcg(SOUP_SEED);
  const points: number[][] = [];
  for (let t = 0; t < 1000; t++) {
    const at = [0, 1, 2].map(() => between(random, 0, 200));
    for (let c = 0; c < 3; c++) points.push(at.map((x) => x + between(random, -8, 8)));
  }
  return mesh(
    points,
    points
      .map((_, i) => i)
      .reduce<number[][]>((rows, i) => (i % 3 === 0 ? [...rows, [i, i + 1, i + 2]] : rows), []),
  );
}

describe('what has no inside is refused by its reason, and never measured', () => {
  const cases: [string, TriangleMesh, Code][] = [
    ['a flat sheet', sheet(() => 0), 'NOT_CLOSED'],
    [
      'a sheet with a shallow bulge: the rim says nothing of the back',
      sheet((x, y) => 3 * x * (1 - x) * y * (1 - y)),
      'NOT_CLOSED',
    ],
    ['a Moebius strip: one side only', moebius(), 'NOT_ORIENTED'],
    [
      'a single triangle',
      mesh(
        [
          [0, 0, 0],
          [10, 0, 0],
          [0, 10, 0],
        ],
        [[0, 1, 2]],
      ),
      'NOT_CLOSED',
    ],
    [`1 000 loose triangles, seed ${SOUP_SEED}`, soup(), 'NOT_CLOSED'],
    [
      'a square seen from both sides, cut along one diagonal',
      mesh(SQUARE, [
        [0, 1, 2],
        [0, 2, 3],
        [2, 1, 0],
        [3, 2, 0],
      ]),
      'ZERO_VOLUME',
    ],
    [
      'a square seen from both sides, cut along both diagonals',
      mesh(SQUARE, [
        [0, 1, 2],
        [0, 2, 3],
        [1, 0, 3],
        [1, 3, 2],
      ]),
      'ZERO_VOLUME',
    ],
    [
      'triangles collapsed to lines',
      mesh(
        [
          [0, 0, 0],
          [9, 0, 0],
        ],
        [
          [0, 1, 1],
          [0, 0, 1],
        ],
      ),
      'DEGENERATE_ONLY',
    ],
    ['triangles collapsed to a point', mesh([[4, 4, 4]], [[0, 0, 0]]), 'DEGENERATE_ONLY'],
    [
      'three points on one line',
      mesh(
        [
          [0, 0, 0],
          [5, 0, 0],
          [9, 0, 0],
        ],
        [[0, 1, 2]],
      ),
      'NOT_CLOSED',
    ],
    ['no triangle at all', mesh([[0, 0, 0]], []), 'NO_TRIANGLES'],
    ['a ball of half a micrometer', scaled(sphere(1, 8), 2.5e-4), 'TOO_SMALL'],
  ];
  it.each(cases)('%s', (_, shape, code) => {
    const problem = problemOf(outcomeOf(shape));
    expect(problem.code).toBe(code);
    for (const value of Object.values(problem.values))
      expect(value, JSON.stringify(problem.values)).not.toBeNaN();
  });

  it('coordinates coarser than the piece deserves (a 40 mm box 100 km from zero in float32 steps of 8 mm): PRECISION', () => {
    const problem = problemOf(measureSolid(moved(box([40, 30, 20]), [1e8, 0, 0]), { coordinateStepMm: 8 }));
    expect(problem.code).toBe('PRECISION');
  });

  it('a hemisphere bowl, open over its whole width, carries a range that spans the flat lid: half of the ball', () => {
    const half = sphere(50, 48);
    const bowl = {
      positions: half.positions,
      triangles: half.triangles.filter((_, c) =>
        [0, 1, 2].every((k) => half.positions[3 * half.triangles[c - (c % 3) + k]! + 2]! < 1e-9),
      ),
    };
    const outcome = outcomeOf(bowl);
    expect(outcome.ok).toBe(true);
    if (outcome.ok) {
      const lidMm3 = measureSolidOf(half) / 2;
      expect(Math.abs(outcome.value.volumeMm3 - lidMm3)).toBeLessThanOrEqual(outcome.value.doubt.capsMm3);
    }
  });

  it.each(cases)('%s: through sizeScan no NaN gets out either', (_, shape) => {
    const problem = problemOf(
      sizeScan(
        {
          mesh: shape,
          format: 'stl',
          trianglesRead: shape.triangles.length / 3,
          coordinateStep: 0,
          findings: [],
        },
        { fileUnit: 'mm' },
      ),
    );
    expect(JSON.stringify(problem)).not.toMatch(/null|NaN/);
  });
});

const measureSolidOf = (shape: TriangleMesh): number => {
  const outcome = outcomeOf(shape);
  return outcome.ok ? outcome.value.volumeMm3 : 0;
};
