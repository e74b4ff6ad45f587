import { describe, expect, it } from 'vitest';
import { boxWith, halvesAround, sculptBox } from '../../src/app/picture/boxes';
import { cutRange, cutWords, isSamePlane, middlePlane, planeAt } from '../../src/app/picture/cutControls';
import { moldPictureWords, pickedWords } from '../../src/app/picture/moldPictureWords';
import { cutInUnits, shownCut, shownPaint } from '../../src/app/picture/moldLayers';
import { outOf, planLevels, planMarks, pouredUp } from '../../src/app/picture/planMarks';
import { thicknessSteps } from '../../src/app/picture/thicknessSteps';
import type { MarkedPlace, OpeningPlan } from '../../src/plan';
import type { Picture, Shells } from '../../src/worker/protocol';

/** In inches, its middle 2 in up. */
const SEAT = { mmPerUnit: 25.4, middleUnits: [1, -1, 2] as const };
const picture = { halfUnits: [1, 1, 2], middleUnits: [1, -1, 2] } as unknown as Picture;
const sculpt = sculptBox(picture, SEAT);
const shells = {
  parts: [{ part: 'skin', surface: { positions: Float32Array.of(-10, -60, 0, 60, 10, 120) } }],
} as unknown as Shells;

const places: MarkedPlace[] = [
  { n: 1, kind: 'opening', atMm: [25.4, -25.4, 0], normal: [0, 0, -1], diameterMm: 50.8 },
  { n: 2, kind: 'vent planned', atMm: [40, -25.4, 101.6], normal: [0, 0, 1], ventMm: 3 },
  { n: 3, kind: 'air under silicone', atMm: [10, -25.4, 50], normal: [0, 1, 0], volumeCm3: 1, riseMm: 4 },
  { n: 4, kind: 'thin foam', atMm: [50.8, -25.4, 60], normal: [1, 0, 0], thicknessMm: 4.23, slenderness: 3 },
  { n: 5, kind: 'thin foam', atMm: [0, -25.4, 60], normal: [-1, 0, 0], thicknessMm: 6, slenderness: 3 },
];

const plan = {
  places,
  filling: {
    up: [0, 0, 1],
    traps: [
      { topMm: [40, -25.4, 101.6], saddleMm: [30, -25.4, 91.6], riseMm: 10, volumeCm3: 0.8, doubtCm3: 0 },
    ],
    trappedCm3: { value: 0.8, low: 0.8, high: 0.8, from: 'scanned' },
  },
  underSilicone: {
    traps: [
      { topMm: [10, -25.4, 50], saddleMm: [10, -20, 46], riseMm: 4, volumeCm3: 1, doubtCm3: 0 },
      { topMm: [12, -25.4, 50], saddleMm: [10, -20, 46], riseMm: 4, volumeCm3: 0.1, doubtCm3: 0 },
    ],
  },
  casting: { medianMm: 42, minMm: 4.23 },
  card: { boundsMm: sculpt },
} as unknown as OpeningPlan;

describe('the sculpt and what is around it, from a scan in inches', () => {
  it('bounds of the sculpt in mm', () => {
    expect(sculpt.min).toEqual([0, -50.8, 0]);
    expect(sculpt.max).toEqual([50.8, 0, 101.6]);
  });
  it('with the mold it is as large as both, and framed around the middle of the sculpt', () => {
    const box = boxWith(sculpt, shells);
    expect(box).toEqual({ min: [-10, -60, 0], max: [60, 10, 120] });
    const halves = halvesAround(box, SEAT);
    expect(halves[2]).toBeCloseTo(120 / 25.4 - 2, 9);
    expect(halves[0]).toBeCloseTo(1 + 10 / 25.4, 9);
  });
});

describe('a cut', () => {
  it('goes through the middle of the sculpt, as deep as it says', () => {
    const plane = middlePlane('y', sculpt);
    expect(plane).toEqual({ axis: 'y', atMm: -25.4 });
    expect(cutWords(plane, sculpt)).toBe('25.4 mm (1.00 in) behind its front');
    expect(cutInUnits(plane, SEAT)).toEqual({ axis: 'y', at: 0 });
  });
  it.each([
    ['y', 4, '4 mm (0.16 in) before its front'],
    ['x', 40.8, '10 mm (0.39 in) in from its right'],
    ['z', 101.6, '0 mm (0.00 in) below its top'],
    ['z', 110, '8.4 mm (0.33 in) above its top'],
  ] as const)('across %s at %f is %s', (axis, atMm, words) =>
    expect(cutWords({ axis, atMm }, sculpt)).toBe(words),
  );
  it('is slid from the near side of all that is drawn', () => {
    const box = boxWith(sculpt, shells);
    const { depthMm, mostMm, stepMm } = cutRange({ axis: 'z', atMm: 100 }, box);
    expect([depthMm, mostMm, stepMm]).toEqual([20, 120, 0.5]);
    expect(planeAt('z', 20, box)).toEqual({ axis: 'z', atMm: 100 });
  });
  it('faces are of a plane only where it is the same one', () => {
    expect(isSamePlane({ axis: 'x', atMm: 1 }, { axis: 'x', atMm: 1 })).toBe(true);
    expect(isSamePlane({ axis: 'x', atMm: 1 }, { axis: 'x', atMm: 1.01 })).toBe(false);
    expect(isSamePlane({ axis: 'x', atMm: 1 }, undefined)).toBe(false);
  });
  it('shows each part in its own fill, of the sculpt alone nothing else', () => {
    const faces = (['sculpt', 'skin', 'jacket'] as const).map((part) => ({ part, outlines: [] }));
    const cut = { plane: { axis: 'y' as const, atMm: 0 }, faces };
    expect(shownCut(cut, true).faces.map(({ look }) => look)).toEqual(['sculpt', 'silicone', 'stiff']);
    expect(shownCut(cut, false).faces.map(({ look }) => look)).toEqual(['sculpt']);
  });
});

describe('marks are the rows', () => {
  const marks = planMarks(plan, SEAT, sculpt);
  it('every numbered place, with its number', () =>
    expect(marks.map(({ label, isRow }) => [label, isRow])).toEqual(
      places.map(({ n }) => [String(n), true]),
    ));
  it('the opening as its true ring: 50.8 mm wide is 1 in of radius, under the middle of the base', () => {
    expect(marks[0]!.ringRadius).toBe(1);
    expect(marks[0]!.at).toEqual([0, 0, -2]);
  });
  it('a vent leads up out of what is drawn, straight', () => {
    const { at, upTo } = marks[1]!;
    expect(upTo!.slice(0, 2)).toEqual(at.slice(0, 2));
    expect(upTo![2] * 25.4 + 2 * 25.4).toBeCloseTo(101.6 + 0.04 * 101.6, 9);
    expect(marks.filter((mark) => mark.upTo !== undefined)).toHaveLength(1);
  });
  it('aslant it leaves through the first wall that it meets', () => {
    const [x, y, z] = outOf({ min: [0, 0, 0], max: [10, 10, 10] }, [5, 5, 5], [0.6, 0, 0.8]);
    expect([x, y, z].map((c) => Math.round(c * 1e6) / 1e6)).toEqual([8.99, 5, 10.32]);
  });
  it('levels of the pockets: as poured, and of the silicone those that are marked', () => {
    const levels = planLevels(plan, SEAT);
    expect(levels).toHaveLength(2);
    // 91.6 mm is 1.606 in above the middle; a fiftieth of the rise keeps off the rim.
    expect(levels[0]!.at).toBeCloseTo((91.6 + 0.2) / 25.4 - 2, 9);
    expect(levels[1]!.at).toBeCloseTo((46 + 0.08) / 25.4 - 2, 9);
  });
  it('an arrow only where up when poured is not up', () => {
    expect(pouredUp(plan)).toBeUndefined();
    expect(pouredUp({ ...plan, filling: { ...plan.filling, up: [0, 0, -1] } })).toEqual([0, 0, -1]);
  });
});

describe('in words', () => {
  it('what is drawn, how thick, and where', () => {
    const text = moldPictureWords({
      sizeMm: [50.8, 50.8, 101.6],
      typeWords: 'skin with jacket',
      cutWords: '25.4 mm (1 in) behind its front',
      isPainted: false,
      plan,
    });
    expect(text).toBe(
      [
        'The sculpt, 50.8 mm (2.00 in) wide, 50.8 mm (2.00 in) deep, 101.6 mm (4.00 in) tall, in its mold (skin with jacket), cut open 25.4 mm (1 in) behind its front.',
        'The opening is 50.8 mm (2.00 in) wide, number 1; 1 vent, number 2.',
        'Poured as it stands, 1 air pocket of 0.8 cm³ stays; it rises 10 mm (0.39 in) above the level at which it opens. Silicone shuts in air at number 3.',
        'Half of the measured surface has 42 mm (1.65 in) of foam behind it, or more; the thinnest place, number 4, has 4.2 mm (0.17 in): up 60 (2 3/8), in from right 0 (0) and from front 25 (1), mm (in). Thin places: numbers 4, 5.',
      ].join(' '),
    );
  });
  it('no figure of a size or a plan that is not known', () =>
    expect(moldPictureWords({ sizeMm: undefined, isPainted: true })).toBe(
      'The sculpt, its size not known yet, its surface in six steps of thickness.',
    ));
  it('what is picked, by its number, and nothing of a number that is not there', () => {
    expect(pickedWords(plan, '2')).toMatch(/^2: Vent 3 mm \(0\.12 in\), planned; up 102 \(4\), in from /);
    expect(pickedWords(plan, '9')).toBeUndefined();
  });
});

describe('the legend of thickness', () => {
  const borders = [2, 5, 10, 20, 50] as const;
  it('says both systems, and "and more" only where thicker was not told apart', () => {
    expect(thicknessSteps(borders, { cappedMm: 80, mostMm: 80 })).toEqual([
      'under 2 mm (0.08 in)',
      '2 mm to 5 mm (0.20 in)',
      '5 mm to 10 mm (0.39 in)',
      '10 mm to 20 mm (0.79 in)',
      '20 mm to 50 mm (1.97 in)',
      '50 mm (1.97 in) and more',
    ]);
    expect(thicknessSteps(borders, { cappedMm: 80, mostMm: 61.23 })[5]).toBe('50 mm to 61.2 mm (2.41 in)');
  });
  it('knows whether anything is not known', () => {
    expect(shownPaint({ thicknessMm: Float32Array.of(3, 40, NaN), cappedMm: 80 })).toMatchObject({
      mostMm: 40,
      hasUnknown: true,
    });
    expect(shownPaint({ thicknessMm: Float32Array.of(NaN), cappedMm: 80 })).toBeUndefined();
  });
});
