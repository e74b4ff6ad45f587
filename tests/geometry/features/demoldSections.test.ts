import { describe, expect, it } from 'vitest';
import { worstPassage } from '../../../src/geometry/features/demoldPassage';
import { sectionsOut } from '../../../src/geometry/features/demoldSections';
import type { TriangleMesh } from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { sliceByManifold } from '../../support/manifoldPlane';
import { measured } from '../../support/measured';
import { damaged, joined, mapPoints, moved, turned } from '../../support/meshTools';
import { polygonArea, turnedVector } from '../../support/polygons';
import { sampleScan } from '../../support/samples';
import { box, capsuleOutline, revolve, sphere, type OutlinePoint, type Vec3 } from '../../support/shapes';

const DOWN: Vec3 = [0, 0, -1];

/** Mouth of radius 30, neck of 15, bulb of 40: 188.50, 94.25 and 251.33 mm around, by 2 pi r. */
const [MOUTH, NECK, BULB] = [60 * Math.PI, 30 * Math.PI, 80 * Math.PI];
const bulbOutline: OutlinePoint[] = [
  [0, 0],
  [30, 0],
  [15, 20],
  [40, 60],
  [0, 100],
];
const bulb = (): TriangleMesh => revolve(bulbOutline, 256);

const rodOutline: OutlinePoint[] = [
  [0, 0],
  [20, 0],
  [20, 90],
  [0, 90],
];

const passageOf = (mesh: TriangleMesh, way: Vec3 = DOWN) => worstPassage(sectionsOut(mesh, { way }));

/** The outline with its edges parted, so that no facet is long. */
const parted = (outline: readonly OutlinePoint[], parts: number): OutlinePoint[] =>
  outline.flatMap(([r, z], i): OutlinePoint[] => {
    const next = outline[i + 1];
    if (next === undefined) return [[r, z]];
    return Array.from({ length: parts }, (_, k): OutlinePoint => {
      const share = k / parts;
      return [r + share * (next[0] - r), z + share * (next[1] - z)];
    });
  });

describe('girths along the way out', () => {
  it('a bulb on a neck: the neck is the worst passage, not the mouth', () => {
    const { worst, mouth } = passageOf(bulb());
    expectClose(worst.neckMm, NECK, 5e-4, 'neck');
    expectClose(worst.bulbMm, BULB, 5e-4, 'bulb');
    expectClose(worst.ratio, 40 / 15, 1e-3, 'ratio');
    expect(worst.neckAtMm[2]).toBeCloseTo(20, 1);
    expect(worst.bulbAtMm[2]).toBeCloseTo(60, 1);
    expect(Math.hypot(worst.neckAtMm[0], worst.neckAtMm[1])).toBeLessThan(1e-9);
    expectClose(mouth.neckMm, MOUTH, 5e-4, 'mouth');
    expectClose(mouth.ratio, 40 / 30, 1e-3, 'mouth ratio');
  });

  it('a cross of 60 x 20 and 20 x 60 is taped over its hollows: 80 + 80 sqrt 2', () => {
    const cross = joined(box([60, 20, 30]), box([20, 60, 30], [20, -20, 0]));
    for (const { girthMm, areaMm2, outlineCount } of sectionsOut(cross, { way: DOWN }).sections) {
      expectClose(girthMm, 80 + 80 * Math.SQRT2, 1e-9, 'girth');
      expectClose(areaMm2, 2 * 1200 - 400, 1e-9, 'area');
      expect(outlineCount).toBe(1);
    }
  });

  it('a cone that opens outward passes without a stretch, the other way round it does not', () => {
    const cone = revolve(
      [
        [0, 0],
        [40, 0],
        [10, 90],
        [0, 90],
      ],
      256,
    );
    const out = passageOf(cone);
    expect(out.worst.ratio).toBeLessThan(1);
    expect(sectionsOut(cone, { way: DOWN }).undercutMm2).toBeLessThan(1e-9);
    const back = passageOf(cone, [0, 0, 1]);
    expectClose(back.worst.ratio, 4, 2e-3, 'ten out, forty in');
  });

  it('two legs that taper to the mouth share one tape: 2 pi r + twice their distance', () => {
    const leg = revolve(
      [
        [0, 0],
        [10, 0],
        [20, 80],
        [0, 80],
      ],
      256,
    );
    const legs = joined(moved(leg, [30, 0, 0]), moved(leg, [-30, 0, 0]));
    for (const { alongMm, girthMm, outlineCount } of sectionsOut(legs, { way: DOWN }).sections) {
      expect(outlineCount).toBe(2);
      expectClose(girthMm, 2 * Math.PI * (10 + alongMm / 8) + 2 * 60, 1e-4, `at ${alongMm}`);
    }
  });

  it('undercuts are the area that looks out behind the rubber, as a caster sees it from the mouth', () => {
    const { undercutMm2, undercutShare } = sectionsOut(bulb(), { way: DOWN });
    expectClose(undercutMm2, polygonArea(40, 256) - polygonArea(15, 256), 1e-9, 'ring between neck and bulb');
    expectClose(undercutShare, (40 ** 2 - 15 ** 2) / (40 ** 2 - 15 ** 2 + 30 ** 2), 1e-6, 'share');
  });

  it('calls once a plane, and planes are in order and none on the base', () => {
    let steps = 0;
    const { sections } = sectionsOut(bulb(), { way: DOWN, count: 40, onStep: () => steps++ });
    expect(steps).toBe(sections.length);
    expect(sections.length).toBeGreaterThan(42);
    sections.forEach(({ alongMm }, i) => {
      expect(alongMm).toBeGreaterThan(i === 0 ? 0 : sections[i - 1]!.alongMm);
      expect(alongMm).toBeLessThan(100);
    });
  });

  it('throws on nothing', () => {
    const nothing = { positions: new Float64Array(0), triangles: new Int32Array(0) };
    expect(() => sectionsOut(nothing, { way: DOWN })).toThrow('got no triangles');
  });
});

describe('the end the casting comes out of', () => {
  it('a base 2 degrees off its way makes no false neck', () => {
    const lift = Math.tan((2 * Math.PI) / 180);
    // Only the corners of the base move, by no more than 1.05 mm.
    const tilted = mapPoints(bulb(), ([x, y, z]) => [x, y, z === 0 ? lift * x : z]);
    const found = sectionsOut(tilted, { way: DOWN });
    expect(found.hasFlat).toBe(true);
    const { worst, mouth } = worstPassage(found);
    expectClose(worst.neckMm, NECK, 1e-3, 'neck');
    // The whole of the base is in from 2.1 mm on, where the flare is 30 - 0.75 x 2.1 / 2 wide or more.
    expect(mouth.neckMm).toBeGreaterThan(2 * Math.PI * 28);
    expect(mouth.neckMm).toBeLessThan(MOUTH);
  });

  it('a brim just above the base is no part of the base', () => {
    const hat = revolve(
      [
        [0, 0],
        [10, 0],
        [10, 5],
        [40, 5],
        [40, 60],
        [0, 60],
      ],
      256,
    );
    const { worst, mouth } = passageOf(hat);
    expectClose(mouth.neckMm, 20 * Math.PI, 1e-4, 'mouth');
    expectClose(worst.ratio, 4, 1e-9, 'brim over stem');
  });

  it('a ball on its pole has no flat end; an opening around which the rubber stays is its mouth', () => {
    const ball = sphere(50, 128);
    expect(sectionsOut(ball, { way: DOWN }).hasFlat).toBe(false);
    const opening = { atMm: [0, 0, -50] as const, diameterMm: 40, staysOn: true };
    const { worst, opening: through, mouth } = worstPassage(sectionsOut(ball, { way: DOWN, opening }));
    expectClose(through!.ratio, 50 / 20, 1e-3, 'equator over opening');
    expect(worst).toBe(through);
    // Nearer to the pole there is no rubber: the first ring of it is as wide as the opening, to a step of 1 mm.
    expect(mouth.neckMm).toBeGreaterThanOrEqual(40 * Math.PI);
    expect(mouth.neckMm).toBeLessThan(2 * Math.PI * 22.5);
  });

  it('a cylinder on its side and a rounded rod have no flat end either, a rod sawn off has', () => {
    const rod = sectionsOut(turned(revolve(rodOutline, 256), [1, 0, 1, 0]), { way: DOWN });
    expect(rod.hasFlat).toBe(false);
    expect(rod.undercutShare).toBe(1);
    expect(sectionsOut(revolve(rodOutline, 256), { way: DOWN }).hasFlat).toBe(true);
    expect(sectionsOut(revolve(capsuleOutline(20, 60, 64), 128), { way: DOWN }).hasFlat).toBe(false);
  });

  it('an opening counts when told that the rubber stays on, and when narrower than the base', () => {
    const at = (diameterMm: number, staysOn: boolean) =>
      worstPassage(sectionsOut(bulb(), { way: DOWN, opening: { atMm: [0, 0, 0], diameterMm, staysOn } }));
    expectClose(at(20, true).worst.ratio, 80 / 20, 1e-3, 'told');
    expectClose(at(20, true).worst.neckMm, 20 * Math.PI, 1e-12, 'its girth');
    expectClose(at(50, true).worst.ratio, 40 / 15, 1e-3, 'wider than the neck');
    expect(at(20, false).opening).toBeUndefined();
    expectClose(at(20, false).worst.ratio, 40 / 15, 1e-3, 'not told');
    expect(at(70, true).opening).toBeUndefined();
  });
});

describe('the same casting', () => {
  it('turned and moved has the same girths, seed 5', () => {
    const random = lcg(5);
    const still = passageOf(bulb());
    for (let i = 0; i < 4; i++) {
      const turn = [0, 1, 2, 3].map(() => between(random, -1, 1)) as [number, number, number, number];
      const at: Vec3 = [between(random, -400, 400), between(random, -400, 400), 90];
      const { worst, mouth } = passageOf(moved(turned(bulb(), turn), at), turnedVector(DOWN, turn));
      expectClose(worst.neckMm, still.worst.neckMm, 1e-6, 'neck');
      expectClose(worst.bulbMm, still.worst.bulbMm, 1e-6, 'bulb');
      expectClose(mouth.neckMm, still.mouth.neckMm, 1e-6, 'mouth');
      const place = turnedVector(still.worst.neckAtMm, turn);
      worst.neckAtMm.forEach((c, k) => expect(c).toBeCloseTo(place[k]! + at[k]!, 3));
    }
  });

  it.each([11, 12, 13])(
    'damaged by 5 of 100 facets has the same girths within half a percent, seed %i',
    (seed) => {
      const fine = revolve(parted(bulbOutline, 20), 160);
      const { chain } = measured(damaged(fine, 'all three', 0.05, lcg(seed)));
      const { worst, mouth } = passageOf(chain);
      expectClose(worst.neckMm, NECK, 5e-3, 'neck');
      expectClose(worst.bulbMm, BULB, 5e-3, 'bulb');
      expectClose(mouth.neckMm, MOUTH, 5e-3, 'mouth');
    },
  );
});

describe('a sculpt', () => {
  const { mesh } = sampleScan('quay-troll-clean.stl');
  const found = sectionsOut(mesh, { way: DOWN });

  it('girths and areas against slice and hull of Manifold', () => {
    const floor = mesh.positions.reduce((low, c, i) => (i % 3 === 2 ? Math.min(low, c) : low), Infinity);
    for (const at of [4, 30, 60, 90, 120]) {
      const { alongMm, girthMm } = found.sections[at]!;
      expectClose(girthMm, sliceByManifold([mesh], floor + alongMm).girth, 1e-6, `${alongMm} mm in`);
    }
  });

  it('the list is what trying all pairs gives', () => {
    const { list, worst } = worstPassage(found);
    const { sections } = found;
    expect(list).toHaveLength(sections.length - 1);
    list.forEach(({ neckMm, bulbMm, ratio }, i) => {
      expect(neckMm).toBe(sections[i]!.girthMm);
      expect(bulbMm).toBe(Math.max(...sections.slice(i + 1).map(({ girthMm }) => girthMm)));
      expect(ratio).toBeLessThanOrEqual(worst.ratio);
    });
  });
});
