import { describe, expect, it } from 'vitest';
import {
  expansionRatio,
  massRatio,
  mixedLiquidKgM3,
  partsAPer100B,
  partsBPer100A,
  shareOfA,
  targetAG,
} from '../../src/yield/foam';
import type { MixRatio } from '../../src/yield/foam';
import { co2GPerKg, gasLossFromDensity, waterGPerKg } from '../../src/yield/gas';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';
import { expectPrinted } from '../support/printed';

const byMass = (a: number, b: number): { a: number; b: number; by: 'mass' } => ({ a, b, by: 'mass' });

describe('ratio and liquid (closed formulas, computed independently in double precision)', () => {
  it('T4: density of the mixed liquid and its expansion', () => {
    const liquid = mixedLiquidKgM3(byMass(52, 100), { aKgM3: 1200, bKgM3: 1030 });
    expectPrinted(liquid, '1082.461');
    expectPrinted(expansionRatio(liquid, 160.184634), '6.75759');
    expectPrinted(expansionRatio(1070, 160.184634), '6.6798');
  });

  it('T7: parts A per 100 B, the reverse, and the share of A', () => {
    expectClose(partsAPer100B(byMass(52, 100)), 52, 1e-12);
    expectPrinted(partsBPer100A(byMass(52, 100)), '192.307692');
    expectPrinted(shareOfA(byMass(52, 100)), '0.342105');
  });

  it('fits A to the B that lies in the cup', () => expectClose(targetAG(byMass(55, 100), 212), 116.6, 1e-12));

  it('turns a ratio by volume into one by mass through both densities (2:1, 1.10 and 1.20 g/mL: 100:54.5)', () => {
    const mass = valueOf(massRatio({ a: 2, b: 1, by: 'volume' }, { aKgM3: 1100, bKgM3: 1200 }));
    expectClose(partsBPer100A(mass), 1200 / 22, 1e-12);
    expect(mass.by).toBe('mass');
  });

  it('never guesses a density: by volume without both is a problem', () => {
    expect(problemOf(massRatio({ a: 2, b: 1, by: 'volume' }))).toMatchObject({
      code: 'PART_DENSITIES_NEEDED',
      values: { a: 2, b: 1 },
    });
  });

  it.each<[string, MixRatio, string]>([
    ['zero', byMass(0, 100), 'RATIO_NOT_POSITIVE'],
    ['negative', byMass(100, -60), 'RATIO_NOT_POSITIVE'],
    ['not a number', byMass(Number.NaN, 1), 'RATIO_NOT_POSITIVE'],
    ['infinite', byMass(1, Number.POSITIVE_INFINITY), 'RATIO_NOT_POSITIVE'],
    ['1:1000', byMass(1, 1000), 'RATIO_EXTREME'],
    ['1000:1', byMass(1000, 1), 'RATIO_EXTREME'],
  ])('refuses a ratio that is %s', (_name, ratio, code) =>
    expect(problemOf(massRatio(ratio)).code).toBe(code),
  );

  it('names the part whose density makes no sense', () => {
    const result = massRatio({ a: 2, b: 1, by: 'volume' }, { aKgM3: 1100, bKgM3: 0 });
    expect(problemOf(result)).toMatchObject({
      code: 'INPUT_OUT_OF_BOUNDS',
      values: { input: 'partDensityBKgM3' },
    });
  });
});

describe('gas (stoichiometry and the ideal gas law; liquid 1070 kg/m3)', () => {
  // 160.18 in the table is 10 lb/ft3.
  it.each([
    [160.184634, 298.15, '9.549', '3.909'],
    [160.184634, 350, '8.134', '3.330'],
    [96, 350, '14.53', '5.95'],
    [40, 350, '36.88', '15.10'],
  ])('T5: %d kg/m3 at %d K', (foamKgM3, gasTempK, co2, water) => {
    const gas = { foamKgM3, gasTempK, liquidKgM3: 1070 };
    expectPrinted(co2GPerKg(gas), co2, 'CO2');
    expectPrinted(waterGPerKg(gas), water, 'water');
  });

  it('takes the CO2 of 350 K as the default loss, and none where there is no gas', () => {
    expectPrinted(gasLossFromDensity({ freeRiseKgM3: 160.184634, liquidKgM3: 1070 }), '0.008134');
    expect(gasLossFromDensity({ freeRiseKgM3: 1070, liquidKgM3: 1070 })).toBe(0);
  });
});
