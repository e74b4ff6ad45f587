import { describe, expect, it } from 'vitest';
import {
  displacedByLevel,
  displacedByOverflow,
  volumeByGirth,
  waterFill,
} from '../../../src/yield/volumeWays';
import type { TapedBody } from '../../../src/yield/volumeWays';
import { ovalShare } from '../../../src/yield/volumeWays/girth';
import { waterGPerCm3 } from '../../../src/yield';
import { expectClose } from '../../support/close';
import { problemOf, valueOf } from '../../support/outcome';
import { expectPrinted } from '../../support/printed';

describe('water fill', () => {
  it.each([
    [5, '0.99997'],
    [10, '0.99970'],
    [15, '0.99910'],
    [20, '0.99821'],
    [25, '0.99705'],
    [30, '0.99565'],
    [35, '0.99403'],
    [40, '0.99222'],
  ] as const)('water at %d C is %s g/cm3 (CRC Handbook, from memory)', (tempC, printed) =>
    expectPrinted(waterGPerCm3(tempC), printed),
  );

  it('the sample molds at 20 C: 4.47 kg is 4 478 cm3, 0.906 kg is 908', () => {
    const troll = valueOf(waterFill({ waterG: 4470, waterTempC: 20 }));
    expectPrinted(troll.value, '4478');
    expect(troll.from).toBe('water-fill');
    expectPrinted(valueOf(waterFill({ waterG: 906, waterTempC: 20 })).value, '908');
  });

  it('the range: 0.3 % twice, a scale of 1 g, 2 K of water', () => {
    const { value, low, high } = valueOf(waterFill({ waterG: 1000, waterTempC: 20, stepG: 1 }));
    const u = 2 * Math.hypot(0.003, 1 / Math.sqrt(6) / 1000);
    expectClose(high - value, value * Math.hypot(u, waterGPerCm3(20) / waterGPerCm3(22) - 1), 1e-3);
    expectClose(value - low, value * Math.hypot(u, 1 - waterGPerCm3(20) / waterGPerCm3(18)), 1e-3);
  });

  it('not knowing how warm the water is costs range, not value', () => {
    const known = valueOf(waterFill({ waterG: 1000, waterTempC: 20 }));
    const unknown = valueOf(waterFill({ waterG: 1000 }));
    expect(unknown.value).toBe(known.value);
    expect(unknown.high).toBeGreaterThan(known.high);
    expect(unknown.high).toBeGreaterThan(1000 / waterGPerCm3(35));
  });

  it('refuses boiling water and none', () => {
    expect(problemOf(waterFill({ waterG: 1000, waterTempC: 95 })).values.input).toBe('waterTempC');
    expect(problemOf(waterFill({ waterG: 0 })).values.input).toBe('fillWaterG');
  });
});

describe('displacement', () => {
  it('overflow: the water, with a wider range than a fill', () => {
    const water = { waterG: 908, waterTempC: 20 };
    const over = valueOf(displacedByOverflow(water));
    const fill = valueOf(waterFill(water));
    expect(over.value).toBe(fill.value);
    expect(over.high - over.low).toBeGreaterThan(3 * (fill.high - fill.low));
  });

  it('rice is known to 3 % of all it holds: 908 cm3 in a 5 L bucket to about a third', () => {
    const levels = { beforeCm3: 4092, afterCm3: 5000, readingCm3: 0 };
    const rice = valueOf(displacedByLevel({ ...levels, medium: 'rice' }));
    expect(rice.value).toBe(908);
    expectClose(rice.high - rice.value, 2 * 0.03 * 5000, 1e-12);
    const water = valueOf(displacedByLevel({ ...levels, medium: 'water' }));
    expectClose(water.high - water.value, 2 * 0.005 * 5000, 1e-12);
  });

  it('a level that did not rise is refused', () => {
    const levels = { medium: 'water' as const, beforeCm3: 2000, afterCm3: 1990 };
    expect(problemOf(displacedByLevel(levels))).toMatchObject({
      code: 'INPUT_OUT_OF_BOUNDS',
      values: { input: 'afterCm3', low: 2000 },
    });
  });
});

describe('the tape', () => {
  it.each([
    [1, 1],
    [1.2, 0.9876480141554307],
    [1.5, 0.9410371475599091],
    [2, 0.8411651810063192],
  ])(
    'an oval of %d to 1 holds %d of the circle of its girth (complete elliptic integral, by SciPy)',
    (ratio, share) => expectClose(ovalShare(ratio), share, 1e-8),
  );

  const round = (body: TapedBody): number => valueOf(volumeByGirth([body])).value / ovalShare(1.2);

  it('perfect bodies: a cylinder, a cone frustum, a ball, half a ball', () => {
    // Neck of 380 mm girth and 120 mm length: 1.38 L.
    expectPrinted(round({ kind: 'limb', lengthMm: 120, girthMm: 380 }) / 1000, '1.38');
    const cone = { kind: 'limb', lengthMm: 270, girthMm: 300, otherGirthMm: 210 } as const;
    const [r1, r2] = [300, 210].map((girth) => girth / (2 * Math.PI)) as [number, number];
    expectClose(round(cone), (Math.PI * 270 * (r1 ** 2 + r1 * r2 + r2 ** 2)) / 3000, 1e-12);
    const r = 560 / (2 * Math.PI);
    const ball = (4 / 3) * Math.PI * r ** 3;
    expectClose(round({ kind: 'ball', girthMm: 560 }), ball / 1000, 1e-12);
    expectClose(round({ kind: 'dome', girthMm: 560, heightMm: r }), ball / 2000, 1e-12);
  });

  it('an ellipsoid head of 195 x 152 x 232 mm, 3.60 L, lies in the range of a ball of its middle girth', () => {
    // Girth of 195 x 152 by Ramanujan: 547 mm; the head is taller than wide, so it is a limb of domes: two of 116 mm.
    const half: TapedBody = { kind: 'dome', girthMm: 547, heightMm: 116 };
    const { low, high } = valueOf(volumeByGirth([half, half]));
    expect(low).toBeLessThan(3600);
    expect(high).toBeGreaterThan(3600);
  });

  it('a box loses its edges; bodies add up, ends and all', () => {
    const box: TapedBody = { kind: 'box', widthMm: 100, depthMm: 50, heightMm: 200 };
    const one = valueOf(volumeByGirth([box]));
    expect(one.value).toBe(950);
    const two = valueOf(volumeByGirth([box, box]));
    expectClose(two.high - two.low, 2 * (one.high - one.low), 1e-12);
    expect(two.from).toBe('taped');
  });

  it('every one is wider than a water fill', () => {
    const share = ({ low, high, value }: { low: number; high: number; value: number }): number =>
      (high - low) / value;
    const water = share(valueOf(waterFill({ waterG: 1000, waterTempC: 20 })));
    expect(share(valueOf(volumeByGirth([{ kind: 'ball', girthMm: 400 }])))).toBeGreaterThan(5 * water);
    expect(
      share(valueOf(displacedByLevel({ medium: 'water', beforeCm3: 4000, afterCm3: 5000 }))),
    ).toBeGreaterThan(5 * water);
  });

  it('refuses a girth or a length that is none, by name', () => {
    const limb: TapedBody = { kind: 'limb', lengthMm: 100, girthMm: 300, otherGirthMm: -3 };
    expect(problemOf(volumeByGirth([limb])).values.input).toBe('girthMm');
    expect(
      problemOf(volumeByGirth([{ ...limb, otherGirthMm: 200, lengthMm: Number.NaN }])).values.input,
    ).toBe('tapedLengthMm');
  });
});
