import { describe, expect, it } from 'vitest';
import {
  absolutePressureKPa,
  ambientAtHeightKPa,
  containerLimitG,
  degasFindings,
  drainedFilmMm,
  fillFindings,
  fillTimeMin,
  frothRatio,
  leastTubeMm,
  sagFindings,
  standingCoatMm,
  tubeFlowMlS,
  yieldStressFromStickPa,
} from '../../../src/yield';
import { expectClose } from '../../support/close';
import { problemOf, valueOf } from '../../support/outcome';

/** Kilopascals in one inch of mercury, conventional (NIST SP 811, from memory, not verified). */
const KPA_PER_INHG = 3.38639;

describe('degassing', () => {
  it('10 % of air at 29 inches of mercury swells the mix 4.15 times, at 27 inches 1.92 times (Boyle, arithmetic)', () => {
    expect(valueOf(frothRatio({ entrainedAirShare: 0.1, pressureKPa: 3.12 })).toFixed(2)).toBe('4.15');
    const at27KPa = valueOf(absolutePressureKPa({ vacuumKPa: 27 * KPA_PER_INHG }));
    expect(valueOf(frothRatio({ entrainedAirShare: 0.1, pressureKPa: at27KPa })).toFixed(2)).toBe('1.92');
  });

  it('without vacuum, or without air in it, nothing swells', () => {
    expect(valueOf(frothRatio({ pressureKPa: 101.325 }))).toBe(1);
    expect(valueOf(frothRatio({ pressureKPa: 3, entrainedAirShare: 0 }))).toBe(1);
  });

  it('a 2 L cup filled to a quarter takes 550 g at 1.10 (arithmetic)', () => {
    expectClose(containerLimitG({ containerCm3: 2000, densityKgM3: 1100, frothRatio: 4 }), 550, 1e-12);
    expect(containerLimitG({ containerCm3: 2000, densityKgM3: 1100 })).toBe(550);
  });

  it('up a mountain the same vacuum reads less on the gauge: at 1500 m, 84.56 kPa of air (ISO 2533 table), no gauge shows 29 inches', () => {
    const ambientKPa = ambientAtHeightKPa(1500);
    expectClose(ambientKPa, 84.556, 1e-4);
    expectClose(ambientAtHeightKPa(0), 101.325, 1e-12);
    const gaugeKPa = ambientKPa - 3.12;
    expect(gaugeKPa / KPA_PER_INHG).toBeLessThan(24.1);
    expectClose(valueOf(absolutePressureKPa({ vacuumKPa: gaugeKPa, ambientKPa })), 3.12, 1e-12);
    const unreachable = absolutePressureKPa({ vacuumKPa: 29 * KPA_PER_INHG, ambientKPa });
    expect(problemOf(unreachable)).toMatchObject({
      code: 'INPUT_OUT_OF_BOUNDS',
      values: { input: 'vacuumKPa' },
    });
  });

  it('29 inches at sea level are enough, 27 are a look (common practice, no source)', () => {
    expect(degasFindings(101.325 - 29 * KPA_PER_INHG)).toEqual([]);
    expect(degasFindings(101.325 - 27 * KPA_PER_INHG)).toMatchObject([
      { code: 'DEGAS_WEAK', status: 'look' },
    ]);
  });

  it.each([
    ['pressure 0', { pressureKPa: 0 }],
    ['pressure not a number', { pressureKPa: NaN }],
    ['more pressure than the room has', { pressureKPa: 105, ambientKPa: 101 }],
    ['all air', { pressureKPa: 3, entrainedAirShare: 1 }],
  ])('refused: %s', (_, inputs) => {
    expect(problemOf(frothRatio(inputs)).code).toMatch(/^INPUT_/);
  });
});

describe('rubber through a funnel tube', () => {
  const MIX = { densityKgM3: 1100, viscosityPaS: 20 };

  it.each([
    [10, 0.132, 126],
    [20, 2.119, 7.9],
    [30, 10.73, 1.55],
  ])('%d mm: %d mL/s, a liter in %d min (Hagen and Poiseuille, by hand)', (diameterMm, mlS, minutes) => {
    const flowMlS = valueOf(tubeFlowMlS({ ...MIX, diameterMm }));
    // As many digits as were worked out by hand.
    expectClose(flowMlS, mlS, 5e-3);
    expectClose(fillTimeMin({ volumeCm3: 1000, flowMlS }), minutes, 5e-3);
  });

  it('twice the width lets through 16 times as much', () => {
    const flow = (diameterMm: number): number => valueOf(tubeFlowMlS({ ...MIX, diameterMm }));
    expectClose(flow(24) / flow(12), 16, 1e-12);
  });

  it('too slow for what is left of the pot life: stop, and the tube it names is just wide enough', () => {
    const [found] = valueOf(fillFindings({ ...MIX, volumeCm3: 1000, diameterMm: 10, leftMin: 15 }));
    expect(found).toMatchObject({ code: 'FILL_TOO_SLOW', status: 'stop' });
    const diameterMm = leastTubeMm({ ...MIX, volumeCm3: 1000, withinMin: 15 });
    expect(found!.values.leastTubeMm).toBe(diameterMm);
    const flowMlS = valueOf(tubeFlowMlS({ ...MIX, diameterMm }));
    expectClose(fillTimeMin({ volumeCm3: 1000, flowMlS }), 15, 1e-9);
    expect(valueOf(fillFindings({ ...MIX, volumeCm3: 1000, diameterMm: 20, leftMin: 15 }))).toEqual([]);
  });

  it('the 20 mm tube flows at a Reynolds number of 0.0074 (by hand); a viscosity a thousand times too small is refused', () => {
    const speedMS = 2.119e-6 / (Math.PI * 0.01 ** 2);
    expectClose((1100 * speedMS * 0.02) / 20, 0.0074, 5e-3);
    expect(problemOf(tubeFlowMlS({ diameterMm: 30, densityKgM3: 1100, viscosityPaS: 0.02 })).code).toBe(
      'FLOW_NOT_LAMINAR',
    );
  });

  it.each([
    ['no tube', { diameterMm: 0 }],
    ['no viscosity', { viscosityPaS: 0 }],
    ['density not a number', { densityKgM3: NaN }],
  ])('refused: %s', (_, change) => {
    expect(problemOf(tubeFlowMlS({ ...MIX, diameterMm: 20, ...change })).code).toMatch(/^INPUT_/);
  });

  it('refused: no time left, nothing to fill', () => {
    const fill = { ...MIX, diameterMm: 20, volumeCm3: 1000, leftMin: 10 };
    expect(problemOf(fillFindings({ ...fill, leftMin: 0 })).values.input).toBe('leftMin');
    expect(problemOf(fillFindings({ ...fill, volumeCm3: 0 })).values.input).toBe('volumeCm3');
  });
});

describe('what stays on an upright wall', () => {
  it('20 Pa s, 100 mm down, after 20 min: 0.393 mm (Jeffreys 1930, from memory, not verified)', () => {
    const film = { viscosityPaS: 20, heightMm: 100, densityKgM3: 1100, drainS: 1200 };
    expectClose(valueOf(drainedFilmMm(film)), 0.393, 1.5e-3);
    expectClose(valueOf(drainedFilmMm({ ...film, drainS: 4800 })), valueOf(drainedFilmMm(film)) / 2, 1e-12);
  });

  it('2 mm need a yield stress of 21.6 Pa, 3 mm 32.4 Pa at 1.10 (weight over face, arithmetic)', () => {
    expectClose(valueOf(yieldStressFromStickPa({ staysMm: 2, densityKgM3: 1100 })), 21.6, 2e-3);
    expectClose(valueOf(yieldStressFromStickPa({ staysMm: 3, densityKgM3: 1100 })), 32.4, 2e-3);
    expectClose(valueOf(standingCoatMm({ yieldStressPa: 21.57463, densityKgM3: 1100 })), 2, 1e-9);
  });

  it('a coat thicker than that sags', () => {
    expect(sagFindings({ coatMm: 1.5, staysMm: 0.39 })).toMatchObject([
      { code: 'COAT_SAGS', status: 'look' },
    ]);
    expect(sagFindings({ coatMm: 1.5, staysMm: 2 })).toEqual([]);
  });

  it('refused: no time, no density, no stress, no stick', () => {
    const film = { viscosityPaS: 20, heightMm: 100, densityKgM3: 1100, drainS: 1200 };
    for (const change of [{ drainS: 0 }, { densityKgM3: 0 }, { viscosityPaS: NaN }, { heightMm: -1 }])
      expect(problemOf(drainedFilmMm({ ...film, ...change })).code).toMatch(/^INPUT_/);
    expect(problemOf(standingCoatMm({ yieldStressPa: 0, densityKgM3: 1100 })).code).toMatch(/^INPUT_/);
    expect(problemOf(yieldStressFromStickPa({ staysMm: NaN, densityKgM3: 1100 })).code).toMatch(/^INPUT_/);
  });
});
