import { describe, expect, it } from 'vitest';
import { lockedLimbs, type LimbWish, type LockedLimbs } from '../../../src/geometry/features/demoldLimbs';
import { sectionsOut } from '../../../src/geometry/features/demoldSections';
import type { TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { asFloat32, joined, moved, turned } from '../../support/meshTools';
import { turnedVector } from '../../support/polygons';
import { box, revolve, sphereOutline, type OutlinePoint, type Vec3 } from '../../support/shapes';

const DOWN: Vec3 = [0, 0, -1];

/** A ball on a stalk of radius 5 that stands in the block. The polygons are of 128 sides: 2 pi r to 1e-4. */
function lollipop(ball: number, atX: number, top: number): TriangleMesh {
  const above = sphereOutline(ball, 64).filter(([r, z]) => z > 0 || r > 5);
  const outline: OutlinePoint[] = [
    [0, 10],
    [5, 10],
    [5, top - ball - Math.sqrt(ball ** 2 - 25)],
    ...above.map(([r, z]): OutlinePoint => [r, z + top - ball]),
  ];
  return moved(revolve(outline, 128), [atX, 0, 0]);
}

const block = box([100, 60, 20], [-50, -30, 0]);

const limbsOf = (mesh: TriangleMesh, wish: LimbWish, way: Vec3 = DOWN): LockedLimbs =>
  lockedLimbs(sectionsOut(mesh, { way }), wish);

describe('limbs with a neck of their own', () => {
  const two = joined(block, lollipop(15, -25, 80), lollipop(8, 25, 70));

  it('a ball of radius 15 on a stalk of 5, beside a smaller one, is named with its own neck and bulb', () => {
    const { necked, caught } = limbsOf(two, { ratio: 2 });
    expect(necked).toHaveLength(1);
    expect(caught).toEqual([]);
    const [limb] = necked;
    expectClose(limb!.neckMm, 10 * Math.PI, 1e-3, 'stalk');
    expectClose(limb!.bulbMm, 30 * Math.PI, 2e-3, 'ball');
    expect(limb!.neckAtMm[0]).toBeCloseTo(-25, 2);
    expect(limb!.neckAtMm[1]).toBeCloseTo(0, 2);
    expect(limb!.neckAtMm[2]).toBeGreaterThan(19.9);
    expect(limb!.neckAtMm[2]).toBeLessThan(52);
    expect(Math.abs(limb!.bulbAtMm[2] - 65)).toBeLessThan(1);
    expect(limb!.isWhole).toBe(false);
  });

  it('the smaller one, of 8 on 5, is named from a ratio of 1.5 on, after the larger one', () => {
    const { necked } = limbsOf(two, { ratio: 1.5 });
    expect(necked.map(({ neckAtMm }) => Math.round(neckAtMm[0]))).toEqual([-25, 25]);
    expectClose(necked[1]!.ratio, 8 / 5, 5e-3, 'eight on five');
  });

  it('the only one on a block is the rest of the casting', () => {
    const { necked } = limbsOf(joined(block, lollipop(15, 0, 80)), { ratio: 2 });
    expect(necked).toHaveLength(1);
    expect(necked[0]!.isWhole).toBe(true);
    expectClose(necked[0]!.ratio, 3, 2e-3, 'fifteen on five');
  });

  it('two horns that only taper are none, and nothing is named for a plain block', () => {
    const horn = revolve(
      [
        [0, 10],
        [12, 10],
        [2, 80],
        [0, 80],
      ],
      64,
    );
    const horns = joined(block, moved(horn, [-25, 0, 0]), moved(horn, [25, 0, 0]));
    expect(limbsOf(horns, { ratio: 1.05 })).toEqual({ necked: [], caught: [] });
    expect(limbsOf(block, { ratio: 1.05 })).toEqual({ necked: [], caught: [] });
  });

  it('a limb that leans by 60 degrees is followed to its ball', () => {
    // A shear: level sections stay the circles they are, and their middles move by tan 60 a millimeter.
    const { positions, triangles } = lollipop(15, 0, 80);
    const lean = positions.map((c, i) => (i % 3 === 0 ? c + Math.tan(Math.PI / 3) * positions[i + 2]! : c));
    const other = lollipop(8, -25, 70);
    const { necked } = limbsOf(joined(block, { positions: lean, triangles }, other), { ratio: 2 });
    expect(necked).toHaveLength(1);
    expectClose(necked[0]!.ratio, 3, 5e-3, 'fifteen on five');
  });

  it('turned and moved it is the same, seed 3', () => {
    const random = lcg(3);
    for (let i = 0; i < 3; i++) {
      const turn = [0, 1, 2, 3].map(() => between(random, -1, 1)) as [number, number, number, number];
      const { necked } = limbsOf(
        moved(turned(two, turn), [300, -50, 7]),
        { ratio: 2 },
        turnedVector(DOWN, turn),
      );
      expect(necked).toHaveLength(1);
      expectClose(necked[0]!.neckMm, 10 * Math.PI, 1e-3, 'stalk');
      expectClose(necked[0]!.bulbMm, 30 * Math.PI, 2e-3, 'ball');
    }
  });
});

describe('what hangs beside a limb', () => {
  it('a hanging arm does not end the tree: what lies deeper still has to pass the neck', () => {
    const statue = joined(
      revolve(
        [
          [0, 0],
          [20, 0],
          [20, 90],
          [40, 130],
          [0, 160],
        ],
        128,
      ),
      box([40, 10, 10], [10, -5, 70]),
      box([10, 10, 40], [40, -5, 40]),
    );
    const { necked, caught } = limbsOf(statue, { ratio: 1.5 });
    expect(caught.map(({ kind }) => kind)).toEqual(['hook']);
    expect(necked).toHaveLength(1);
    expect(necked[0]!.isWhole).toBe(true);
    expectClose(necked[0]!.neckMm, 40 * Math.PI, 2e-3, 'below the arm');
    expectClose(necked[0]!.bulbMm, 80 * Math.PI, 2e-3, 'head');
  });
});

describe('limbs that point to the mouth', () => {
  const body = box([40, 40, 120], [-20, -20, 0]);
  const upperBar = box([45, 15, 15], [15, -7, 80]);

  it('a hanging arm is a hook: its tip, where it joins, and the 50 mm between', () => {
    const arm = joined(body, upperBar, box([15, 15, 60], [45, -7, 30]));
    const { caught, necked } = limbsOf(arm, { ratio: 1.5 });
    expect(necked).toEqual([]);
    expect(caught).toHaveLength(1);
    expect(caught[0]!.kind).toBe('hook');
    expect(Math.abs(caught[0]!.reachMm - 50)).toBeLessThan(2.6);
    expect(caught[0]!.atMm[0]).toBeCloseTo(52.5, 6);
    expect(caught[0]!.atMm[2]).toBeGreaterThanOrEqual(30);
    expect(caught[0]!.atMm[2]).toBeLessThan(31.3);
  });

  it('a handle is a hole the rubber runs through, 45 mm along the way', () => {
    const lowerBar = box([45, 15, 15], [15, -7, 20]);
    const mug = joined(body, upperBar, lowerBar, box([15, 15, 75], [45, -7, 20]));
    const { caught } = limbsOf(mug, { ratio: 1.5 });
    expect(caught.map(({ kind }) => kind)).toEqual(['through']);
    expect(Math.abs(caught[0]!.reachMm - 45)).toBeLessThan(2.6);
    expect(caught[0]!.atMm[0]).toBeCloseTo(52.5 / 2, 6);
  });

  it('two legs: the rubber runs between them, from the mouth to the crotch', () => {
    const leg = box([30, 30, 90], [-15, -15, 0]);
    const legs = joined(moved(leg, [-30, 0, 0]), moved(leg, [30, 0, 0]), box([90, 30, 40], [-45, -15, 80]));
    const { caught } = limbsOf(legs, { ratio: 1.5 });
    expect(caught.map(({ kind }) => kind)).toEqual(['through']);
    expect(Math.abs(caught[0]!.reachMm - 80)).toBeLessThan(1.5);
    expect(caught[0]!.atMm[0]).toBeCloseTo(0, 6);
  });
});

describe('prongs with flat sides that only stand beside one another', () => {
  /** One closed block, 40 deep, with two upright prongs, 50 high, that many millimeters apart: x, z of its outline, front and back. */
  function pronged(gapMm: number): TriangleMesh {
    const g = gapMm / 2;
    const low = [-50, 0, 50, 0, 50, 40, 25, 40, 25, 90, g, 90, g, 40];
    const high = [-g, 40, -g, 90, -25, 90, -25, 40, -50, 40];
    const outline = [...low, ...high];
    const count = outline.length / 2;
    const at = (y: number): number[] =>
      Array.from({ length: count }, (_, i) => [outline[2 * i]!, y, outline[2 * i + 1]!]).flat();
    const front = [
      0, 1, 2, 0, 2, 3, 0, 3, 6, 0, 6, 7, 0, 7, 10, 0, 10, 11, 3, 4, 5, 3, 5, 6, 7, 8, 9, 7, 9, 10,
    ];
    const back = front.map((_, i) => count + front[i - (i % 3) + [0, 2, 1][i % 3]!]!);
    const sides = Array.from({ length: count }, (_, i) => {
      const next = (i + 1) % count;
      return [next, i, count + i, next, count + i, count + next];
    }).flat();
    return {
      positions: Float64Array.from([...at(-20), ...at(20)]),
      triangles: Int32Array.from([...front, ...back, ...sides]),
    };
  }

  for (const gapMm of [1, 4, 10])
    it(`an open slot of ${gapMm} mm between them is no hole: the rubber comes out of it`, () => {
      expect(limbsOf(pronged(gapMm), { ratio: 1.05 })).toEqual({ necked: [], caught: [] });
    });

  it('so however the block lies, and as a binary STL has it, seed 12', () => {
    const random = lcg(12);
    for (let n = 0; n < 12; n++) {
      const turn = [0, 1, 2, 3].map(() => between(random, -1, 1)) as [number, number, number, number];
      const lying = moved(turned(pronged(between(random, 1, 12)), turn), [40, 300, -70]);
      const mesh = n % 2 === 0 ? lying : asFloat32(lying);
      const { caught } = limbsOf(mesh, { ratio: 1.05 }, turnedVector(DOWN, turn));
      expect(caught, `draw ${n}`).toEqual([]);
    }
  });

  it('prongs that were modeled as bodies of their own are as free', () => {
    const prongs = [-25, 5].map((x) => box([20, 40, 60], [x, -20, 30]));
    expect(limbsOf(joined(block, ...prongs), { ratio: 1.05 }).caught).toEqual([]);
  });

  it('a bridge over the slot makes it one: the rubber runs under it, from the block to the bridge', () => {
    const bridge = box([50, 40, 15], [-25, -20, 75]);
    const { caught } = limbsOf(joined(pronged(10), bridge), { ratio: 1.05 });
    expect(caught.map(({ kind }) => kind)).toEqual(['through']);
    expect(Math.abs(caught[0]!.reachMm - 35)).toBeLessThan(2.6);
  });
});
