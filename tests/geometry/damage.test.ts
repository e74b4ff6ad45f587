import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../src/geometry';
import { sizeScan } from '../../src/plan';
import { expectClose } from '../support/close';
import { lcg } from '../support/lcg';
import { halfWidth, measured, outcomeOf } from '../support/measured';
import { damaged, joined, moved, reversed, scaled, trianglesOf, withTriangles } from '../support/meshTools';
import { valueOf } from '../support/outcome';
import {
  box,
  icosphere,
  revolvedVolume,
  sphere,
  sphereOutline,
  torus,
  torusOutline,
} from '../support/shapes';

const SEED = 5;
const SEEDS = [5, 6, 7];

/** The promise for broken scans. */
const PROMISED = 5e-4;

const findingsOf = (mesh: TriangleMesh): string[] =>
  valueOf(
    sizeScan(
      { mesh, format: 'stl', trianglesRead: mesh.triangles.length / 3, coordinateStep: 0, findings: [] },
      { fileUnit: 'mm' },
    ),
  ).findings.map((f) => f.code);

const SHAPES = [
  { name: 'ball', mesh: sphere(50, 71, 142), truth: revolvedVolume(sphereOutline(50, 71), 142) },
  { name: 'torus', mesh: torus(60, 20, 142, 71), truth: revolvedVolume(torusOutline(60, 20, 71), 142, true) },
];

describe.each(SHAPES)(
  'a $name of 20 000 triangles, broken, keeps the volume of the whole one (frusta of polygons)',
  ({ mesh, truth }) => {
    it.each(['deleted', 'flipped', 'doubled', 'all three'] as const)(
      `5 %% %s, seeds ${SEEDS.join(', ')}: to 0.05 %%, inside the range`,
      (how) => {
        for (const seed of SEEDS) {
          const broken = damaged(mesh, how, 0.05, lcg(seed));
          const solid = measured(broken);
          expectClose(solid.volumeMm3, truth, PROMISED, `volume, seed ${seed}`);
          expect(Math.abs(solid.volumeMm3 - truth), `seed ${seed}`).toBeLessThanOrEqual(
            halfWidth(solid) + 1e-9 * truth,
          );
          const expected = {
            deleted: 'NOT_CLOSED',
            flipped: 'NOT_ORIENTED',
            doubled: 'DUPLICATE_FACES',
            'all three': 'NOT_CLOSED',
          }[how];
          expect(findingsOf(broken)).toContain(expected);
        }
      },
    );

    it('flipped or doubled: nothing is lost, so the volume is exact', () => {
      for (const how of ['flipped', 'doubled'] as const) {
        expectClose(measured(damaged(mesh, how, 0.05, lcg(SEED))).volumeMm3, truth, 1e-11, how);
      }
    });

    it(`20 and 40 % deleted, seed ${SEED}: the truth stays inside the range, or there is no volume`, () => {
      for (const share of [0.2, 0.4]) {
        const outcome = outcomeOf(damaged(mesh, 'deleted', share, lcg(SEED)));
        if (!outcome.ok) expect(outcome.problem.code).toBe('NOT_CLOSED');
        else
          expect(Math.abs(outcome.value.volumeMm3 - truth), `${share}`).toBeLessThanOrEqual(
            halfWidth(outcome.value),
          );
      }
    });

    it('all of it inside out: the volume is positive and INSIDE_OUT says so', () => {
      expectClose(measured(reversed(mesh)).volumeMm3, truth, 1e-11, 'volume');
      expect(findingsOf(reversed(mesh))).toContain('INSIDE_OUT');
    });

    it(`every triangle wound by a coin, seed ${SEED}`, () => {
      const random = lcg(SEED);
      const mixed = withTriangles(
        mesh,
        trianglesOf(mesh).map(([a, b, c]) => (random() < 0.5 ? [a, b, c] : [a, c, b])),
      );
      expectClose(measured(mixed).volumeMm3, truth, 1e-11, 'volume');
    });
  },
);

describe('flaps that hang on by a corner', () => {
  // The closing cone of a hole with a flap in it runs along the rim and the flap in one loop: only together are they closed.
  const ball = icosphere(50, 3);
  const triples = trianglesOf(ball);
  const shared = (a: readonly number[], b: readonly number[]): number =>
    a.filter((v) => b.includes(v)).length;

  it.each([7, 100, 320, 500, 901])(
    'triangle %i of a ball loses its three neighbors: the volume stays within 0.01 %% (a hole of 4 facets of 1 280)',
    (pick) => {
      const kept = triples.filter((t) => shared(t, triples[pick]!) !== 2);
      expect(kept.length).toBe(triples.length - 3);
      expectClose(measured(withTriangles(ball, kept)).volumeMm3, measured(ball).volumeMm3, 1e-4, 'volume');
    },
  );

  it.each([7, 100, 320, 500, 901])(
    'triangle %i and one neighbor lose the four round them: within 0.02 %% (a hole of 6 facets), and the flap encloses nothing',
    (pick) => {
      const flap = [triples[pick]!, triples.find((t) => shared(t, triples[pick]!) === 2)!];
      const kept = triples.filter((t) => flap.includes(t) || flap.every((one) => shared(t, one) !== 2));
      expect(kept.length).toBe(triples.length - 4);
      const solid = measured(withTriangles(ball, kept));
      expectClose(solid.volumeMm3, measured(ball).volumeMm3, 2e-4, 'volume');
      // Two facets and the cone over their rim: at most their area times the bulge of the ball there, 5 mm edges.
      expect(Math.abs(solid.byRole.island.volumeMm3)).toBeLessThan(10);
    },
  );

  it('moving the whole scan does not change what is left out, whatever hangs on by a corner', () => {
    const broken = damaged(icosphere(50, 4), 'deleted', 0.1, lcg(SEED));
    const [here, there] = [
      measured(broken),
      measured(joined(broken, moved(scaled(box([1, 1, 1]), 50), [300, 200, 100]))),
    ];
    expectClose(
      there.volumeMm3 - 50 ** 3,
      here.volumeMm3,
      1e-9,
      'a far cube moves the origin of the sums, and adds its own volume',
    );
  });
});

describe('specks and seams', () => {
  const BALL = revolvedVolume(sphereOutline(50, 71), 142);
  const ball = sphere(50, 71, 142);

  it('specks in the air are left out of the volume, counted, and covered by the range', () => {
    const speck = box([2, 2, 2]);
    const scan = joined(
      ball,
      ...[
        [60, 0, 0],
        [0, 62, 0],
        [0, 0, 66],
        [-58, 3, 9],
        [40, 40, 40],
      ].map((at) => moved(speck, at as [number, number, number])),
    );
    const solid = measured(scan);
    expect(solid.byRole.island.count).toBe(5);
    expectClose(solid.volumeMm3, BALL, 1e-11, 'volume without the specks');
    expectClose(solid.doubt.islandsMm3, 40, 1e-11, 'five cubes of 2 mm');
    expect(solid.extentsMm[2]).toBeLessThan(100.001);
  });

  it('two separate pieces of like size both count', () => {
    const solid = measured(joined(ball, moved(scaled(ball, 0.5), [120, 0, 0])));
    expectClose(solid.volumeMm3, BALL * (1 + 1 / 8), 1e-11, 'sum of two balls');
    expect(solid).toMatchObject({ pieces: 2, method: 'exact' });
  });

  it("a T-junction seam (a corner in the middle of a neighbor's edge) has no width: the box is exact", () => {
    const whole = box([40, 30, 20]);
    const p = [...whole.positions, 0, 0, 10];
    // The edge from corner 0 to corner 4 is split on one side only.
    const triples = trianglesOf(whole);
    const at = triples.findIndex((t) => t.includes(0) && t.includes(4));
    const [a, b, c] = triples[at]!;
    const turn = [
      [a, b, c],
      [b, c, a],
      [c, a, b],
    ].find(([x, y]) => (x === 0 && y === 4) || (x === 4 && y === 0))! as [number, number, number];
    triples.splice(at, 1, [turn[0], 8, turn[2]], [8, turn[1], turn[2]]);
    const solid = measured({ positions: Float64Array.from(p), triangles: Int32Array.from(triples.flat()) });
    expectClose(solid.volumeMm3, 24000, 1e-12, '40 x 30 x 20');
    expect(solid.doubt.capsMm3).toBe(0);
  });

  it('a seam all along: two parts of a ball that share no vertex close each other, and the ball is whole', () => {
    const lower = trianglesOf(ball).filter((t) => t.some((v) => ball.positions[3 * v + 2]! < -1.2));
    const upper = trianglesOf(ball).filter((t) => !t.some((v) => ball.positions[3 * v + 2]! < -1.2));
    const twice = joined(withTriangles(ball, lower), withTriangles(ball, upper));
    const solid = measured(twice);
    expect(solid.pieces).toBe(2);
    expectClose(solid.volumeMm3, BALL, 1e-11, 'caps of both sides are the same cone, once in and once out');
  });
});
