import { describe, expect, it } from 'vitest';
import { boundsOf, type TriangleMesh } from '../../../src/geometry';
import { cellCount, gridAround, octantGrid, type Grid } from '../../../src/geometry/field/grid';
import { leaveCrossings, sumRows } from '../../../src/geometry/field/winding';
import { between, lcg } from '../../support/lcg';
import { joined, moved, reversed, withTriangles, trianglesOf } from '../../support/meshTools';
import { box, icosphere, sphere, torus, type Vec3 } from '../../support/shapes';

const SEED = 5;

interface Wound {
  grid: Grid;
  winding: Int16Array;
  leaks: number;
}

/** Winding numbers on a grid of 2 mm; in `parts` runs over the triangles, as threads would. */
function wind(mesh: TriangleMesh, parts = 1, given?: Grid): Wound {
  const grid = given ?? gridAround(boundsOf(mesh), { spacingMm: 2, marginMm: 4 });
  const deltas = Array.from({ length: parts }, () => new Int16Array(cellCount(grid)));
  const count = mesh.triangles.length / 3;
  deltas.forEach((delta, i) =>
    leaveCrossings(grid, Float32Array.from(mesh.positions), mesh.triangles, delta, [
      Math.floor((count * i) / parts),
      Math.floor((count * (i + 1)) / parts),
    ]),
  );
  const leaks = sumRows(grid, deltas, [0, grid.ny * grid.nz]);
  return { grid, winding: deltas[0]!, leaks };
}

const pointOf = (grid: Grid, v: number): Vec3 => [
  grid.ox + (v % grid.nx) * grid.spacingMm,
  grid.oy + (Math.floor(v / grid.nx) % grid.ny) * grid.spacingMm,
  grid.oz + Math.floor(v / (grid.nx * grid.ny)) * grid.spacingMm,
];

/**
 * Signed solid angle of every triangle over 4 pi, by tan(angle / 2) = triple product / (...) (van Oosterom and Strackee 1983, IEEE
 * Trans. Biomed. Eng. 30:125), on the coordinates in single precision.
 */
function windingByAngles({ positions, triangles }: TriangleMesh, at: Vec3): number {
  const toward = (v: number): number[] => at.map((x, k) => Math.fround(positions[3 * v + k]!) - x);
  const dot = (u: number[], w: number[]): number => u.reduce((sum, x, k) => sum + x * w[k]!, 0);
  let sum = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [toward(triangles[t]!), toward(triangles[t + 1]!), toward(triangles[t + 2]!)];
    const [la, lb, lc] = [Math.hypot(...a), Math.hypot(...b), Math.hypot(...c)];
    const bc = [b[1]! * c[2]! - b[2]! * c[1]!, b[2]! * c[0]! - b[0]! * c[2]!, b[0]! * c[1]! - b[1]! * c[0]!];
    sum += 2 * Math.atan2(dot(a, bc), la * lb * lc + dot(a, b) * lc + dot(b, c) * la + dot(c, a) * lb);
  }
  return sum / (4 * Math.PI);
}

const noisy = (mesh: TriangleMesh, mm: number, random: () => number): TriangleMesh => ({
  positions: mesh.positions.map((x) => x + between(random, -mm, mm)),
  triangles: mesh.triangles,
});

const BALL = icosphere(20, 3);
const SOLIDS: [string, TriangleMesh][] = [
  ['ball', BALL],
  ['torus', torus(20, 7, 40, 20)],
  ['two balls that overlap', joined(BALL, moved(BALL, [19, 3, 1]))],
  ['inside-out ball', reversed(BALL)],
  ['hollow ball', joined(BALL, reversed(icosphere(12, 3)))],
  ['ball turned through itself by noise', noisy(icosphere(20, 3), 2.5, lcg(SEED))],
];

describe.each(SOLIDS)(`whole winding numbers: %s, seed ${SEED}`, (_name, mesh) => {
  const { grid, winding, leaks } = wind(mesh);

  it('equal the solid angles at grid points drawn at random', () => {
    const random = lcg(SEED);
    const seen = new Set<number>();
    for (let i = 0; i < 300; i++) {
      const v = Math.floor(between(random, 0, cellCount(grid)));
      const angles = windingByAngles(mesh, pointOf(grid, v));
      expect(Math.abs(angles - winding[v]!), `at ${pointOf(grid, v).join(' ')}`).toBeLessThan(1e-6);
      seen.add(winding[v]!);
    }
    expect(seen.size).toBeGreaterThan(1);
  });

  it('every row ends at zero', () => expect(leaks).toBe(0));

  it('three threads leave what one does', () => expect(wind(mesh, 3)).toEqual({ grid, winding, leaks }));
});

it('two balls that overlap: 2 in their lens; inside out: -1 (by radius)', () => {
  const both = wind(joined(BALL, moved(BALL, [20, 0, 0])));
  const out = wind(reversed(BALL));
  // Between the ball that touches the facets from inside and the one through the corners nothing is said.
  const [inner, outer] = [20 * 0.98, 20];
  const count = (p: Vec3): number | undefined => {
    const away = [Math.hypot(...p), Math.hypot(p[0] - 20, p[1], p[2])];
    return away.some((r) => r > inner && r < outer) ? undefined : away.filter((r) => r <= inner).length;
  };
  let lens = 0;
  for (let v = 0; v < both.winding.length; v++) {
    const expected = count(pointOf(both.grid, v));
    if (expected === undefined) continue;
    if (expected === 2) lens++;
    if (both.winding[v] !== expected) expect.fail(`${pointOf(both.grid, v).join(' ')}: ${both.winding[v]}`);
  }
  expect(lens).toBeGreaterThan(500);
  for (let v = 0; v < out.winding.length; v++) {
    const r = Math.hypot(...pointOf(out.grid, v));
    if (r < inner || r > outer) expect(out.winding[v]).toBe(r < inner ? -1 : 0);
  }
});

it('300 nested boxes count to 300, and 300 boxes in one place (by the larger coordinate)', () => {
  const half = Array.from({ length: 300 }, (_, i) => 5 + 0.1 * i);
  const nested = wind(joined(...half.map((h) => box([2 * h, 2 * h, 2 * h], [-h, -h, -h]))));
  expect(nested.leaks).toBe(0);
  nested.winding.forEach((wound, v) => {
    const far = Math.max(...pointOf(nested.grid, v).map(Math.abs));
    expect(wound).toBe(half.filter((h) => h > far).length);
  });
  expect(Math.max(...nested.winding)).toBe(300);
  const heap = wind(joined(...half.map(() => box([20, 20, 20], [-10, -10, -10]))));
  expect([heap.leaks, ...new Set(heap.winding)].sort((a, b) => a - b)).toEqual([0, 0, 300]);
});

/** Sum of the surfaces of tetrahedra over common vertices, some taken off: the winding number counts them by sign. */
function chainOfTetrahedra(
  points: Vec3[],
  random: () => number,
): { mesh: TriangleMesh; count: (p: Vec3) => number } {
  const tetrahedra: { corners: [number, number, number, number]; sign: number }[] = [];
  while (tetrahedra.length < 40) {
    const corners = [0, 1, 2, 3].map(() => Math.floor(between(random, 0, points.length)));
    const [a, b, c, d] = corners as [number, number, number, number];
    const holds = triple(points[a]!, points[b]!, points[c]!, points[d]!);
    if (holds !== 0) tetrahedra.push({ corners: [a, b, c, d], sign: Math.sign(holds) });
  }
  const triangles = tetrahedra.flatMap(({ corners: [a, b, c, d] }) => [b, c, d, a, d, c, a, b, d, a, c, b]);
  const mesh = { positions: Float64Array.from(points.flat()), triangles: Int32Array.from(triangles) };
  const count = (p: Vec3): number =>
    tetrahedra.reduce((sum, { corners, sign }) => {
      const [a, b, c, d] = corners.map((v) => points[v]!) as [Vec3, Vec3, Vec3, Vec3];
      const shares = [triple(p, b, c, d), triple(a, p, c, d), triple(a, b, p, d), triple(a, b, c, p)];
      if (shares.some((s) => s === 0)) return NaN;
      return sum + (shares.every((s) => Math.sign(s) === sign) ? sign : 0);
    }, 0);
  return { mesh, count };
}

function triple(a: Vec3, b: Vec3, c: Vec3, d: Vec3): number {
  const [u, v, w] = [b, c, d].map((q) => q.map((x, k) => x - a[k]!)) as [number[], number[], number[]];
  return (
    u[0]! * (v[1]! * w[2]! - v[2]! * w[1]!) +
    u[1]! * (v[2]! * w[0]! - v[0]! * w[2]!) +
    u[2]! * (v[0]! * w[1]! - v[1]! * w[0]!)
  );
}

describe(`closed chains of 40 tetrahedra over common vertices, seeds from ${SEED}`, () => {
  const grid: Grid = { nx: 24, ny: 23, nz: 22, spacingMm: 1, ox: -2, oy: -2, oz: -2, firstPlane: 0 };
  const cases = ['anywhere', 'on grid points', 'on grid planes'] as const;

  it.each(cases)('vertices %s: no leak, and the count of tetrahedra around every point off them', (where) => {
    for (let seed = SEED; seed < SEED + 6; seed++) {
      const random = lcg(seed);
      const points = Array.from({ length: 14 }, (): Vec3 => {
        const p = [0, 1, 2].map(() => Math.fround(between(random, 0, 17)));
        if (where === 'on grid points') return p.map(Math.round) as unknown as Vec3;
        return (where === 'on grid planes' ? [p[0]!, p[1]!, Math.round(p[2]!)] : p) as unknown as Vec3;
      });
      const { mesh, count } = chainOfTetrahedra(points, random);
      const { winding, leaks } = wind(mesh, 1, grid);
      expect(leaks, `seed ${seed}`).toBe(0);
      for (let i = 0; i < 1500; i++) {
        const v = Math.floor(between(random, 0, cellCount(grid)));
        const expected = count(pointOf(grid, v));
        // On a face's own plane the side is a matter of rule, not of truth.
        if (!Number.isNaN(expected) && winding[v] !== expected)
          expect.fail(`seed ${seed} at ${pointOf(grid, v).join(' ')}: ${winding[v]}, expected ${expected}`);
      }
    }
  });
});

it('a missing triangle is told by rows that do not end at zero', () => {
  const ball = sphere(20, 12);
  expect(wind(withTriangles(ball, trianglesOf(ball).slice(1))).leaks).toBe(0);
  expect(wind(withTriangles(ball, trianglesOf(ball).slice(40))).leaks).toBeGreaterThan(0);
});

it('the octants lie a quarter of a step about their voxel', () => {
  const grid = gridAround(boundsOf(BALL), { spacingMm: 2, marginMm: 4 });
  const fine = octantGrid(grid);
  const v = (7 * grid.ny + 6) * grid.nx + 5;
  const first = pointOf(fine, (14 * fine.ny + 12) * fine.nx + 10);
  pointOf(grid, v).forEach((x, k) => expect(Math.abs(x - 0.5 - first[k]!)).toBeLessThan(1e-12));
});
