import { describe, expect, it } from 'vitest';
import {
  convectiveShare,
  diffusivityMm2S,
  effusivity,
  lumpedTimeMin,
  penetrationMm,
  SILICONE_HEAT,
  stepShare,
  tempAtDepthC,
  timeToReachMin,
} from '../../../src/yield';
import type { HeatedBody } from '../../../src/yield';
import { expectClose } from '../../support/close';
import { problemOf, valueOf } from '../../support/outcome';

/** rho c from k and alpha, as textbooks give them. */
const material = (conductivityWMK: number, alphaM2S: number) => ({
  conductivityWMK,
  densityKgM3: 8000,
  heatCapacityJKgK: conductivityWMK / alphaM2S / 8000,
});

const BRASS_PLATE: HeatedBody = {
  shape: 'slab',
  ...material(110, 33.9e-6),
  thicknessMm: 30,
  sides: 2,
  hWM2K: 80,
  surroundTempC: 700,
  startTempC: 25,
};

const STEEL_WALL: HeatedBody = {
  shape: 'slab',
  ...material(63.9, 18.8e-6),
  thicknessMm: 40,
  sides: 1,
  hWM2K: 500,
  surroundTempC: 60,
  startTempC: -20,
};

const BEAD: HeatedBody = {
  shape: 'sphere',
  conductivityWMK: 20,
  densityKgM3: 8500,
  heatCapacityJKgK: 400,
  thicknessMm: 0.706,
  hWM2K: 400,
  surroundTempC: 200,
  startTempC: 25,
};

/** A ball of rubber, 40 mm across, in a still box. */
const RUBBER_BALL: HeatedBody = {
  shape: 'sphere',
  ...SILICONE_HEAT,
  thicknessMm: 40,
  hWM2K: 8,
  surroundTempC: 45,
  startTempC: 20,
};

describe('problems of the textbooks', () => {
  it('a brass plate of 3 cm after 10 min in an oven at 700 C: surface 448.24 C by the full series; printed, from a table, 445 (Cengel, Heat and Mass Transfer, problem 4-36)', () => {
    const surfaceC = valueOf(tempAtDepthC(BRASS_PLATE, { depthMm: 0, minutes: 10 }));
    expect(Math.abs(surfaceC - 448.24)).toBeLessThan(0.05);
    expectClose(surfaceC, 445, 0.01, 'against the printed answer');
  });

  it('a steel pipe wall of 40 mm under hot oil for 8 min: 43.0 C at the insulated face, 45.4 at the wetted one; printed 42.9 and 45.2 (Incropera, from memory, not verified)', () => {
    const insulatedC = valueOf(tempAtDepthC(STEEL_WALL, { depthMm: 40, minutes: 8 }));
    const wettedC = valueOf(tempAtDepthC(STEEL_WALL, { depthMm: 0, minutes: 8 }));
    expect(Math.abs(insulatedC - 43.0)).toBeLessThan(0.05);
    expect(Math.abs(wettedC - 45.4)).toBeLessThan(0.05);
    // Read from a table with three digits: of the rise of 63 K it can be off by half a percent.
    expectClose(insulatedC + 20, 62.9, 5e-3, 'printed, insulated');
    expectClose(wettedC + 20, 65.2, 5e-3, 'printed, wetted');
  });

  it('a thermocouple bead of 0.706 mm takes 5.17 s from 25 to 199 in gas at 200 C, 5.2 printed (Incropera, from memory, not verified), and series and shortcut agree within 1 %', () => {
    const { minutes, biot, errorShare } = valueOf(lumpedTimeMin(BEAD, 199));
    expect(Math.abs(60 * minutes - 5.17)).toBeLessThan(0.005);
    expectClose(biot, (400 * 0.706e-3) / 6 / 20, 1e-12, 'Biot of volume over area');
    expect(Math.abs(errorShare)).toBeLessThan(0.01);
  });

  it.each([
    ['sphere', 1.1656, 1.1441],
    ['cylinder', 0.9408, 1.1143],
    ['slab', 0.6533, 1.0701],
  ] as const)(
    'the middle of a %s at Biot 0.5 follows the first-term formula of the textbooks, with the printed root %d and weight %d, once the further terms have died away',
    (shape, root, weight) => {
      const body: HeatedBody = { ...RUBBER_BALL, shape, hWM2K: 6.25 };
      for (const minutes of [40, 80]) {
        const fourier = (0.160256 * 60 * minutes) / 20 ** 2;
        const tempC = valueOf(tempAtDepthC(body, { depthMm: 20, minutes }));
        expect(Math.abs(tempC - (45 - 25 * weight * Math.exp(-(root ** 2) * fourier)))).toBeLessThan(0.01);
      }
    },
  );
});

describe('thick rubber', () => {
  it('silicone spreads warmth at 0.160 mm2/s and its effusivity is 624.5 (arithmetic)', () => {
    expectClose(valueOf(diffusivityMm2S(SILICONE_HEAT)), 0.160256, 1e-5, 'alpha');
    expect(Math.abs(valueOf(effusivity(SILICONE_HEAT)) - 624.5)).toBeLessThan(0.05);
  });

  it('5 mm under a face set to a temperature, 0.2538 of it has arrived after 60 s (erfc of 0.807, tables of Abramowitz & Stegun)', () => {
    const share = valueOf(stepShare({ depthMm: 5, minutes: 1, diffusivityMm2S: 0.16 }));
    expect(Math.abs(share - 0.2538)).toBeLessThan(0.5e-4);
  });

  it('at 12 mm about a fifth has arrived after 5 min (erfc 0.866 = 0.22)', () => {
    const share = valueOf(stepShare({ depthMm: 12, minutes: 5, diffusivityMm2S: 0.16 }));
    expect(Math.abs(share - 0.2207)).toBeLessThan(1e-4);
  });

  it.each([
    [1, 5.5],
    [5, 12.3],
    [15, 21.3],
  ])('after %d min the warmth is felt %d mm deep', (minutes, mm) => {
    expect(Math.abs(valueOf(penetrationMm({ minutes, diffusivityMm2S: 0.16 })) - mm)).toBeLessThan(0.05);
  });

  it('under warm air a thick wall agrees with the solution for a thick body, and with its limits: nothing at first, all under a hurricane', () => {
    const air = { depthMm: 3, diffusivityMm2S: 0.160256, conductivityWMK: 0.25 };
    const wall: HeatedBody = {
      shape: 'slab',
      ...SILICONE_HEAT,
      thicknessMm: 60,
      sides: 1,
      hWM2K: 25,
      surroundTempC: 1,
      startTempC: 0,
    };
    // 40 min: a Fourier number of 0.107, so the wall is reckoned by its series and not by the thick body itself.
    const thick = valueOf(convectiveShare({ ...air, minutes: 40, hWM2K: 25 }));
    expectClose(valueOf(tempAtDepthC(wall, { depthMm: 3, minutes: 40 })), thick, 1e-3, 'series');
    expect(valueOf(convectiveShare({ ...air, minutes: 0, hWM2K: 25 }))).toBe(0);
    expectClose(
      valueOf(convectiveShare({ ...air, minutes: 1, hWM2K: 20_000 })),
      valueOf(stepShare({ ...air, minutes: 1 })),
      0.02,
      'hurricane',
    );
    expect(valueOf(stepShare({ depthMm: 0, minutes: 0, diffusivityMm2S: 0.16 }))).toBe(1);
    expect(valueOf(stepShare({ depthMm: 3, minutes: 0, diffusivityMm2S: 0.16 }))).toBe(0);
  });

  it('the thick body and the series meet without a step in a slab, and within 2 and 4 % of what has arrived in cylinder and sphere', () => {
    for (const [shape, handOver, allowed] of [
      ['slab', 0.01, 3e-6],
      ['cylinder', 0.001, 0.02],
      ['sphere', 0.001, 0.04],
    ] as const) {
      const body: HeatedBody = { ...RUBBER_BALL, shape, startTempC: 0, surroundTempC: 1 };
      const unitMin = 400 / valueOf(diffusivityMm2S(SILICONE_HEAT)) / 60;
      const riseAt = (fourier: number): number =>
        valueOf(tempAtDepthC(body, { depthMm: 0, minutes: fourier * unitMin }));
      expectClose(riseAt(handOver * (1 - 1e-6)), riseAt(handOver * (1 + 1e-6)), allowed, shape);
    }
  });
});

describe('the shortcut of one temperature throughout', () => {
  it('is refused for a rubber ball at Biot 0.21, with what it would have said and the truth beside it', () => {
    const problem = problemOf(lumpedTimeMin(RUBBER_BALL, 40));
    expect(problem.code).toBe('WARM_LUMPED_WRONG');
    const { biot, lumpedMin, exactMin } = problem.values;
    expectClose(Number(biot), (8 * 0.04) / 6 / 0.25, 1e-12, 'Biot');
    expectClose(Number(lumpedMin), ((1200 * 1300 * 0.02) / 3 / 8 / 60) * Math.log(5), 1e-9, 'shortcut');
    expect(Number(exactMin)).toBeGreaterThan(Number(lumpedMin));
  });
});

it('of one temperature throughout, a slab keeps its warmth rho c L / h, a cylinder half and a sphere a third of it, times ln 2 for half the way (by hand)', () => {
  const thin = { ...SILICONE_HEAT, thicknessMm: 1, hWM2K: 5, startTempC: 0, surroundTempC: 40 };
  // 0.5 mm from the face to the middle: 1200 x 1300 x 0.0005 / 5 s = 2.6 min.
  for (const [shape, sides, minutes] of [
    ['slab', 1, 2 * 2.6],
    ['slab', 2, 2.6],
    ['cylinder', 2, 2.6 / 2],
    ['sphere', 2, 2.6 / 3],
  ] as const) {
    const lumped = valueOf(lumpedTimeMin({ ...thin, shape, sides }, 20));
    expectClose(lumped.minutes, minutes * Math.LN2, 1e-12, shape);
  }
});

describe('a body that cannot be', () => {
  it.each<[Partial<HeatedBody>, string, string]>([
    [{ thicknessMm: 0 }, 'INPUT_OUT_OF_BOUNDS', 'thicknessMm'],
    [{ thicknessMm: -8 }, 'INPUT_OUT_OF_BOUNDS', 'thicknessMm'],
    [{ hWM2K: 0 }, 'INPUT_OUT_OF_BOUNDS', 'hWM2K'],
    [{ hWM2K: Number.NaN }, 'INPUT_NOT_A_NUMBER', 'hWM2K'],
    [{ conductivityWMK: 0 }, 'INPUT_OUT_OF_BOUNDS', 'conductivityWMK'],
    [{ heatCapacityJKgK: 1.3 }, 'INPUT_OUT_OF_BOUNDS', 'heatCapacityJKgK'],
    [{ densityKgM3: 1.2 }, 'INPUT_OUT_OF_BOUNDS', 'densityKgM3'],
    [{ startTempC: Infinity }, 'INPUT_NOT_A_NUMBER', 'bodyTempC'],
    [{ sides: 3 as 2 }, 'INPUT_OUT_OF_BOUNDS', 'sides'],
  ])('refuses %o', (change, code, input) => {
    const at = { depthMm: 0, minutes: 1 };
    expect(problemOf(tempAtDepthC({ ...STEEL_WALL, ...change }, at))).toMatchObject({
      code,
      values: { input },
    });
  });

  it('refuses a depth outside the body, a time before the start and a target the air does not lead to', () => {
    const code = (depthMm: number, minutes: number): string =>
      problemOf(tempAtDepthC(STEEL_WALL, { depthMm, minutes })).code;
    expect(code(41, 1)).toBe('INPUT_OUT_OF_BOUNDS');
    expect(code(-1, 1)).toBe('INPUT_OUT_OF_BOUNDS');
    expect(code(0, -1)).toBe('INPUT_OUT_OF_BOUNDS');
    for (const targetTempC of [60, 61, -20, -21]) {
      expect(problemOf(timeToReachMin(STEEL_WALL, { depthMm: 0, targetTempC })).code).toBe(
        'WARM_UNREACHABLE',
      );
    }
    const inStillAir = { ...STEEL_WALL, surroundTempC: -20 };
    expect(problemOf(timeToReachMin(inStillAir, { depthMm: 0, targetTempC: 0 })).code).toBe(
      'WARM_UNREACHABLE',
    );
  });

  it('time and temperature are each the other turned round, at any depth and shape', () => {
    for (const shape of ['slab', 'cylinder', 'sphere'] as const) {
      const body: HeatedBody = { ...RUBBER_BALL, shape, sides: 2 };
      for (const depthMm of [0, 7, 20]) {
        for (const targetTempC of [21, 33, 44.9]) {
          const minutes = valueOf(timeToReachMin(body, { depthMm, targetTempC }));
          expectClose(valueOf(tempAtDepthC(body, { depthMm, minutes })), targetTempC, 1e-9, shape);
        }
      }
    }
  });
});
