import { describe, expect, it } from 'vitest';
import { batchBudget } from '../../src/yield/batchBudget';
import type { BatchUncertainties } from '../../src/yield/batchBudget';
import { mixedMassG } from '../../src/yield/mixedMass';
import { combineBudget } from '../../src/yield/uncertainty';
import { between, lcg } from '../support/lcg';
import { expectClose } from '../support/close';
import { expectPrinted } from '../support/printed';

const inputs = {
  freeRiseKgM3: 160.184634,
  packFactor: 1.3,
  cavityCm3: 5200,
  riserCm3: 300,
  ventsG: 10,
  gasLossShare: 0.01,
  residueG: 30,
};
const label: BatchUncertainties = {
  freeRiseShare: 0.05,
  cavityCm3: 0.015 * 5200,
  stationPressureShare: 0.0127,
  riserCm3: 0.2 * 300,
  residueG: 10,
  gasLossShare: 0.005,
  ventsG: 5,
  scaleStepG: 1,
};
const cup = { ...label, freeRiseShare: 0.015, stationPressureShare: 0 };

const row = (u: BatchUncertainties, input: string): { contributionG: number; share: number } =>
  batchBudget(inputs, u).rows.find((entry) => entry.input === input) ?? {
    contributionG: Number.NaN,
    share: Number.NaN,
  };

describe('uncertainty budget (JCGM 100, first order; table computed independently)', () => {
  it.each([
    ['free_rise', '57.84', 0.806],
    ['cavity', '16.41', 0.065],
    ['station_pressure', '14.69', 0.052],
    ['riser', '12.62', 0.038],
    ['residue', '10.00', 0.024],
    ['gas_loss', '5.89', 0.008],
    ['vents', '5.05', 0.006],
    ['scale', '0.58', 0],
  ])('T37: %s from the label', (input, contributionG, share) => {
    const found = row(label, input);
    expectPrinted(found.contributionG, contributionG, input);
    // Printed to 0.1 %, so half of that.
    expect(Math.abs(found.share - share)).toBeLessThanOrEqual(0.0005);
  });

  it('T37: the three totals, label and cup test with and without the pressure term', () => {
    expectPrinted(batchBudget(inputs, label).combinedG, '64.43');
    expectPrinted(batchBudget(inputs, label).combinedG / mixedMassG(inputs), '0.0538');
    expectPrinted(batchBudget(inputs, { ...cup, stationPressureShare: 0.0127 }).combinedG, '33.26');
    expectPrinted(batchBudget(inputs, cup).combinedG, '29.84');
  });

  it.each([
    ['free_rise', 0.338],
    ['cavity', 0.302],
    ['riser', 0.179],
    ['residue', 0.112],
  ])('T37: share of %s with a cup test', (input, share) =>
    expect(Math.abs(row(cup, input).share - share)).toBeLessThanOrEqual(0.0005),
  );

  it('T38: combination of the end-gauge example, GUM H.1 (from memory): 32 nm', () => {
    const terms = [25, 9.7, 2.9, 16.6].map((contributionG, index) => ({ input: `${index}`, contributionG }));
    expectPrinted(combineBudget(terms).combinedG, '31.671');
  });

  it('shares add to 1 and the largest comes first (law, seed 38)', () => {
    const random = lcg(38);
    for (let round = 0; round < 200; round += 1) {
      const terms = Array.from({ length: 8 }, (_, index) => ({
        input: `${index}`,
        contributionG: between(random, 0, 100),
      }));
      const { rows } = combineBudget(terms);
      expectClose(
        rows.reduce((sum, { share }) => sum + share, 0),
        1,
        1e-12,
        `seed 38, round ${round}`,
      );
      expect(rows.every(({ share }, index) => index === 0 || share <= (rows[index - 1]?.share ?? 0))).toBe(
        true,
      );
    }
  });

  it('says 0, not NaN, where nothing is uncertain', () => {
    expect(combineBudget([{ input: 'one', contributionG: 0 }])).toEqual({
      combinedG: 0,
      rows: [{ input: 'one', contributionG: 0, share: 0 }],
    });
  });

  it('agrees with a numeric derivative of the batch formula', () => {
    const h = 1e-4;
    const slope =
      (mixedMassG({ ...inputs, gasLossShare: 0.01 + h }) -
        mixedMassG({ ...inputs, gasLossShare: 0.01 - h })) /
      (2 * h);
    expectClose(row(label, 'gas_loss').contributionG, 0.005 * slope, 1e-6);
  });
});
