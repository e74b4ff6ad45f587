import { describe, expect, it } from 'vitest';
import { correctForAir, densityInAir, pressureSensitivity, stationAir } from '../../../src/yield';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';
import { expectPrinted } from '../../support/printed';

const TEN_PCF = { freeRiseKgM3: 160.184634, liquidKgM3: 1070 };
const stationPa = (altitudeM: number): number => 1000 * valueOf(stationAir({ altitudeM })).value;

describe('air at a height (US Standard Atmosphere 1976, ISO 2533)', () => {
  it.each([
    [0, 101325.0, 160.185],
    [500, 95460.8, 152.233],
    [1000, 89874.6, 144.528],
    [1500, 84556.0, 137.071],
    [1609.344, 83427.6, 135.473],
    [2000, 79495.2, 129.862],
    [3000, 70108.5, 116.194],
  ])('T17: at %d m %d Pa, and a foam of 160.18 rises to %d kg/m3', (altitudeM, pa, kgM3) => {
    // The table is good to 0.5 Pa and 0.005 kg/m3.
    expect(Math.abs(stationPa(altitudeM) - pa)).toBeLessThanOrEqual(0.5);
    const density = valueOf(
      densityInAir({ ...TEN_PCF, thenKPa: 101.325, nowKPa: stationPa(altitudeM) / 1000 }),
    );
    expect(Math.abs(density - kgM3)).toBeLessThanOrEqual(0.005);
  });

  it.each([
    [500, '0.9546'],
    [1000, '0.8988'],
    [1500, '0.8456'],
    [2000, '0.7950'],
    [3000, '0.7012'],
  ])('T17: %d m are %s bar in the printed ISO table, which counts heights with a ruler', (rulerM, bar) => {
    // The formula counts them by weight lifted (geopotential): H = r h / (r + h), r = 6 356 766 m (ISO 2533). 13 Pa at 3000 m.
    const geopotentialM = (6_356_766 * rulerM) / (6_356_766 + rulerM);
    expectPrinted(stationPa(geopotentialM) / 1e5, bar);
  });

  it('T18: 5 K warmer gas, 298.15 to 303.15 K, is 1.4 % lighter (0.98594)', () => {
    const warm = densityInAir({ ...TEN_PCF, thenKPa: 101.325, nowKPa: 101.325, thenK: 298.15, nowK: 303.15 });
    expectPrinted(valueOf(warm) / TEN_PCF.freeRiseKgM3, '0.98594');
  });

  it('1 kPa less is 0.84 % lighter, and the gas share 0.850 says so (numeric derivative)', () => {
    const at = (nowKPa: number): number => valueOf(densityInAir({ ...TEN_PCF, thenKPa: 101.325, nowKPa }));
    expectPrinted(100 * (at(100.325) / at(101.325) - 1), '-0.84');
    expectPrinted(pressureSensitivity(TEN_PCF), '0.850');
    const h = 1e-4;
    const slope = (Math.log(at(101.325 * (1 + h))) - Math.log(at(101.325 * (1 - h)))) / (2 * h);
    expectClose(pressureSensitivity(TEN_PCF), slope, 1e-6);
  });
});

describe('which air is taken', () => {
  it('a barometer wins over the height, the height over nothing; each says so and how sure it is', () => {
    const read = valueOf(stationAir({ stationKPa: 84, altitudeM: 1500 }));
    expect(read).toMatchObject({ value: 84, by: 'barometer', from: 'given', findings: [] });
    const height = valueOf(stationAir({ altitudeM: 1500 }));
    expect(height).toMatchObject({ by: 'altitude', from: 'assumed' });
    expect(height.high - height.low).toBeGreaterThan(read.high - read.low);
    expect(valueOf(stationAir({}))).toMatchObject({ value: 101.325, by: 'sea level' });
  });

  it('a weather report at 1500 m (101 kPa) is asked about: it is reduced to sea level', () => {
    const { findings } = valueOf(stationAir({ stationKPa: 101, altitudeM: 1500 }));
    expect(findings).toMatchObject([{ code: 'AIR_PRESSURE_UNLIKELY', status: 'look' }]);
  });
});

describe('how sure the corrected density is (by hand, of the rules as told in docs/rules.md)', () => {
  const correct = (change: Partial<Parameters<typeof correctForAir>[0]>) =>
    valueOf(correctForAir({ ...TEN_PCF, cupTestedToday: false, today: {}, ...change })).freeRiseKgM3;
  const gasShare = 1 - 160.184634 / 1070;

  it('a barometer is off by 0.3 kPa, the weather at a height by 1.5: twice that, times the gas share', () => {
    const read = correct({ today: { stationKPa: 90 } });
    expectClose(read.low, read.value * (1 - (gasShare * 0.6) / 90), 1e-12);
    expectClose(read.high, read.value * (1 + (gasShare * 0.6) / 90), 1e-12);
    const height = correct({ today: { altitudeM: 0 }, then: { stationKPa: 101.325 } });
    expectClose(height.high, height.value * (1 + (gasShare * 3) / 101.325), 1e-12);
  });

  it('5 K warmer may be 5 x (1 - 0.24) % lighter still, 5 K colder as much denser; the other end is the value', () => {
    const warmer = correct({ then: { ingredientsC: 20 }, ingredientsC: 25 });
    expectClose(warmer.low, warmer.value * (1 - 0.038), 1e-12);
    expect(warmer.high).toBe(warmer.value);
    const colder = correct({ then: { ingredientsC: 20 }, ingredientsC: 15 });
    expectClose(colder.high, colder.value * (1 + 0.038), 1e-12);
    expect(colder.low).toBe(colder.value);
  });

  it('a reading is asked about from 5 kPa on, above and below the standard of the height', () => {
    const asked = (stationKPa: number): number =>
      valueOf(stationAir({ stationKPa, altitudeM: 0 })).findings.length;
    expect([96.3, 96.35, 106.3, 106.35].map(asked)).toEqual([1, 0, 0, 1]);
    expect(valueOf(stationAir({ stationKPa: 60 })).findings).toEqual([]);
  });
});

describe('never corrected twice', () => {
  const inputs = {
    ...TEN_PCF,
    today: { altitudeM: 1609.344 },
    then: { ingredientsC: 23 },
    ingredientsC: 28,
  };

  it('a cup test of the day in the same room is left as it is, and says why', () => {
    const left = valueOf(correctForAir({ ...inputs, cupTestedToday: true }));
    expect(left.freeRiseKgM3.value).toBeCloseTo(160.184634, 12);
    expect(left.applied).toEqual([]);
    expect(left.because).toEqual([
      { left: 'pressure', why: 'same-day cup test' },
      { left: 'warmth', why: 'same-day cup test' },
    ]);
  });

  it('a label is corrected for both, and warmth counts 1.2 % for 5 K by the gas, up to 5 % in practice', () => {
    const both = valueOf(correctForAir({ ...inputs, cupTestedToday: false }));
    expect(both.applied).toEqual(['pressure', 'warmth']);
    expect(both.because).toEqual([]);
    const cold = valueOf(correctForAir({ ...inputs, ingredientsC: 23, cupTestedToday: false }));
    expectPrinted(cold.freeRiseKgM3.value, '135.473');
    const lighter = 1 - both.freeRiseKgM3.value / cold.freeRiseKgM3.value;
    expectPrinted(100 * lighter, '1.2');
    expect(both.freeRiseKgM3.low).toBeLessThan(0.955 * cold.freeRiseKgM3.value);
  });

  it('what was not told is not corrected, and named', () => {
    const none = valueOf(correctForAir({ ...TEN_PCF, today: {}, cupTestedToday: false }));
    expect(none.applied).toEqual([]);
    expect(none.because).toEqual([
      { left: 'pressure', why: 'not told' },
      { left: 'warmth', why: 'not told' },
    ]);
    expect(none.freeRiseKgM3).toMatchObject({ from: 'given' });
    expectClose(none.freeRiseKgM3.value, 160.184634, 1e-12);
  });

  it('an old cup test made at 1000 m is corrected from there, not from the sea', () => {
    const moved = {
      ...TEN_PCF,
      today: { altitudeM: 1000 },
      then: { altitudeM: 1000 },
      cupTestedToday: false,
    };
    const same = valueOf(correctForAir(moved));
    expectClose(same.freeRiseKgM3.value, 160.184634, 1e-12);
    expect(same.thenKPa.by).toBe('altitude');
  });

  it('higher is lighter, warmer is lighter, and the value lies in its range (random, seed 17)', () => {
    const random = lcg(17);
    for (let round = 0; round < 200; round += 1) {
      const altitudeM = between(random, 0, 4000);
      const degrees = between(random, 10, 35);
      const foam = { freeRiseKgM3: between(random, 30, 400), liquidKgM3: between(random, 1000, 1150) };
      const at = (up: number, warmer: number): number => {
        const { freeRiseKgM3 } = valueOf(
          correctForAir({
            ...foam,
            cupTestedToday: false,
            today: { altitudeM: altitudeM + up },
            then: { ingredientsC: 23 },
            ingredientsC: degrees + warmer,
          }),
        );
        expect(freeRiseKgM3.low).toBeLessThanOrEqual(freeRiseKgM3.value);
        expect(freeRiseKgM3.high).toBeGreaterThanOrEqual(freeRiseKgM3.value);
        return freeRiseKgM3.value;
      };
      const message = `seed 17, round ${round}`;
      expect(at(50, 0), message).toBeLessThan(at(0, 0));
      expect(at(0, 1), message).toBeLessThan(at(0, 0));
    }
  });
});

describe('what is refused', () => {
  it.each([
    ['a height in space', { altitudeM: 40_000 }, 'altitudeM'],
    ['pressure in hPa', { stationKPa: 1013 }, 'stationKPa'],
    ['pressure not a number', { stationKPa: Number.NaN }, 'stationKPa'],
  ])('%s', (_, air, input) => {
    expect(problemOf(stationAir(air)).values.input).toBe(input);
    const today = correctForAir({ ...TEN_PCF, cupTestedToday: false, today: air });
    expect(problemOf(today).values.input).toBe(input);
    const then = correctForAir({ ...TEN_PCF, cupTestedToday: false, today: {}, then: air });
    expect(problemOf(then).values.input).toBe(input);
  });

  it('ingredients of 300 C, a foam heavier than its liquid', () => {
    const hot = { ...TEN_PCF, cupTestedToday: false, today: {}, ingredientsC: 300 };
    expect(problemOf(correctForAir(hot)).values.input).toBe('ingredientsC');
    const before = { ...TEN_PCF, cupTestedToday: false, today: {}, then: { ingredientsC: 300 } };
    expect(problemOf(correctForAir(before)).values.input).toBe('ingredientsC');
    const heavy = { freeRiseKgM3: 1000, liquidKgM3: 900, thenKPa: 100, nowKPa: 90 };
    expect(problemOf(densityInAir(heavy)).code).toBe('NOT_A_FOAM');
    expect(problemOf(densityInAir({ ...TEN_PCF, thenKPa: 0, nowKPa: 90 })).values.input).toBe('stationKPa');
  });
});
