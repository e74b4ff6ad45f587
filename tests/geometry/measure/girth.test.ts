import { describe, expect, it } from 'vitest';
import { girthOf } from '../../../src/geometry/measure/girth';
import { sectionOf, type Plane } from '../../../src/geometry/measure/section';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { sliceByManifold } from '../../support/manifoldPlane';
import { joined, moved, reversed, turned } from '../../support/meshTools';
import { polygonPerimeter, turnedVector } from '../../support/polygons';
import { sampleScan } from '../../support/samples';
import { box, revolve, sphere, torus, type OutlinePoint } from '../../support/shapes';

const EXACT = 1e-11;
const level = (z: number): Plane => ({ point: [0, 0, z], normal: [0, 0, 1] });
const across: Plane = { point: [0, 0, 0], normal: [1, 0, 0] };

describe('girth of a section', () => {
  it('a ball of radius 50: 2 pi r of the round one, and its polygon exactly', () => {
    const { girthMm, hull } = girthOf(sectionOf(sphere(50, 128), level(0)));
    expectClose(girthMm, polygonPerimeter(50, 256), EXACT, 'polygon');
    // Facets of 2 pi / 256: (2 pi / 256)^2 / 24 = 2.5e-5 below the circle.
    expectClose(girthMm, 2 * Math.PI * 50, 2.6e-5, 'circle');
    expect(hull).toHaveLength(3 * 256);
  });

  it('a torus level: the tape runs outside, whatever the hole', () => {
    expectClose(girthOf(sectionOf(torus(40, 10, 96, 48), level(0))).girthMm, polygonPerimeter(50, 96), EXACT);
  });

  it('a torus upright is two circles: the tape goes round both, or round one', () => {
    const section = sectionOf(torus(40, 10, 96, 48), across);
    const one = polygonPerimeter(10, 48);
    expect(section.outlines).toHaveLength(2);
    expectClose(
      girthOf(section).girthMm,
      one + 2 * 80,
      EXACT,
      'both: half a circle at each end and 80 mm between',
    );
    expectClose(girthOf(section, 'longest').girthMm, one, EXACT, 'longest');
    for (const y of [33, -33]) {
      const { girthMm, hull } = girthOf(section, { nearest: [5, y, 1] });
      expectClose(girthMm, one, EXACT, `nearest to y ${y}`);
      for (let i = 1; i < hull.length; i += 3) expect(Math.sign(hull[i]!)).toBe(Math.sign(y));
    }
  });

  it('an arm and a leg: the longest outline is the leg', () => {
    const section = sectionOf(joined(box([10, 10, 40]), box([30, 20, 40], [50, 0, 0])), level(9));
    expectClose(girthOf(section, 'longest').girthMm, 100, EXACT, 'leg 30 x 20');
    expectClose(girthOf(section, { nearest: [0, 0, 0] }).girthMm, 40, EXACT, 'arm 10 x 10');
    // 80 along both, 20 up the leg, 30 back over it, down to the arm's near corner at (0, 10), 10 down its side.
    expectClose(girthOf(section).girthMm, 80 + 20 + 30 + (10 + Math.hypot(50, 10)), EXACT, 'both');
  });

  it('nearest is told by the sides, not by the corners', () => {
    const section = sectionOf(joined(box([300, 20, 40]), box([10, 10, 40], [145, 50, 0])), level(9));
    expectClose(
      girthOf(section, { nearest: [150, 30, 9] }).girthMm,
      640,
      EXACT,
      '10 mm from the middle of 300 x 20',
    );
    expectClose(girthOf(section, { nearest: [150, 40, 9] }).girthMm, 40, EXACT, '10 mm from 10 x 10');
  });

  it.each<[string, [number, number, number], number, number]>([
    // Two bars of 60 x 20: along x, and along y from the same corner, or through the middle.
    ['L', [0, 0, 0], 160 + 40 * Math.SQRT2, 240],
    ['cross', [20, -20, 0], 80 + 80 * Math.SQRT2, 240],
  ])('the hollows of an %s are bridged', (_, at, girth, perimeter) => {
    const section = sectionOf(joined(box([60, 20, 30]), box([20, 60, 30], at)), level(11));
    expectClose(girthOf(section).girthMm, girth, EXACT, 'girth');
    expectClose(section.perimeterMm, perimeter, EXACT, 'along the outline');
  });

  it('a bulb of radius 40 on a neck of 15 and a mouth of 30: 251.33, 94.25 and 188.50 mm, by 2 pi r', () => {
    const bulb: OutlinePoint[] = [
      [0, 0],
      [30, 0],
      [15, 20],
      [40, 60],
      [0, 100],
    ];
    const solid = revolve(bulb, 512);
    for (const [z, mm] of [
      [60, 251.327],
      [20, 94.248],
      [1e-3, 188.496],
    ] as const)
      expectClose(girthOf(sectionOf(solid, level(z))).girthMm, mm, 5e-5, `at ${z}`);
  });

  it('a void does not count, a plane that misses has no girth', () => {
    const hollow = joined(sphere(50, 48), reversed(sphere(44, 48)));
    expectClose(girthOf(sectionOf(hollow, level(0))).girthMm, polygonPerimeter(50, 96), EXACT);
    for (const taped of ['all', 'longest', { nearest: [0, 0, 0] }] as const)
      expect(girthOf(sectionOf(hollow, level(60)), taped)).toEqual({ girthMm: 0, hull: new Float64Array(0) });
  });
});

describe('a sculpt', () => {
  const { mesh } = sampleScan('quay-troll-clean.stl');

  it('level girths against slice and hull of Manifold', () => {
    for (const z of [12.3, 55.1, 101.7, 150.2])
      expectClose(
        girthOf(sectionOf(mesh, level(z))).girthMm,
        sliceByManifold([mesh], z).girth,
        1e-6,
        `z ${z}`,
      );
  });

  it('no point of the section lies outside the hull, and the hull turns left throughout', () => {
    const section = sectionOf(mesh, level(80));
    const { hull } = girthOf(section);
    expect(hull.length).toBeGreaterThan(3 * 10);
    let deepest = Infinity;
    for (let i = 0; i < hull.length; i += 3) {
      const j = (i + 3) % hull.length;
      const [ux, uy] = [hull[j]! - hull[i]!, hull[j + 1]! - hull[i + 1]!];
      for (const outline of [...section.outlines, hull])
        for (let k = 0; k < outline.length; k += 3)
          deepest = Math.min(deepest, ux * (outline[k + 1]! - hull[i + 1]!) - uy * (outline[k]! - hull[i]!));
    }
    expect(deepest).toBeGreaterThan(-1e-9);
  });

  it('turned and moved with its plane it has the same girth, seed 21', () => {
    const random = lcg(21);
    const still = girthOf(sectionOf(mesh, level(80))).girthMm;
    for (let i = 0; i < 3; i++) {
      const turn = [0, 1, 2, 3].map(() => between(random, -1, 1)) as [number, number, number, number];
      const at = turnedVector([0, 0, 80], turn);
      const plane: Plane = { point: [at[0] + 500, at[1], at[2]], normal: turnedVector([0, 0, 1], turn) };
      expectClose(girthOf(sectionOf(moved(turned(mesh, turn), [500, 0, 0]), plane)).girthMm, still, 1e-9);
    }
  });
});
