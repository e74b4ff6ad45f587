import { describe, expect, it } from 'vitest';
import {
  boxWall,
  floatCheck,
  floatForceN,
  wallBulgeMm,
  wallForceN,
  wallPressureKPa,
} from '../../../src/yield';
import { liftFindings, WALL_MATERIALS } from '../../../src/yield';
import type { BoxWall, WallMaterial } from '../../../src/yield';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';
import { expectPrinted } from '../../support/printed';

const wallOf = (key: string): WallMaterial => {
  const material = WALL_MATERIALS.find((known) => known.key === key);
  if (material === undefined) throw new Error(`expected a wall material ${key}`);
  return material;
};
const acrylicBox: BoxWall = {
  rubberHeightMm: 200,
  wallWidthMm: 300,
  wallMm: 6,
  siliconeKgM3: 1150,
  material: wallOf('acrylic'),
};

describe('rubber pushing on a box wall', () => {
  it('200 mm of rubber at 1150 kg/m3 on 300 mm: 2.256 kPa, 67.7 N at 66.7 mm (hydrostatics)', () => {
    expectPrinted(wallPressureKPa(acrylicBox), '2.256');
    expectPrinted(wallForceN(acrylicBox), '67.7');
    expectPrinted(valueOf(boxWall(acrylicBox)).forceHeightMm, '66.7');
  });

  it('the push is the pressure summed over the wall, and its moment puts it at a third (sum of 10 000 strips)', () => {
    const strips = 10_000;
    let forceN = 0;
    let momentNmm = 0;
    for (let strip = 0; strip < strips; strip += 1) {
      const heightMm = (200 * (strip + 0.5)) / strips;
      const stripN = (1150 * 9.80665 * (200 - heightMm) * 300 * (200 / strips)) / 1e9;
      forceN += stripN;
      momentNmm += stripN * heightMm;
    }
    // The midpoint rule is exact for the push and 5e-9 off for the moment.
    expectClose(valueOf(boxWall(acrylicBox)).forceN, forceN, 1e-9, 'push');
    expectClose(valueOf(boxWall(acrylicBox)).forceHeightMm, momentNmm / forceN, 1e-7, 'height');
  });

  it.each([
    [6, 4.41],
    [12, 0.55],
  ])('acrylic of %d mm bows out %d mm [3 GPa, from memory; simply supported beam]', (wallMm, bulgeMm) => {
    expectClose(valueOf(boxWall({ ...acrylicBox, wallMm })).bulgeMm.value, bulgeMm, 2e-3, 'bulge');
  });

  it('the bulge is what the beam equation gives when it is integrated in steps', () => {
    // E I' w'' = -M with M = p x (b - x) / 2, a strip 1 mm high; by trapezoids from the middle, where the slope is 0.
    const steps = 20_000;
    const stepMm = 150 / steps;
    const stiffnessNmm = (3000 * 6 ** 3) / 12;
    const bend = (x: number): number => ((0.001 * 2.256 * x * (300 - x)) / 2 / stiffnessNmm) * stepMm;
    let slope = 0;
    let bulgeMm = 0;
    for (let step = 0; step < steps; step += 1) {
      const x = 150 - (step + 0.5) * stepMm;
      slope += bend(x);
      bulgeMm += (slope - bend(x) / 2) * stepMm;
    }
    const ours = wallBulgeMm({ pressureKPa: 2.256, wallWidthMm: 300, wallMm: 6, stiffnessGPa: 3 });
    expectClose(ours, bulgeMm, 1e-6, 'bulge');
  });

  it('the bulge takes 0.64 x 4.41 x 300 x 200 / 2 mm3 of rubber, 85 cm3', () => {
    expectClose(valueOf(boxWall(acrylicBox)).extraRubberCm3.value, 84.6, 2e-3, 'extra rubber');
  });

  it('the advised thickness and the advised span each bring the softest board to 1 mm', () => {
    const { neededWallMm, largestSpanMm } = valueOf(boxWall(acrylicBox));
    const thicker = valueOf(boxWall({ ...acrylicBox, wallMm: neededWallMm }));
    const braced = valueOf(boxWall({ ...acrylicBox, wallWidthMm: largestSpanMm }));
    expectClose(thicker.bulgeMm.high, 1, 1e-9, 'thicker');
    expectClose(braced.bulgeMm.high, 1, 1e-9, 'braced');
    const bulges = (wallMm: number): boolean =>
      valueOf(boxWall({ ...acrylicBox, wallMm })).findings.some(({ code }) => code === 'WALL_BULGES');
    expect(bulges(neededWallMm * 1.001)).toBe(false);
    expect(bulges(neededWallMm * 0.999)).toBe(true);
  });

  it('foam board of 5 mm gives way without a band: a Stop; acrylic of 6 mm is a Look', () => {
    const foamBoard = valueOf(boxWall({ ...acrylicBox, wallMm: 5, material: wallOf('foam-board') }));
    expect(foamBoard.findings[0]).toMatchObject({ code: 'WALL_BULGES', status: 'stop' });
    expect(valueOf(boxWall(acrylicBox)).findings[0]).toMatchObject({ code: 'WALL_BULGES', status: 'look' });
  });

  it('whether seams are tight is never taken for granted: Not checked, with the head of rubber', () => {
    const { findings } = valueOf(boxWall({ ...acrylicBox, wallMm: 30 }));
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({
      code: 'BOX_LEAKS',
      status: 'unknown',
      values: { rubberHeightMm: 200 },
    });
  });

  it('thicker or stiffer bulges less; wider or taller bulges more (random, seed 51)', () => {
    const random = lcg(51);
    for (let round = 0; round < 200; round += 1) {
      const wall = {
        rubberHeightMm: between(random, 20, 600),
        wallWidthMm: between(random, 20, 900),
        wallMm: between(random, 2, 25),
        siliconeKgM3: between(random, 1000, 1400),
        material: WALL_MATERIALS[Math.floor(random() * WALL_MATERIALS.length)]!,
      };
      const bulge = (change: Partial<BoxWall>): number =>
        valueOf(boxWall({ ...wall, ...change })).bulgeMm.value;
      const message = `seed 51, round ${round}`;
      expectClose(bulge({ wallMm: 2 * wall.wallMm }), bulge({}) / 8, 1e-12, message);
      expectClose(bulge({ wallWidthMm: 2 * wall.wallWidthMm }), 16 * bulge({}), 1e-12, message);
      expect(bulge({ rubberHeightMm: 1.1 * wall.rubberHeightMm }), message).toBeGreaterThan(bulge({}));
      const { bulgeMm } = valueOf(boxWall(wall));
      expect(bulgeMm.low, message).toBeLessThan(bulgeMm.value);
      expect(bulgeMm.value, message).toBeLessThan(bulgeMm.high);
    }
  });

  it.each<[Partial<BoxWall>, string, string]>([
    [{ wallMm: 0 }, 'INPUT_OUT_OF_BOUNDS', 'wallMm'],
    [{ wallWidthMm: Number.NaN }, 'INPUT_NOT_A_NUMBER', 'wallWidthMm'],
    [{ rubberHeightMm: -200 }, 'INPUT_OUT_OF_BOUNDS', 'rubberHeightMm'],
    [{ siliconeKgM3: 1.15 }, 'INPUT_OUT_OF_BOUNDS', 'siliconeKgM3'],
    [
      { material: { key: 'x', title: 'X', stiffness: { value: 0, low: 0, high: 0, unit: 'GPa', from: '' } } },
      'INPUT_OUT_OF_BOUNDS',
      'wallStiffnessGPa',
    ],
  ])('refuses %o', (change, code, input) => {
    const problem = problemOf(boxWall({ ...acrylicBox, ...change }));
    expect(problem).toMatchObject({ code, values: { input } });
  });
});

describe('a sculpt that floats', () => {
  it.each([
    [1150, 1000, 300, 8.34],
    [1120, 2000, 450, 17.6],
  ])(
    'rubber of %d kg/m3, %d cm3 under it, sculpt of %d g: %d N up (Archimedes)',
    (rho, cm3, massG, forceN) => {
      const force = floatForceN({ siliconeKgM3: rho, submergedCm3: cm3, sculptMassG: massG });
      expectClose(force, forceN, 3e-3, 'lift');
    },
  );

  it('is told what holds it: 8.34 N are 0.85 kg, and twice that is advised', () => {
    const { floating, findings } = valueOf(
      floatCheck({ siliconeKgM3: 1150, submergedCm3: 1000, sculptMassG: 300 }),
    );
    expectClose(floating!.weightKg, 0.85, 1e-12, 'weight');
    expect(findings[0]).toMatchObject({ code: 'SCULPT_FLOATS', status: 'look' });
    expectClose(Number(findings[0]!.values.holdKg), 1.7, 1e-12, 'hold');
  });

  it('loaded with exactly that weight it neither rises nor sinks, and there is nothing to say', () => {
    const { floating, findings } = valueOf(
      floatCheck({ siliconeKgM3: 1150, submergedCm3: 1000, sculptMassG: 300 + 850 }),
    );
    expect(Math.abs(floating!.forceN)).toBeLessThan(1e-12);
    expect(findings).toEqual([]);
  });

  it('a solid plaster sculpt stays down', () => {
    const { floating, findings } = valueOf(
      floatCheck({ siliconeKgM3: 1150, submergedCm3: 1000, sculptMassG: 1600 }),
    );
    expect(floating!.forceN).toBeLessThan(0);
    expect(findings).toEqual([]);
  });

  it('of unknown mass is Not checked, with the mass from which it stays: 1.15 kg', () => {
    const { floating, findings } = valueOf(floatCheck({ siliconeKgM3: 1150, submergedCm3: 1000 }));
    expect(floating).toBeUndefined();
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({
      code: 'SCULPT_MASS_UNKNOWN',
      status: 'unknown',
      values: { needG: 1150 },
    });
  });

  it.each([
    [{ siliconeKgM3: 1150, submergedCm3: -1, sculptMassG: 300 }, 'submergedCm3'],
    [{ siliconeKgM3: 0, submergedCm3: 1, sculptMassG: 300 }, 'siliconeKgM3'],
    [{ siliconeKgM3: 1150, submergedCm3: 1, sculptMassG: -300 }, 'sculptMassG'],
  ])('refuses %o', (sculpt, input) => {
    expect(problemOf(floatCheck(sculpt))).toMatchObject({ code: 'INPUT_OUT_OF_BOUNDS', values: { input } });
  });
});

describe('lifting the mold (15 kg: common practice, no source)', () => {
  it('15 kg is one person, 15.1 kg are two', () => {
    expect(liftFindings(15_000)).toEqual([]);
    expect(liftFindings(15_100)[0]).toMatchObject({
      code: 'LIFT_HEAVY',
      status: 'look',
      values: { massKg: 15.1, lookKg: 15 },
    });
  });
});
