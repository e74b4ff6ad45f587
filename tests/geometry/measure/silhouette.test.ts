import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/geometry';
import { silhouetteOf, type Silhouette } from '../../../src/geometry/measure/silhouette';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { shadowByManifold } from '../../support/manifoldPlane';
import {
  asFloat32,
  damaged,
  joined,
  moved,
  reversed,
  trianglesOf,
  turned,
  withTriangles,
} from '../../support/meshTools';
import { mushroom, polygonArea, turnedVector } from '../../support/polygons';
import { sampleScan } from '../../support/samples';
import { box, icosphere, revolve, sphere, torus, type Vec3 } from '../../support/shapes';

/** The promise for shadows at 512 lines across. */
const BY_LINES = 5e-4;

const [X, Y, Z]: Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const along = (mesh: TriangleMesh, direction: Vec3): Silhouette => silhouetteOf(mesh, { direction });
const randomDirection = (random: () => number): Vec3 =>
  [0, 1, 2].map(() => between(random, -1, 1)) as unknown as Vec3;

function expectShadow(shadow: Silhouette, areaMm2: number, what = 'shadow'): void {
  expectClose(shadow.areaMm2, areaMm2, BY_LINES, what);
  expect(Math.abs(shadow.areaMm2 - areaMm2), what).toBeLessThanOrEqual(shadow.latticeErrorMm2);
}

describe('bodies whose shadow is known: the shadow of the facets themselves', () => {
  const sides = 128;
  const ring = torus(40, 10, sides, 128);
  const cap = revolve(mushroom, sides);
  it.each<[string, TriangleMesh, Vec3, number, number]>([
    ['ball of radius 50 along its axis', sphere(50, 64), Z!, polygonArea(50, 128), 7853.98],
    ['torus along z: 4 pi R r', ring, Z!, polygonArea(50, sides) - polygonArea(30, sides), 5026.55],
    ['torus along x: two half circles and 80 x 20 mm', ring, X!, 1600 + polygonArea(10, 128), 1914.16],
    ['mushroom along z: its cap', cap, Z!, polygonArea(30, sides), 2827.43],
    ['mushroom along x: 20 x 40 and 60 x 10 mm', cap, X!, 1400, 1400],
    ['mushroom along y', cap, Y!, 1400, 1400],
  ])('%s', (_, mesh, direction, facets, round) => {
    const shadow = along(mesh, direction);
    expectShadow(shadow, facets);
    // Facets of 2 pi / 128: (2 pi / 128)^2 / 6 = 4.0e-4 below the round body.
    expectClose(shadow.areaMm2, round, 4.1e-4 + BY_LINES, 'round');
  });

  const convex: [string, TriangleMesh][] = [
    ['box', box([40, 30, 20])],
    ['plate of 1 mm', box([300, 200, 1])],
    ['rod of 1 x 1 x 200', box([1, 1, 200])],
    ['ball', icosphere(50, 3)],
    [
      'cone',
      revolve(
        [
          [0, 0],
          [30, 0],
          [0, 80],
        ],
        40,
      ),
    ],
  ];
  it.each(convex)(
    '%s along forty directions, seed 9: half the sum of its facets seen edgewise (Cauchy 1841)',
    (_, mesh) => {
      const random = lcg(9);
      for (let i = 0; i < 40; i++) {
        const direction = randomDirection(random);
        expectShadow(along(mesh, direction), shadowOfConvex(mesh, direction), direction.join(' '));
      }
    },
  );
});

/** Every line through a convex body passes two facets: its shadow is half the sum of theirs. */
function shadowOfConvex(mesh: TriangleMesh, direction: Vec3): number {
  const p = mesh.positions;
  let sum = 0;
  for (const [a, b, c] of trianglesOf(mesh)) {
    const [e, f] = [b, c].map((v) => [0, 1, 2].map((k) => p[3 * v + k]! - p[3 * a + k]!)) as [
      number[],
      number[],
    ];
    const normal = [
      e[1]! * f[2]! - e[2]! * f[1]!,
      e[2]! * f[0]! - e[0]! * f[2]!,
      e[0]! * f[1]! - e[1]! * f[0]!,
    ];
    sum += Math.abs(normal.reduce((dot, n, k) => dot + n * direction[k]!, 0)) / 2;
  }
  return sum / 2 / Math.hypot(...direction);
}

describe('against the projection of Manifold, along its z', () => {
  it('a torus, a mushroom and both at once, turned, six times, seed 14', () => {
    const random = lcg(14);
    for (let i = 0; i < 6; i++) {
      const turn = [0, 1, 2, 3].map(() => between(random, -1, 1)) as [number, number, number, number];
      const ring = asFloat32(turned(torus(40, 10, 64, 32), turn));
      const cap = asFloat32(moved(revolve(mushroom, 64), [between(random, -60, 60), 0, 0]));
      expectShadow(along(ring, Z!), shadowByManifold(ring).area, `ring ${i}`);
      expectShadow(along(joined(ring, cap), Z!), shadowByManifold(ring, cap).area, `both ${i}`);
    }
  });

  it('a sculpt', () => {
    const { mesh } = sampleScan('quay-troll-clean.stl');
    expectShadow(along(mesh, Z!), shadowByManifold(mesh).area, 'z');
  });
});

describe('laws of a shadow', () => {
  const ring = torus(40, 10, 64, 32);
  const still = along(ring, X!);

  it('it is the same from the other side, at any length of the direction, inside out, and for three copies', () => {
    expectClose(along(ring, [-1, 0, 0]).areaMm2, still.areaMm2, 1e-5);
    expectClose(along(ring, [25, 0, 0]).areaMm2, still.areaMm2, 1e-12);
    expect(along(reversed(ring), X!).areaMm2).toBe(still.areaMm2);
    expectClose(along(joined(ring, ring, ring), X!).areaMm2, still.areaMm2, 1e-12);
  });

  it('a body behind another casts none of its own', () => {
    const pair = joined(sphere(50, 48), moved(sphere(20, 24), [3, 5, 200]));
    expectClose(along(pair, Z!).areaMm2, along(sphere(50, 48), Z!).areaMm2, 1e-12);
    expectShadow(along(joined(box([10, 20, 5]), box([10, 20, 5], [6, 5, 90])), Z!), 2 * 200 - 4 * 15);
  });

  it('turned with its direction and moved it keeps its shadow, seed 44', () => {
    const random = lcg(44);
    for (let i = 0; i < 10; i++) {
      const turn = [0, 1, 2, 3].map(() => between(random, -1, 1)) as [number, number, number, number];
      const shadow = along(moved(turned(ring, turn), [900, -50, 3]), turnedVector(X!, turn));
      expectShadow(shadow, 1600 + polygonArea(10, 32), turn.join(' '));
    }
  });

  it('triangles need no order: the top of a box alone, or a ball whose facets are turned over at random', () => {
    const cube = box([40, 30, 20]);
    expectShadow(along(withTriangles(cube, trianglesOf(cube).slice(2, 4)), Z!), 1200);
    const ball = icosphere(50, 3);
    expect(along(damaged(ball, 'flipped', 0.3, lcg(2)), Z!).areaMm2).toBe(along(ball, Z!).areaMm2);
  });

  it('twice the lines, less doubt', () => {
    const [few, many] = [128, 2048].map((lines) => silhouetteOf(sphere(50, 64), { direction: Z!, lines }));
    expect(many!.latticeErrorMm2).toBeLessThan(few!.latticeErrorMm2);
    expectClose(many!.areaMm2, polygonArea(50, 128), 2e-5);
    expectClose(few!.spacingMm / many!.spacingMm, 16, 1e-12);
  });

  it('a sheet edge on, and no triangles at all, cast none', () => {
    const cube = box([40, 30, 20]);
    expect(along(withTriangles(cube, trianglesOf(cube).slice(2, 4)), X!).areaMm2).toBeLessThan(1e-9);
    expect(along(withTriangles(cube, []), X!)).toMatchObject({ areaMm2: 0, latticeErrorMm2: 0 });
    expect(() => along(cube, [0, 0, Number.NaN])).toThrow('finite length above 0');
  });

  it('1500 copies of a box after a ring: over four million stretches are merged on the way, to the same shadow', () => {
    const cube = box([40, 30, 20], [60, 0, 0]);
    const [first, copies] = [trianglesOf(ring).length, 1500];
    const both = joined(ring, cube);
    const triples = trianglesOf(both);
    const boxes = Array.from({ length: copies }, () => triples.slice(first)).flat();
    const many = withTriangles(both, [...triples.slice(0, first), ...boxes]);
    // A box of 40 mm in a shadow of about 150 mm: fewer lines would not fill the arrays.
    const how = { direction: [1, 2, 3], lines: 2048 } as const;
    expect(silhouetteOf(many, how)).toEqual(silhouetteOf(both, how));
  });
});
