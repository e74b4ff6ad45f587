import { describe, expect, it } from 'vitest';
import {
  inView,
  shadowOutlines,
  tapeFrom,
  towardEye,
  VIEW_AXES,
  VIEW_NAMES,
  type Bounds,
  type TriangleMesh,
} from '../../../src/geometry';
import { silhouetteOf } from '../../../src/geometry/measure/silhouette';
import { expectClose } from '../../support/close';
import { lcg } from '../../support/lcg';
import { damaged, joined, moved, turned } from '../../support/meshTools';
import { CLEAN_TROLL, HAND, TROLL } from '../../support/moldSamples';
import { polygonArea } from '../../support/polygons';
import { sampleScan } from '../../support/samples';
import { box, revolve, sphere, torus } from '../../support/shapes';

const { front, side, top } = VIEW_AXES;

/** Signed area by the trapezoids under the sides: another sum than the code's own. */
const areaOf = (outline: Float64Array): number => {
  let area = 0;
  for (let i = 0; i < outline.length; i += 2) {
    const j = (i + 2) % outline.length;
    area += ((outline[i]! - outline[j]!) * (outline[i + 1]! + outline[j + 1]!)) / 2;
  }
  return area;
};

const netArea = (outlines: readonly Float64Array[]): number =>
  outlines.reduce((sum, outline) => sum + areaOf(outline), 0);

const reach = (outlines: readonly Float64Array[], axis: 0 | 1): [number, number] => {
  const all = outlines.flatMap((outline) => [...outline].filter((_, i) => i % 2 === axis));
  return [Math.min(...all), Math.max(...all)];
};

/** A palm of 60 x 20 x 100 mm with a thumb on its own right, low and towards the front. */
const handBox = (): TriangleMesh => joined(box([60, 20, 100], [-30, -10, 0]), box([25, 8, 15], [30, 2, 30]));

/** The farthest a point of the outlines is from the circle of a radius about a middle. */
const offCircle = (outline: Float64Array, radius: number): number => {
  let most = 0;
  for (let i = 0; i < outline.length; i += 2)
    most = Math.max(most, Math.abs(Math.hypot(outline[i]!, outline[i + 1]!) - radius));
  return most;
};

describe('outlines of a shadow whose form is known', () => {
  it('a ball is one round line, a box one with four corners at its bounds', () => {
    const [ball, ...none] = shadowOutlines(sphere(50, 64), top);
    expect(none).toEqual([]);
    expectClose(areaOf(ball!), polygonArea(50, 128), 2e-3);
    // Facets of 2 pi / 128 are 0.015 mm inside the circle.
    expect(offCircle(ball!, 50)).toBeLessThan(0.02);

    const outlines = shadowOutlines(box([40, 30, 20], [5, 6, 7]), front);
    expect(outlines).toHaveLength(1);
    expectClose(netArea(outlines), 800, 1e-4);
    expect(outlines[0]!.length / 2).toBeLessThanOrEqual(8);
    const [u, v] = [reach(outlines, 0), reach(outlines, 1)];
    [u[0] + 45, u[1] + 5, v[0] - 7, v[1] - 27].forEach((off) => expect(Math.abs(off)).toBeLessThan(1e-9));
  });

  it('a cone from the front is its triangle', () => {
    const cone = revolve(
      [
        [0, 0],
        [30, 0],
        [0, 80],
      ],
      64,
    );
    expectClose(netArea(shadowOutlines(cone, front)), 30 * 80, 5e-3);
  });

  it('a ring seen from above has its hole, turned the other way round; from the front it has none', () => {
    const ring = torus(40, 10, 128, 128);
    const areas = shadowOutlines(ring, top).map(areaOf);
    expect(areas).toHaveLength(2);
    expectClose(Math.max(...areas), polygonArea(50, 128), 2e-3);
    expectClose(-Math.min(...areas), polygonArea(30, 128), 2e-3);
    expect(shadowOutlines(ring, front)).toHaveLength(1);
  });

  it('two balls apart are two lines, one behind the other is one', () => {
    const pair = joined(sphere(20, 32), moved(sphere(10, 32), [60, 0, 0]));
    expect(shadowOutlines(pair, front)).toHaveLength(2);
    expect(shadowOutlines(pair, side)).toHaveLength(1);
  });

  it('a thin plate seen edge on is still seen; no triangles are no outline', () => {
    expectClose(netArea(shadowOutlines(box([300, 0.5, 200]), top)), 150, 5e-3);
    expect(
      shadowOutlines({ positions: new Float64Array(9), triangles: Int32Array.of(0, 1, 2) }, top),
    ).toEqual([]);
    expect(shadowOutlines({ positions: new Float64Array(0), triangles: new Int32Array(0) }, top)).toEqual([]);
  });
});

describe('outlines against the area of the same shadow by lines', () => {
  const eel = sampleScan('lamp-eel-scan.stl').mesh;
  it.each<[string, TriangleMesh]>([
    ['the troll', TROLL],
    ['the clean troll', CLEAN_TROLL],
    ['the hand', HAND],
    ['the eel', eel],
    ['a ring, turned', turned(torus(40, 10, 64, 32), [0.9, 0.2, 0.3, 0.25])],
    ['a hand of boxes', handBox()],
  ])('%s: within half a percent from every side', (_, mesh) => {
    for (const name of VIEW_NAMES) {
      const axes = VIEW_AXES[name];
      const { areaMm2 } = silhouetteOf(mesh, { direction: towardEye(axes) });
      expectClose(netArea(shadowOutlines(mesh, axes)), areaMm2, 5e-3, name);
    }
  });

  it('facets turned over at random change nothing; with a tenth of them lost it is still the shadow of the rest', () => {
    const flipped = damaged(CLEAN_TROLL, 'flipped', 0.3, lcg(2));
    expect(shadowOutlines(flipped, front)).toEqual(shadowOutlines(CLEAN_TROLL, front));
    const torn = damaged(CLEAN_TROLL, 'deleted', 0.1, lcg(3));
    const { areaMm2 } = silhouetteOf(torn, { direction: towardEye(front) });
    expectClose(netArea(shadowOutlines(torn, front)), areaMm2, 5e-3);
  });
});

describe('which side is which', () => {
  it('seen from the front the thumb on its own right is at your left, and from above too', () => {
    // The thumb reaches 25 mm beyond the palm on +x: the far left of the paper, u = -55.
    for (const axes of [front, top]) {
      const [low, high] = reach(shadowOutlines(handBox(), axes), 0);
      expectClose(low, -55, 1e-6);
      expectClose(high, 30, 1e-6);
    }
  });

  it('seen from its own right the face looks to your right, up is up', () => {
    const nose = joined(handBox(), box([10, 30, 10], [-5, 10, 80]));
    const outlines = shadowOutlines(nose, side);
    expectClose(reach(outlines, 0)[1], 40, 1e-6);
    const tip = [...outlines[0]!].flatMap((u, i, all) => (i % 2 === 0 && u > 39 ? [all[i + 1]!] : []));
    for (const up of tip) expect(up).toBeGreaterThan(79);
  });

  it('seen from above the front is at the lower edge', () => {
    const nose = joined(box([60, 20, 100], [-30, -10, 0]), box([10, 30, 10], [-5, 10, 80]));
    expectClose(reach(shadowOutlines(nose, top), 1)[0], -40, 1e-6);
  });

  it('the eye stands at +y, +x and +z, and a place stands where its outline does', () => {
    expect(VIEW_NAMES.map((name) => towardEye(VIEW_AXES[name]).map((k) => k + 0))).toEqual([
      [0, 1, 0],
      [1, 0, 0],
      [0, 0, 1],
    ]);
    expect(inView(front, [7, 8, 9])).toEqual([-7, 9]);
    expect(inView(side, [7, 8, 9])).toEqual([8, 9]);
    expect(inView(top, [7, 8, 9])).toEqual([-7, -8]);
  });
});

describe('by tape', () => {
  const bounds: Bounds = { min: [-100, -40, 5], max: [100, 60, 305] };

  it.each([
    ['right', [90, 0, 25], 10, 20],
    ['left', [-88, 10, 305], 12, 300],
    ['front', [0, 53, 5], 7, 0],
    ['back', [10, -38, 155], 2, 150],
  ] as const)('in from its own %s, up from the base', (nearest, at, inMm, upMm) => {
    expect(tapeFrom(bounds, at)).toMatchObject({ side: nearest, inMm, upMm });
  });

  it('the second distance is from a side of the other pair, so the two and the height give the place back', () => {
    const random = lcg(5);
    for (let i = 0; i < 200; i++) {
      const at = [0, 1, 2].map((k) => bounds.min[k]! + random() * (bounds.max[k]! - bounds.min[k]!)) as [
        number,
        number,
        number,
      ];
      const tape = tapeFrom(bounds, at);
      const from = { left: -100, right: 100, back: -40, front: 60 };
      const into = { left: 1, right: -1, back: 1, front: -1 };
      const walls = [
        { wall: tape.side, mm: tape.inMm },
        { wall: tape.acrossSide, mm: tape.acrossMm },
      ].map(({ wall, mm }) => ({ wall, place: from[wall] + into[wall] * mm }));
      const x = walls.find(({ wall }) => wall === 'left' || wall === 'right')!.place;
      const y = walls.find(({ wall }) => wall === 'front' || wall === 'back')!.place;
      [x - at[0], y - at[1], tape.upMm + 5 - at[2]].forEach((off) =>
        expect(Math.abs(off), `seed 5, ${i}`).toBeLessThan(1e-9),
      );
      const all = [at[0] + 100, 100 - at[0], at[1] + 40, 60 - at[1]];
      expectClose(tape.inMm, Math.min(...all), 1e-12, `seed 5, ${i}`);
    }
  });
});
