import { describe, expect, it } from 'vitest';
import { sectionOf, type Plane, type Section } from '../../../src/geometry/measure/section';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { sliceByManifold } from '../../support/manifoldPlane';
import {
  asFloat32,
  joined,
  moved,
  reversed,
  turned,
  withTriangles,
  trianglesOf,
} from '../../support/meshTools';
import { polygonArea, polygonPerimeter, turnedVector } from '../../support/polygons';
import { sampleScan } from '../../support/samples';
import { box, revolve, sphere, torus, type Vec3 } from '../../support/shapes';

/** Sums of doubles: nothing else is left where the figure of the polygon itself is known. */
const EXACT = 1e-11;

const level = (z: number): Plane => ({ point: [3, -7, z], normal: [0, 0, 1] });
const randomTurn = (random: () => number): [number, number, number, number] =>
  [0, 1, 2, 3].map(() => between(random, -1, 1)) as [number, number, number, number];

/** Area by Newell's normal, against the plane's: positive for an outline that runs counter-clockwise seen from its tip. */
function areaSeenFrom(outline: Float64Array, normal: Vec3): number {
  let twice = 0;
  for (let i = 0; i < outline.length; i += 3) {
    const [a, b] = [outline.subarray(i), outline.subarray((i + 3) % outline.length)];
    twice += normal[0] * (a[1]! * b[2]! - a[2]! * b[1]!);
    twice += normal[1] * (a[2]! * b[0]! - a[0]! * b[2]!);
    twice += normal[2] * (a[0]! * b[1]! - a[1]! * b[0]!);
  }
  return twice / 2;
}

function expectSection(section: Section, areaMm2: number, perimeterMm: number, relative = EXACT): void {
  expectClose(section.areaMm2, areaMm2, relative, 'area');
  expectClose(section.perimeterMm, perimeterMm, relative, 'perimeter');
}

describe('sections of plain bodies', () => {
  it('a cube of 20 mm across its diagonal: a regular hexagon of side 20 / sqrt 2', () => {
    const side = 20 / Math.SQRT2;
    const section = sectionOf(box([20, 20, 20], [-10, -10, -10]), { point: [0, 0, 0], normal: [1, 1, 1] });
    expectSection(section, ((3 * Math.sqrt(3)) / 2) * side * side, 6 * side);
    expect(section.outlines).toHaveLength(1);
  });

  it('a square of 20 mm far off the axis, and the outline runs counter-clockwise seen from either tip', () => {
    const cube = box([20, 20, 50], [100, -300, 0]);
    for (const z of [1, -1]) {
      const section = sectionOf(cube, { point: [0, 0, 17], normal: [0, 0, 5 * z] });
      expectSection(section, 400, 80);
      expectClose(areaSeenFrom(section.outlines[0]!, [0, 0, z]), 400, EXACT);
      for (let i = 2; i < section.outlines[0]!.length; i += 3) expect(section.outlines[0]![i]).toBe(17);
    }
  });

  it('a torus cut level: a ring of polygons, counter-clockwise outside and clockwise inside', () => {
    // The widest and the narrowest circle of vertices lie on the plane.
    const section = sectionOf(torus(40, 10, 96, 48), level(0));
    expectSection(
      section,
      polygonArea(50, 96) - polygonArea(30, 96),
      polygonPerimeter(50, 96) + polygonPerimeter(30, 96),
    );
    const areas = section.outlines.map((outline) => areaSeenFrom(outline, [0, 0, 1])).sort((a, b) => a - b);
    expectClose(areas[0]!, -polygonArea(30, 96), EXACT, 'hole');
    expectClose(areas[1]!, polygonArea(50, 96), EXACT, 'rim');
  });

  it('a round bar of radius 15 cut at 55 degrees: an ellipse of 15 by 15 / cos 55', () => {
    const sides = 720;
    const bar = revolve(
      [
        [0, -200],
        [15, -200],
        [15, 200],
        [0, 200],
      ],
      sides,
    );
    const tilt = (55 * Math.PI) / 180;
    const section = sectionOf(bar, { point: [0, 0, 0], normal: [Math.sin(tilt), 0, Math.cos(tilt)] });
    // A prism cut askew is its polygon stretched by 1 / cos.
    expectClose(section.areaMm2, polygonArea(15, sides) / Math.cos(tilt), EXACT, 'stretched polygon');
    // Facets of 0.5 degrees: (2 pi / 720)^2 / 6 = 1.3e-5 below the ellipse pi a b.
    expectClose(section.areaMm2, (Math.PI * 225) / Math.cos(tilt), 1.3e-5, 'ellipse');
    // Ramanujan 1914, Q. J. Math. 45:350, second formula.
    const [a, b] = [15, 15 / Math.cos(tilt)];
    const h = ((a - b) / (a + b)) ** 2;
    const ramanujan = Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
    expectClose(section.perimeterMm, ramanujan, 1e-5, 'perimeter');
  });

  it('a hollow ball: the void is left out, and its wall counts as boundary', () => {
    const hollow = joined(sphere(50, 48), reversed(sphere(44, 48)));
    const section = sectionOf(hollow, level(0));
    expectSection(
      section,
      polygonArea(50, 96) - polygonArea(44, 96),
      polygonPerimeter(50, 96) + polygonPerimeter(44, 96),
    );
  });
});

describe('planes through vertices, edges and faces', () => {
  const cube = box([30, 20, 10]);

  it('through two edges of a box: a rectangle of the diagonal by the height', () => {
    const section = sectionOf(cube, { point: [0, 0, 0], normal: [20, -30, 0] });
    expectSection(section, Math.hypot(30, 20) * 10, 2 * Math.hypot(30, 20) + 20);
  });

  it('flush with a flat top it gives the top, flush with the bottom nothing: on the plane is beyond it', () => {
    expectSection(sectionOf(cube, level(10)), 600, 100);
    expect(sectionOf(cube, level(0))).toMatchObject({ areaMm2: 0, perimeterMm: 0, outlines: [] });
  });

  it('the same however the box is turned, ten times, seed 31', () => {
    const random = lcg(31);
    for (let i = 0; i < 10; i++) {
      const turn = randomTurn(random);
      const normal = turnedVector([0, 0, 1], turn);
      expectSection(
        sectionOf(turned(cube, turn), { point: turnedVector([0, 0, 10], turn), normal }),
        600,
        100,
        1e-9,
      );
      expect(sectionOf(turned(cube, turn), { point: turnedVector([0, 0, 0], turn), normal }).areaMm2).toBe(0);
    }
  });

  it('through the equator of a ball, where vertices lie: the polygon of the equator, each corner once', () => {
    const section = sectionOf(sphere(50, 48), level(0));
    expectSection(section, polygonArea(50, 96), polygonPerimeter(50, 96));
    expect(section.outlines.map((outline) => outline.length / 3)).toEqual([96]);
  });

  it('through the pole only: nothing from below, nothing from above', () => {
    for (const z of [50, -50]) expect(sectionOf(sphere(50, 48), level(z)).areaMm2).toBe(0);
  });

  it('a plane that misses: nothing', () => {
    expect(sectionOf(cube, level(11))).toMatchObject({ areaMm2: 0, perimeterMm: 0, outlines: [] });
  });
});

describe('shells that overlap count once', () => {
  it('two boxes of 10 x 20 in section, 4 x 15 in common', () => {
    const both = joined(box([10, 20, 30]), box([10, 20, 30], [6, 5, 0]));
    const section = sectionOf(both, level(11));
    expectSection(section, 2 * 200 - 4 * 15, 2 * 60 - 2 * (4 + 15));
    expectClose(section.signedAreaMm2, 400, EXACT, 'plain sum');
  });

  it('twin balls of radius 40, centers 50 mm apart: two circles less the lens', () => {
    const [r, d, rings] = [40, 50, 128];
    const section = sectionOf(joined(sphere(r, rings), moved(sphere(r, rings), [d, 0, 0])), level(0));
    const half = Math.acos(d / 2 / r);
    const lens = 2 * r * r * half - (d / 2) * Math.sqrt(4 * r * r - d * d);
    // Facets of 2 pi / 256: (2 pi / 256)^2 / 6 = 1.0e-4 below the circle.
    expectSection(section, 2 * Math.PI * r * r - lens, 2 * r * (2 * Math.PI - 2 * half), 1.1e-4);
    expectClose(section.signedAreaMm2, 2 * polygonArea(r, 2 * rings), EXACT, 'plain sum');
  });

  it('three copies of one ball are one ball, a ball inside a ball is the outer one', () => {
    const ball = sphere(50, 48);
    expectSection(
      sectionOf(joined(ball, ball, ball), level(0)),
      polygonArea(50, 96),
      polygonPerimeter(50, 96),
    );
    expectSection(
      sectionOf(joined(ball, sphere(30, 48)), level(0)),
      polygonArea(50, 96),
      polygonPerimeter(50, 96),
    );
  });

  it('two boxes face to face are one of 80 x 30: the wall between them is no boundary, seed 5', () => {
    const both = joined(box([40, 30, 20]), box([40, 30, 20], [40, 0, 0]));
    const random = lcg(5);
    for (let i = 0; i < 10; i++) {
      const turn = i === 0 ? ([1, 0, 0, 0] as const) : randomTurn(random);
      const plane = { point: turnedVector([0, 0, 7], turn), normal: turnedVector([0, 0, 1], turn) };
      expectSection(sectionOf(turned(both, turn), plane), 2400, 220, 1e-9);
    }
  });

  it('a body inside out has no section, and a plain sum below zero', () => {
    const section = sectionOf(reversed(box([10, 10, 10])), level(5));
    expect(section.areaMm2).toBe(0);
    expectClose(section.signedAreaMm2, -100, EXACT);
  });

  it('balls, rings and boxes against the union and slice of Manifold, twelve times, seed 8', () => {
    const random = lcg(8);
    for (let i = 0; i < 12; i++) {
      const meshes = [sphere(between(random, 20, 40), 24), torus(35, 12, 48, 24), box([50, 40, 60])].map(
        (mesh) =>
          asFloat32(
            moved(
              turned(mesh, randomTurn(random)),
              [0, 1, 2].map(() => between(random, -9, 9)) as unknown as Vec3,
            ),
          ),
      );
      const z = between(random, -15, 15);
      expectClose(
        sectionOf(joined(...meshes), level(z)).areaMm2,
        sliceByManifold(meshes, z).area,
        1e-6,
        `trio ${i}`,
      );
    }
  });
});

describe('a sculpt', () => {
  const { mesh } = sampleScan('quay-troll-clean.stl');

  it('level sections against the slice of Manifold', () => {
    for (const z of [12.3, 55.1, 101.7, 150.2]) {
      const section = sectionOf(mesh, level(z));
      expectClose(section.areaMm2, sliceByManifold([mesh], z).area, 1e-6, `z ${z}`);
      expectClose(section.areaMm2, section.signedAreaMm2, 1e-10, 'nothing overlaps');
    }
  });

  it('turned with its plane, and 100 m away, it has the same section, seed 12', () => {
    const random = lcg(12);
    const still = sectionOf(mesh, level(80));
    for (let i = 0; i < 3; i++) {
      const turn = randomTurn(random);
      const plane = { point: turnedVector([0, 0, 80], turn), normal: turnedVector([0, 0, 1], turn) };
      expectSection(sectionOf(turned(mesh, turn), plane), still.areaMm2, still.perimeterMm, 1e-9);
    }
    const far = sectionOf(moved(mesh, [1e5, 0, 1e5]), { point: [1e5, 0, 1e5 + 80], normal: [0, 0, 1] });
    expectSection(far, still.areaMm2, still.perimeterMm, 1e-8);
  });
});

describe('what can not be cut', () => {
  it('an open chain throws where the plane meets its rim, a normal without length always', () => {
    const cube = box([10, 10, 10]);
    const open = withTriangles(cube, trianglesOf(cube).slice(5));
    expect(() => sectionOf(open, level(5))).toThrow('expected a closed chain');
    expect(() => sectionOf(cube, { point: [0, 0, 0], normal: [0, 0, 0] })).toThrow('finite length above 0');
  });
});
