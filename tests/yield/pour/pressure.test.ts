import { describe, expect, it } from 'vitest';
import {
  closedCellGaugeKPa,
  gasInMoldCm3,
  idealGasGaugeKPa,
  packAtGauge,
  peakPressure,
  PRESSURE_CAVEATS,
  residualTrapCm3,
  storedEnergyJ,
  unventedGaugeKPa,
  waterCapKPa,
} from '../../../src/yield';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';
import { expectPrinted } from '../../support/printed';

/** 10 pcf out of a liquid of 1070 kg/m3. */
const TEN_PCF = { freeRiseKgM3: 160.184634, liquidKgM3: 1070 };
const gaugeAt = (packFactor: number): number => valueOf(idealGasGaugeKPa({ ...TEN_PCF, packFactor }));

describe('pressure of a packed foam (ideal gas, derived from textbook physics)', () => {
  it.each([
    [1.1, '12.130', '1.119714'],
    [1.2, '24.703', '1.243797'],
    [1.3, '37.743', '1.372494'],
    [1.5, '65.334', '1.644793'],
    [2.0, '144.628', '2.427369'],
  ])('T10: pack %d gives %s kPa gauge, %s times the air (computed)', (pack, gaugeKPa, ratio) => {
    expectPrinted(gaugeAt(pack), gaugeKPa);
    expectPrinted(1 + gaugeAt(pack) / 101.325, ratio);
  });

  it('at pack 1 there is none', () => {
    expect(Math.abs(gaugeAt(1))).toBeLessThan(1e-12);
  });

  it('is what Boyle says when the gas of a liter of free foam is pressed into what the packed foam leaves it', () => {
    const gasBefore = 1 / 160.184634 - 1 / 1070;
    const gasAfter = 1 / (1.4 * 160.184634) - 1 / 1070;
    expectClose(gaugeAt(1.4), 101.325 * (gasBefore / gasAfter - 1), 1e-12);
  });

  it('T10 backward: the pack for a pressure is the one that gives it (random, seed 10)', () => {
    const random = lcg(10);
    for (let round = 0; round < 200; round += 1) {
      const foam = {
        freeRiseKgM3: between(random, 30, 300),
        liquidKgM3: between(random, 1000, 1200),
        ambientKPa: between(random, 70, 105),
      };
      const packFactor = between(random, 1, 2.5);
      const gaugeKPa = valueOf(idealGasGaugeKPa({ ...foam, packFactor }));
      expectClose(valueOf(packAtGauge({ ...foam, gaugeKPa })), packFactor, 1e-9, `seed 10, round ${round}`);
    }
  });

  it('T11: unvented air at pack 1.2, 293.15 to 350 K, makes 145.7 kPa, six times the vented 24.7', () => {
    const gaugeKPa = valueOf(
      unventedGaugeKPa({ ...TEN_PCF, packFactor: 1.2, airTempK: 293.15, gasTempK: 350 }),
    );
    expectPrinted(gaugeKPa, '145.7');
    expectClose(gaugeKPa, 126.03 + 120.97 - 101.325, 1e-4, 'carbon dioxide and air (Dalton)');
    expect(gaugeKPa / gaugeAt(1.2)).toBeGreaterThan(5.8);
  });

  it('T12: 1 kg of mix with 0.5 % of water at 380 K in 5.2 L can make 205.58 kPa absolute and no more', () => {
    const cap = waterCapKPa({
      mixedG: 1000,
      waterShare: 0.005,
      gasTempK: 380,
      cavityCm3: 5200,
      liquidKgM3: 1070,
    });
    expectPrinted(valueOf(cap), '205.58');
  });

  it.each([
    [80, 1.1, '11.0'],
    [80, 1.2, '22.2'],
    [80, 1.5, '56.9'],
    [160, 1.1, '12.1'],
    [160, 1.25, '31.0'],
    [160, 1.5, '64.8'],
    [240, 1.25, '34.8'],
  ])('closed cells of %d kg/m3 at pack %d: %s kPa (isothermal, solid of 1100, derived)', (rho, pack, kPa) => {
    const foam = { freeRiseKgM3: rho, packFactor: pack, ambientKPa: 101.3 };
    expectPrinted(valueOf(closedCellGaugeKPa(foam)), kPa);
  });

  it('T16: 5.2 L at pack 1.5 hold 878 J (Brode, gamma 1.3, from memory)', () => {
    const gasCm3 = gasInMoldCm3({ ...TEN_PCF, packFactor: 1.5, cavityCm3: 5200 });
    expectPrinted(valueOf(storedEnergyJ({ gaugeKPa: gaugeAt(1.5), gasCm3 })), '878');
  });

  it('20 kPa only press a trapped pocket of air to 83.5 % (Boyle): pressure does not cure a trap', () => {
    expectPrinted(
      valueOf(residualTrapCm3({ trappedCm3: 12, gaugeKPa: 20, ambientKPa: 101.3 })) / 12,
      '0.835',
    );
  });
});

describe('the pressure a clamp is made for', () => {
  it('is the ideal-gas figure, a factor of two either way, but never under 20 kPa', () => {
    const low = valueOf(peakPressure({ ...TEN_PCF, packFactor: 1.1 }));
    expectPrinted(low.value, '12.130');
    expect([low.low, low.high]).toEqual([low.value / 2, low.value * 2]);
    expect(low.designKPa).toBe(20);
    const high = valueOf(peakPressure({ ...TEN_PCF, packFactor: 1.3 }));
    expect(high.designKPa).toBe(high.value);
  });

  it('says what drives the real one above it: gas kept in, unvented air, a hotter core', () => {
    const { caveats, from } = valueOf(peakPressure({ ...TEN_PCF, packFactor: 1.3 }));
    expect(caveats).toEqual(PRESSURE_CAVEATS);
    expect(caveats.slice(0, 3)).toEqual(['gas-kept-in', 'unvented-air', 'hot-core']);
    expect(from).toBe('assumed');
  });

  it('a measured peak wins, as it is at its own pack and in proportion at another', () => {
    const measured = { packFactor: 1.2, peakKPa: 10 };
    const same = valueOf(peakPressure({ ...TEN_PCF, packFactor: 1.2 }, measured));
    expect(same).toMatchObject({ value: 10, low: 7.5, high: 12.5, from: 'given', designKPa: 10 });
    const more = valueOf(peakPressure({ ...TEN_PCF, packFactor: 1.3 }, measured));
    expectClose(more.value, (10 * 37.743) / 24.703, 1e-4);
  });

  it('a peak measured at pack 1 says nothing about another pack and is refused', () => {
    const peak = peakPressure({ ...TEN_PCF, packFactor: 1.3 }, { packFactor: 1, peakKPa: 10 });
    expect(problemOf(peak)).toMatchObject({ code: 'INPUT_OUT_OF_BOUNDS' });
  });

  it('more pack always means more pressure, thinner air less (random, seed 11)', () => {
    const random = lcg(11);
    for (let round = 0; round < 300; round += 1) {
      const foam = {
        freeRiseKgM3: between(random, 20, 350),
        liquidKgM3: between(random, 1000, 1200),
        packFactor: between(random, 1.01, 2.4),
        ambientKPa: between(random, 60, 108),
      };
      const kPa = (change: Partial<typeof foam>): number => valueOf(idealGasGaugeKPa({ ...foam, ...change }));
      const message = `seed 11, round ${round}`;
      expect(kPa({ packFactor: foam.packFactor + 0.05 }), message).toBeGreaterThan(kPa({}));
      expect(kPa({ ambientKPa: foam.ambientKPa - 1 }), message).toBeLessThan(kPa({}));
      const unvented = valueOf(unventedGaugeKPa(foam));
      expect(unvented, message).toBeGreaterThan(kPa({}));
    }
  });
});

describe('what is refused', () => {
  const packed = { ...TEN_PCF, packFactor: 1.3 };
  it.each([
    ['pack 3', { packFactor: 3 }, 'PACK_REFUSED'],
    ['pack not a number', { packFactor: Number.NaN }, 'INPUT_NOT_A_NUMBER'],
    ['foam as heavy as its liquid', { freeRiseKgM3: 900 }, 'NOT_A_FOAM'],
    ['free rise 0', { freeRiseKgM3: 0 }, 'INPUT_OUT_OF_BOUNDS'],
    ['air of 1013 hPa typed as kPa', { ambientKPa: 1013 }, 'INPUT_OUT_OF_BOUNDS'],
    ['liquid in g/cm3', { liquidKgM3: 1.07 }, 'INPUT_OUT_OF_BOUNDS'],
  ])('%s', (_, change, code) => {
    expect(problemOf(idealGasGaugeKPa({ ...packed, ...change })).code).toBe(code);
    expect(problemOf(unventedGaugeKPa({ ...packed, ...change })).code).toBe(code);
    expect(problemOf(peakPressure({ ...packed, ...change })).code).toBe(code);
  });

  it('more liquid than the cavity holds, a negative pressure, a foam that is none, a gas without heat capacity', () => {
    const water = { waterShare: 0.005, gasTempK: 380, cavityCm3: 500, liquidKgM3: 1070 };
    expect(problemOf(waterCapKPa({ ...water, mixedG: 1000 })).code).toBe('LIQUID_OVER_CAVITY');
    expect(problemOf(packAtGauge({ ...TEN_PCF, gaugeKPa: -1 })).values.input).toBe('gaugeKPa');
    expect(problemOf(packAtGauge({ freeRiseKgM3: 900, liquidKgM3: 900, gaugeKPa: 1 })).code).toBe(
      'NOT_A_FOAM',
    );
    expect(problemOf(storedEnergyJ({ gaugeKPa: 10, gasCm3: 10, gasGamma: 1 })).values.input).toBe('gasGamma');
    expect(problemOf(residualTrapCm3({ trappedCm3: Number.NaN, gaugeKPa: 1 })).code).toBe(
      'INPUT_NOT_A_NUMBER',
    );
    expect(problemOf(unventedGaugeKPa({ ...packed, airTempK: 20 })).values.input).toBe('airTempK');
    expect(problemOf(peakPressure(packed, { packFactor: 1.2, peakKPa: 0 })).values.input).toBe('peakKPa');
    expect(problemOf(peakPressure(packed, { packFactor: 9, peakKPa: 1 })).code).toBe('PACK_REFUSED');
  });
});
