import { describe, expect, it } from 'vitest';
import {
  cutMesh,
  measureSolid,
  type CutPlane,
  type SolidMeasure,
  type TriangleMesh,
} from '../../src/geometry';
import { expectClose } from '../support/close';
import { halfWidth, measured } from '../support/measured';
import { joined, moved, reversed, trianglesOf, withTriangles } from '../support/meshTools';
import { valueOf } from '../support/outcome';
import { box, revolvedVolume, sphere, sphereOutline } from '../support/shapes';

function cutAndMeasured(mesh: TriangleMesh, ...cuts: CutPlane[]): SolidMeasure {
  const cut = cutMesh(mesh, cuts);
  return valueOf(measureSolid(cut.mesh, { coordinateStepMm: 0, isCutVertex: (v) => cut.onCut[v] === 1 }));
}
const above = (atMm: number): CutPlane => ({ axis: 2, atMm, keep: 'above' });
const below = (atMm: number): CutPlane => ({ axis: 2, atMm, keep: 'below' });

/** Float64 sums of some thousand terms. */
const EXACT = 1e-9;

describe('hollow pieces stay hollow', () => {
  const outer = sphere(50, 40);
  const inner = sphere(44, 36);
  const hollow = joined(outer, reversed(inner));

  it.each([-46, -20, 0, 13.37, 20, 40])(
    'a hollow ball cut at z = %d: outer less inner, each cut alone',
    (z) => {
      const wall = cutAndMeasured(outer, above(z)).volumeMm3 - cutAndMeasured(inner, above(z)).volumeMm3;
      const solid = cutAndMeasured(hollow, above(z));
      expectClose(solid.volumeMm3, wall, EXACT, 'wall');
      expect(solid.byRole.void.count).toBe(1);
      expect(solid.turnedPieces.count).toBe(0);
    },
  );

  it('a cup cut below its brim: 60 x 60 x 50 less 40 x 40 x 40', () => {
    const cup = joined(box([60, 60, 80]), reversed(box([40, 40, 80], [10, 10, 10])));
    expectClose(cutAndMeasured(cup, below(50)).volumeMm3, 180_000 - 64_000, EXACT, 'cup');
  });

  it('a pipe whose ends are both missing: 40 x 40 x 100 less 20 x 20 x 100', () => {
    const tube = (size: number, at: number): TriangleMesh => {
      const whole = box([size, size, 100], [at, at, 0]);
      const p = whole.positions;
      const isEnd = (t: readonly number[]): boolean => t.every((v) => p[3 * v + 2] === p[3 * t[0]! + 2]);
      return withTriangles(
        whole,
        trianglesOf(whole).filter((t) => !isEnd(t)),
      );
    };
    expectClose(measured(joined(tube(40, 0), reversed(tube(20, 10)))).volumeMm3, 120_000, EXACT, 'pipe');
  });

  it('a void that pokes 0.01 mm out of a face of 100 x 100 x 100, and one that shares it', () => {
    const solid = box([100, 100, 100]);
    const pokes = measured(joined(solid, reversed(box([30, 30, 20], [35, 35, 80.01]))));
    expect(Math.abs(pokes.volumeMm3 - (1e6 - 30 * 30 * 19.99))).toBeLessThanOrEqual(halfWidth(pokes));
    expectClose(
      measured(joined(solid, reversed(box([30, 30, 20], [35, 35, 80])))).volumeMm3,
      982_000,
      EXACT,
      'shared face',
    );
  });

  it('125 voids of 1 cm3 in one block are all taken off', () => {
    const voids = Array.from({ length: 125 }, (_, i) =>
      reversed(
        box([10, 10, 10], [5 + 18 * (i % 5), 5 + 18 * (Math.floor(i / 5) % 5), 5 + 18 * Math.floor(i / 25)]),
      ),
    );
    expectClose(measured(joined(box([95, 95, 95]), ...voids)).volumeMm3, 95 ** 3 - 125_000, EXACT, 'block');
  });
});

describe('lumps that meet at an edge of three or more facets', () => {
  /** Two boxes that share the vertices of one upright edge. */
  function edgeToEdge(second: (t: [number, number, number]) => [number, number, number]): TriangleMesh {
    const a = box([50, 50, 50]);
    const b = moved(box([30, 30, 50]), [50, 50, 0]);
    const both = joined(a, b);
    const at = (v: number): string => [0, 1, 2].map((k) => both.positions[3 * v + k]).join();
    const first = new Map<string, number>();
    for (let v = 0; v < both.positions.length / 3; v++) if (!first.has(at(v))) first.set(at(v), v);
    const triples = trianglesOf(both).map((t, i) => {
      const [x, y, z] = t.map((v) => first.get(at(v))!) as [number, number, number];
      return i < 12 ? ([x, y, z] as [number, number, number]) : second([x, y, z]);
    });
    return withTriangles(both, triples);
  }

  it('both count, whichever way the second faces: 125 + 45 cm3', () => {
    expectClose(measured(edgeToEdge((t) => t)).volumeMm3, 170_000, EXACT, 'both outward');
    expectClose(measured(edgeToEdge(([a, b, c]) => [a, c, b])).volumeMm3, 170_000, EXACT, 'one inward');
  });

  it('a box with a wall inside and one of its halves wound the other way is still one box', () => {
    const left = box([60, 100, 100]);
    const right = moved(box([40, 100, 100]), [60, 0, 0]);
    const both = joined(left, right);
    const at = (v: number): string => [0, 1, 2].map((k) => both.positions[3 * v + k]).join();
    const first = new Map<string, number>();
    for (let v = 0; v < both.positions.length / 3; v++) if (!first.has(at(v))) first.set(at(v), v);
    const onWall = (t: readonly number[]): boolean => t.every((v) => both.positions[3 * v] === 60);
    const triples = trianglesOf(both)
      .map((t, i) => ({ t: t.map((v) => first.get(at(v))!) as [number, number, number], isRight: i >= 12 }))
      // One copy of the wall; the right half turned over.
      .filter(({ t, isRight }) => !(isRight && onWall(t)))
      .map(({ t: [a, b, c], isRight }): [number, number, number] => (isRight ? [a, c, b] : [a, b, c]));
    const solid = measured(withTriangles(both, triples));
    expect(Math.abs(solid.volumeMm3 - 1e6)).toBeLessThanOrEqual(halfWidth(solid) + 1);
  });
});

describe('what is left out or missing stays inside the range', () => {
  it('specks that face either way are summed by what they hold', () => {
    const speck = (i: number): TriangleMesh => box([2, 2, 2], [70 + 4 * i, 0, 0]);
    const specks = Array.from({ length: 10 }, (_, i) => (i % 2 === 0 ? speck(i) : reversed(speck(i))));
    const solid = measured(joined(sphere(50, 40), ...specks));
    expect(solid.byRole.island.count).toBe(10);
    expectClose(solid.doubt.islandsMm3, 80, EXACT, 'ten specks of 8 mm3');
  });

  it.each([10, 20, 30, 40, 50])(
    'a ball without its cap of %d degrees: the ball is inside the range',
    (degrees) => {
      const ball = sphere(50, 90, 120);
      const limit = 50 * Math.cos((degrees * Math.PI) / 180);
      const isGone = (t: readonly number[]): boolean => t.every((v) => ball.positions[3 * v + 2]! > limit);
      const solid = measured(
        withTriangles(
          ball,
          trianglesOf(ball).filter((t) => !isGone(t)),
        ),
      );
      const whole = revolvedVolume(sphereOutline(50, 90), 120);
      expect(whole - solid.volumeMm3).toBeGreaterThan(0);
      expect(whole - solid.volumeMm3).toBeLessThanOrEqual(halfWidth(solid));
    },
  );
});
