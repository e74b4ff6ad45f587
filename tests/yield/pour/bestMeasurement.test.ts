import { describe, expect, it } from 'vitest';
import { bestMeasurement } from '../../../src/yield';
import type { BatchInputs } from '../../../src/yield';
import { bare, given } from '../../support/batchInputs';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';
import { expectPrinted } from '../../support/printed';

/** The inputs and uncertainties of the published-style budget T37. */
const t37: BatchInputs = {
  cavityCm3: { value: 5200, from: 'given', uShare: 0.015 },
  riserCm3: { value: 300, from: 'given', uShare: 0.2 },
  freeRiseKgM3: { value: 160.184634, from: 'data-sheet', uShare: 0.05 },
  ratio: { a: 52, b: 100, by: 'mass' },
  packFactor: given(1.3),
  ventsG: { value: 10, from: 'given', u: 5 },
  gasLossShare: { value: 0.01, from: 'given', u: 0.005 },
  residueG: { value: 30, from: 'given', u: 10 },
  scaleStepG: given(1),
};

describe('the one measurement that would buy most (budget after JCGM 100)', () => {
  it('T37: 64.43 g from the label; a cup test would halve it, to 29.84 g', () => {
    const { uG, gains } = valueOf(bestMeasurement(t37));
    expectPrinted(uG, '64.43');
    expect(gains[0]).toMatchObject({ measurement: 'cup-test', term: 'free_rise' });
    expectPrinted(gains[0]!.uG, '29.84');
    expectPrinted(gains[0]!.leftShare, '0.46');
  });

  it('a chance that no pack keeps has no pack now, and one once the doubt is measured away', () => {
    const wide: BatchInputs = { ...t37, cavityCm3: { value: 5200, from: 'given', uShare: 0.5 } };
    const { packFactor, gains } = valueOf(bestMeasurement(wide, 0.001));
    expect(packFactor).toBeUndefined();
    expect(gains[0]!.measurement).toBe('water-fill');
    expect(gains[0]!.packFactor).toBeGreaterThan(1);
  });

  it('T37: with the cup test done, filling the mold with water buys most, and a better scale next to nothing', () => {
    const tested: BatchInputs = {
      ...t37,
      freeRiseKgM3: { value: 160.184634, from: 'cup-test', uShare: 0.015 },
    };
    const { uG, gains } = valueOf(bestMeasurement(tested));
    expectPrinted(uG, '29.84');
    expect(gains[0]!.measurement).toBe('water-fill');
    const names = gains.map(({ measurement }) => measurement);
    expect(names).not.toContain('cup-test');
    expect(names).not.toContain('barometer');
    expect(names.at(-1)).toBe('finer-scale');
    expect(gains.at(-1)!.leftShare).toBeGreaterThan(0.999);
  });

  it('T37: 29.84 g without the share of the cavity: the water fill leaves what the squares say (by hand)', () => {
    const tested: BatchInputs = {
      ...t37,
      freeRiseKgM3: { value: 160.184634, from: 'cup-test', uShare: 0.015 },
    };
    const fill = valueOf(bestMeasurement(tested)).gains.find(
      ({ measurement }) => measurement === 'water-fill',
    )!;
    // 16.41 g at 1.5 % become a third of it at 0.5 %.
    expectClose(fill.uG, Math.sqrt(29.84 ** 2 - 16.41 ** 2 + (16.41 / 3) ** 2), 1e-3);
  });

  it('a smaller doubt asks for a smaller pack at the same chance of a short fill', () => {
    const { packFactor, gains } = valueOf(bestMeasurement(t37, 0.01));
    expect(gains[0]!.packFactor!).toBeLessThan(packFactor!);
    // ln k = 2.326 sigma; sigma is that of the foam in the mold.
    expectClose(Math.log(packFactor!), 2.326348 * (64.43 / 1156.9), 0.02);
  });

  it('better measurement never makes a wider budget, and all are told in their order (random, seed 37)', () => {
    const random = lcg(37);
    for (let round = 0; round < 150; round += 1) {
      const u = (): number => between(random, 0, 0.1);
      const inputs: BatchInputs = {
        ...t37,
        cavityCm3: { value: between(random, 200, 20_000), from: 'scanned', uShare: u() },
        riserCm3: { value: between(random, 0, 500), from: 'given', uShare: u() },
        freeRiseKgM3: {
          value: between(random, 60, 250),
          from: random() < 0.3 ? 'cup-test' : 'data-sheet',
          uShare: u(),
        },
        residueG: { value: 30, from: 'given', u: between(random, 0, 20) },
        scaleStepG: given(between(random, 0.01, 5)),
      };
      const { uG, packFactor, gains } = valueOf(bestMeasurement(inputs, 0.02));
      const message = `seed 37, round ${round}`;
      for (const [index, gain] of gains.entries()) {
        expect(gain.uG, message).toBeLessThan(uG);
        expect(gain.leftShare, message).toBeGreaterThanOrEqual(gains[index - 1]?.leftShare ?? 0);
        if (packFactor !== undefined) expect(gain.packFactor!, message).toBeLessThanOrEqual(packFactor);
      }
    }
  });

  it('nothing said at all: the cup test comes first', () => {
    expect(valueOf(bestMeasurement(bare)).gains[0]!.measurement).toBe('cup-test');
  });

  it('refuses what the batch refuses, and a chance that is none', () => {
    expect(problemOf(bestMeasurement({ ...t37, cavityCm3: given(0) })).values.input).toBe('cavityCm3');
    expect(problemOf(bestMeasurement({ ...t37, packFactor: given(9) })).code).toBe('PACK_REFUSED');
    expect(problemOf(bestMeasurement(t37, 0.9)).values.input).toBe('shortFillChance');
    expect(problemOf(bestMeasurement(t37, Number.NaN)).code).toBe('INPUT_NOT_A_NUMBER');
  });
});
