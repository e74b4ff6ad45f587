import { describe, expect, it } from 'vitest';
import {
  burnsWithin,
  contactTempC,
  convectiveShare,
  densityFactorByTemperature,
  energyKJ,
  heaterMin,
  heatGunPass,
} from '../../../src/yield';
import { expectClose } from '../../support/close';
import { problemOf, valueOf } from '../../support/outcome';

/** A block thick enough that its far side never matters. */
const THICK = { wallMm: 100, startTempC: 20 };

describe('a heat gun on thick rubber', () => {
  it.each([
    [15, 76],
    [30, 92],
    [60, 108],
    [120, 126],
  ])('held on one spot for %d s it brings the surface to %d C (derived)', (seconds, tempC) => {
    const { surfaceTempC, findings } = valueOf(heatGunPass({ ...THICK, seconds }));
    expect(Math.abs(surfaceTempC.value - tempC)).toBeLessThanOrEqual(0.5);
    expect(findings[0]).toMatchObject({ code: 'WARM_SURFACE_HOT', status: 'stop' });
    const share = convectiveShare({
      depthMm: 0,
      minutes: seconds / 60,
      diffusivityMm2S: 0.25e6 / (1200 * 1300),
      conductivityWMK: 0.25,
      hWM2K: 60,
    });
    expectClose(surfaceTempC.value, 20 + 180 * valueOf(share), 1e-6, 'against the closed formula');
  });

  it('is over 50 C after some four seconds, while the back of 8 mm has not felt it; 6.7 min even it out (L2 / alpha 0.16: 6.66)', () => {
    const pass = valueOf(heatGunPass({ wallMm: 8, startTempC: 20, seconds: 3 }));
    expect(pass.findings).toEqual([]);
    const { value, low } = pass.secondsToLook!;
    expect(value).toBeGreaterThan(3);
    expect(value).toBeLessThan(5);
    expect(low).toBeLessThan(value);
    // After that many seconds the surface reaches 50 C at the end of its own range, and not a tenth of a second before.
    const { high } = pass.secondsToLook!;
    const hottestAt = (seconds: number): number =>
      valueOf(heatGunPass({ wallMm: 8, startTempC: 20, seconds })).surfaceTempC.high;
    const coolestAt = (seconds: number): number =>
      valueOf(heatGunPass({ wallMm: 8, startTempC: 20, seconds })).surfaceTempC.low;
    expectClose(hottestAt(low), 50, 1e-6, 'at the earliest');
    expectClose(coolestAt(high), 50, 1e-6, 'at the latest');
    const there = heatGunPass({ wallMm: 8, startTempC: 20, seconds: value });
    expectClose(valueOf(there).surfaceTempC.value, 50, 1e-9, 'at that second');
    expect(pass.deepTempC.value).toBeLessThan(20.01);
    expect(Math.abs(pass.waitMin - 6.66)).toBeLessThan(0.05);
    expect(pass.surfaceTempC.high).toBeGreaterThan(pass.surfaceTempC.value);
  });

  it('always brings both cautions, and gets nowhere with cool air', () => {
    const cool = valueOf(heatGunPass({ ...THICK, seconds: 10, airTempC: 45 }));
    expect(cool.cautions).toEqual(['heat-gun', 'measure-then-touch']);
    expect(cool.secondsToLook).toBeUndefined();
    expect(valueOf(heatGunPass({ wallMm: 8, startTempC: 55, seconds: 1 })).secondsToLook?.value).toBe(0);
  });

  it.each([
    [{ seconds: 0 }, 'seconds'],
    [{ seconds: 1e6 }, 'seconds'],
    [{ seconds: 10, wallMm: -8 }, 'wallMm'],
    [{ seconds: 10, airTempC: 2000 }, 'airTempC'],
  ])('refuses %o', (change, input) => {
    expect(problemOf(heatGunPass({ ...THICK, ...change }))).toMatchObject({
      code: 'INPUT_OUT_OF_BOUNDS',
      values: { input },
    });
  });
});

describe('what burns (times: ASTM C1055, ISO 13732-1; temperatures from memory, not verified)', () => {
  it.each([
    [43, 'not known to burn'],
    [44, 'hours'],
    [51, 'a minute'],
    [60, 'seconds'],
    [108, 'seconds'],
  ])('%d C: %s', (tempC, within) => {
    expect(valueOf(burnsWithin(tempC))).toBe(within);
  });

  it('a temperature that is none is not called harmless', () => {
    expect(problemOf(burnsWithin(Number.NaN)).code).toBe('INPUT_NOT_A_NUMBER');
  });
});

describe('where foam touches the mold', () => {
  const ALUMINUM = { conductivityWMK: 237, densityKgM3: 2700, heatCapacityJKgK: 900 };

  it.each([
    ['silicone at 40 C', { moldTempC: 40 }, 32.7],
    ['silicone at 20 C', { moldTempC: 20 }, 22.4],
    ['a metal mold at 20 C', { moldTempC: 20, mold: ALUMINUM }, 20.1],
  ])('mix of 25 C on %s (Carslaw & Jaeger, from memory, not verified)', (_name, mold, tempC) => {
    expect(Math.abs(valueOf(contactTempC({ mixTempC: 25, ...mold })) - tempC)).toBeLessThanOrEqual(0.05);
  });

  it('about half of the excess of a silicone mold arrives, and equal temperatures stay', () => {
    const share = (valueOf(contactTempC({ mixTempC: 25, moldTempC: 40 })) - 25) / 15;
    expect(share).toBeGreaterThan(0.45);
    expect(share).toBeLessThan(0.55);
    expectClose(valueOf(contactTempC({ mixTempC: 30, moldTempC: 30 })), 30, 1e-12, 'equal');
  });

  it('refuses a mix that boils and a material of nothing', () => {
    expect(problemOf(contactTempC({ mixTempC: 300, moldTempC: 30 })).values.input).toBe('mixTempC');
    const nothing = { ...ALUMINUM, densityKgM3: 0 };
    expect(problemOf(contactTempC({ mixTempC: 25, moldTempC: 30, mold: nothing })).values.input).toBe(
      'densityKgM3',
    );
  });
});

describe('how much warmth', () => {
  const TWO_KG = { massG: 2000, startTempC: 20, targetTempC: 40 };

  it('2 kg of silicone from 20 to 40 C take 52 kJ: about 2 min of a 1.5 kW gun of which 30 % stay (arithmetic)', () => {
    expectClose(valueOf(energyKJ(TWO_KG)), 52, 1e-12, 'kJ');
    expectClose(valueOf(heaterMin({ ...TWO_KG, powerW: 1500 })), 52 / 0.45 / 60, 1e-12, 'min');
  });

  it('refuses a mass below nothing and a heater without power', () => {
    expect(problemOf(energyKJ({ ...TWO_KG, massG: -1 })).values.input).toBe('massG');
    expect(problemOf(heaterMin({ ...TWO_KG, powerW: 0 })).values.input).toBe('powerW');
    expect(problemOf(heaterMin({ ...TWO_KG, powerW: 1500, arrivingShare: 2 })).values.input).toBe(
      'arrivingShare',
    );
  });
});

describe('free rise in the cold', () => {
  const factor = (warmerK: number, isCupOfToday = false) =>
    valueOf(densityFactorByTemperature({ warmerK, isCupOfToday }));

  it('5 K colder is 2 to 5 % heavier (common practice, no source), 10 K twice that, warmer is lighter', () => {
    const colder = factor(-5);
    expectClose(colder.low, 1.02, 1e-12, 'low');
    expectClose(colder.high, 1.05, 1e-12, 'high');
    expectClose(factor(-10).high, 1.05 ** 2, 1e-12, 'twice');
    const warmer = factor(5);
    expect(warmer.value).toBeLessThan(1);
    expect(warmer.low).toBeLessThan(warmer.value);
    expect(warmer.high).toBeGreaterThan(warmer.value);
    expect(factor(0)).toEqual({ value: 1, low: 1, high: 1, from: 'assumed' });
  });

  it('it is more than the gas alone: 298.15 to 303.15 K at a gas share of 0.85 would be 1.4 % (ideal gas)', () => {
    expect(1 / factor(5).value - 1).toBeGreaterThan(0.85 * (303.15 / 298.15 - 1));
  });

  it('a cup test of today has it inside: nothing is corrected twice', () => {
    expect(factor(-8, true)).toEqual({ value: 1, low: 1, high: 1, from: 'cup-test' });
  });

  it('refuses 50 K, where nobody knows', () => {
    expect(problemOf(densityFactorByTemperature({ warmerK: -50, isCupOfToday: false })).code).toBe(
      'INPUT_OUT_OF_BOUNDS',
    );
  });
});
