import { describe, expect, it } from 'vitest';
import { placeMesh, UP_AXES, type TriangleMesh } from '../../src/geometry';
import { expectClose } from '../support/close';
import { between, lcg } from '../support/lcg';
import { halfWidth, measured } from '../support/measured';
import {
  damaged,
  joined,
  mapPoints,
  moved,
  reversed,
  scaled,
  trianglesOf,
  turned,
  withTriangles,
  type Triple,
} from '../support/meshTools';
import { sampleScan } from '../support/samples';
import { box, capsuleOutline, flaredHead, icosphere, revolve, sphere, torus } from '../support/shapes';

const SEED = 2024;

/** Sums of doubles in another order, after a turn by doubles. */
const SAME = 1e-9;

const shuffled = <T>(list: readonly T[], random: () => number): T[] => {
  const copy = [...list];
  for (let i = copy.length - 1; i > 0; i--) {
    const j = Math.floor(between(random, 0, i + 1));
    [copy[i], copy[j]] = [copy[j]!, copy[i]!];
  }
  return copy;
};

/** The same surface with its vertices numbered in another order. */
function renumbered(mesh: TriangleMesh, random: () => number): TriangleMesh {
  const order = shuffled(
    Array.from({ length: mesh.positions.length / 3 }, (_, i) => i),
    random,
  );
  const place = new Int32Array(order.length);
  order.forEach((old, now) => (place[old] = now));
  return {
    positions: Float64Array.from(order.flatMap((old) => [...mesh.positions.subarray(3 * old, 3 * old + 3)])),
    triangles: mesh.triangles.map((v) => place[v]!),
  };
}

const CLEAN: [string, TriangleMesh][] = [
  ['box', box([40, 30, 20])],
  ['ball', icosphere(50, 3)],
  ['torus', torus(50, 12, 48, 24)],
  ['capsule', revolve(capsuleOutline(20, 60, 24), 48)],
  ['hollow ball', joined(sphere(50, 24), reversed(sphere(44, 24)))],
  ['two balls apart', joined(sphere(50, 24), moved(sphere(20, 24), [90, 0, 0]))],
];
const OPEN: [string, TriangleMesh][] = [
  ['open neck', revolve(flaredHead, 64)],
  ['troll scan', sampleScan('quay-troll-scan.stl').mesh],
];

const randomTurn = (random: () => number): [number, number, number, number] =>
  [0, 1, 2, 3].map(() => between(random, -1, 1)) as [number, number, number, number];

describe.each([...CLEAN, ...OPEN])(`laws of a volume, seed ${SEED}: %s`, (name, mesh) => {
  const base = measured(mesh);

  it('scaling by k makes volume and doubt k3, area k2, extents k', () => {
    for (const k of [0.1, 25.4, 1000 / 3]) {
      const solid = measured(scaled(mesh, k));
      expectClose(solid.volumeMm3, k ** 3 * base.volumeMm3, SAME, `volume at ${k}`);
      expectClose(solid.areaMm2, k ** 2 * base.areaMm2, SAME, `area at ${k}`);
      expectClose(solid.doubt.capsMm3, k ** 3 * base.doubt.capsMm3, SAME, `doubt at ${k}`);
      expectClose(solid.extentsMm[2], k * base.extentsMm[2], SAME, `height at ${k}`);
    }
  });

  it('moving and turning it changes nothing', () => {
    const random = lcg(SEED);
    for (let i = 0; i < 4; i++) {
      const by = [0, 1, 2].map(() => between(random, -500, 500)) as [number, number, number];
      const q = randomTurn(random);
      const solid = measured(moved(turned(mesh, q), by));
      expectClose(solid.volumeMm3, base.volumeMm3, SAME, `volume, turn ${q.join(' ')}`);
      expectClose(solid.areaMm2, base.areaMm2, SAME, 'area');
      // A rim's doubt is found in its own plane, so it turns with it.
      expectClose(solid.doubt.capsMm3, base.doubt.capsMm3, 1e-6, 'doubt');
      expect(solid.pieces).toBe(base.pieces);
    }
  });

  it('a mirror image has the same volume, once its facets are turned', () => {
    expectClose(
      measured(reversed(mapPoints(mesh, ([x, y, z]) => [-x, y, z]))).volumeMm3,
      base.volumeMm3,
      SAME,
    );
  });

  it('the order of facets, of their corners and of the vertices does not matter', () => {
    const random = lcg(SEED + 1);
    const rotate = ([a, b, c]: Triple): Triple =>
      [
        [a, b, c],
        [b, c, a],
        [c, a, b],
      ][Math.floor(between(random, 0, 3))] as Triple;
    const mixed = renumbered(withTriangles(mesh, shuffled(trianglesOf(mesh), random).map(rotate)), random);
    const solid = measured(mixed);
    expectClose(solid.volumeMm3, base.volumeMm3, SAME, 'volume');
    expect(solid.rims.length).toBe(base.rims.length);
  });

  it('a third of the facets turned over, at random, does not matter', () => {
    const random = lcg(SEED + 2);
    const mixed = withTriangles(
      mesh,
      trianglesOf(mesh).map(([a, b, c]) => (random() < 1 / 3 ? [a, c, b] : [a, b, c])),
    );
    expectClose(measured(mixed).volumeMm3, base.volumeMm3, SAME, name);
  });

  it('the input is not changed', () => {
    const before = { positions: mesh.positions.slice(), triangles: mesh.triangles.slice() };
    measured(mesh);
    expect(mesh).toEqual(before);
  });
});

it(`a damaged ball, 5 % of each kind, turned: the caps are the same cones, seed ${SEED}`, () => {
  const broken = damaged(icosphere(50, 4), 'all three', 0.05, lcg(SEED));
  const base = measured(broken);
  const random = lcg(SEED + 3);
  for (let i = 0; i < 4; i++) {
    const solid = measured(turned(broken, randomTurn(random)));
    // Same loops, same cones: only the origin of the sums turns.
    expectClose(solid.volumeMm3, base.volumeMm3, SAME, `turn ${i}`);
  }
});

it('shells that overlap, turned: within the range, since they are measured along lines that do not turn with them', () => {
  const both = joined(sphere(40, 36), moved(sphere(40, 36), [50, 0, 0]));
  const base = measured(both);
  const random = lcg(SEED + 4);
  for (let i = 0; i < 4; i++) {
    const solid = measured(turned(both, randomTurn(random)));
    expect(Math.abs(solid.volumeMm3 - base.volumeMm3)).toBeLessThanOrEqual(
      halfWidth(solid) + halfWidth(base),
    );
  }
});

describe('which way is up is a turn, not a mirror', () => {
  it.each(UP_AXES)('%s: the volume stays, and the axis named ends up as z', (up) => {
    const wedge = box([10, 20, 40], [3, 5, 7]);
    const placed = placeMesh(wedge, { up, mmPerUnit: 2 });
    const solid = measured(placed);
    expectClose(solid.volumeMm3, 8 * 8000, 1e-12);
    expect(solid.turnedPieces.count).toBe(0);
    const axis = 'xyz'.indexOf(up[1]!);
    expectClose(solid.extentsMm[2], 2 * [10, 20, 40][axis]!, 1e-12);
    const near = 2 * [3, 5, 7][axis]!;
    const far = near + solid.extentsMm[2];
    expectClose(solid.bounds.min[2], up.startsWith('+') ? near : -far, 1e-12, 'lowest point');
  });
});
