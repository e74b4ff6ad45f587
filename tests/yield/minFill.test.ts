import { describe, expect, it } from 'vitest';
import { planBatch } from '../../src/yield';
import type { Batch, BatchInputs } from '../../src/yield';
import { sayYield } from '../../src/words/yieldWords';
import { expectClose } from '../support/close';
import { expectPrinted } from '../support/printed';
import { valueOf } from '../support/outcome';

const given = (value: number): { value: number; from: 'given' } => ({ value, from: 'given' });

const cup: BatchInputs = {
  cavityCm3: { value: 5200, from: 'water-fill', u: 10 },
  freeRiseKgM3: { value: 96, from: 'cup-test' },
  ratio: { a: 52, b: 100, by: 'mass' },
};
const unknown = (batch: Batch): Batch['findings'][number] | undefined =>
  batch.findings.find(({ code }) => code === 'MIN_FILL_UNKNOWN');

describe('a minimum fill that nobody knows', () => {
  it('is told beside the chance, whatever set the pack; not where it is given', () => {
    expect(unknown(valueOf(planBatch(cup)))).toMatchObject({
      status: 'unknown',
      values: { freeRiseKgM3: 96 },
    });
    expect(unknown(valueOf(planBatch({ ...cup, packFactor: given(1.4) })))?.status).toBe('unknown');
    expect(unknown(valueOf(planBatch({ ...cup, minFillKgM3: given(105) })))).toBeUndefined();
  });

  it('a chance is never met below pack 1.10: skin alone needs 1.095 at 5.2 L (mass balance of a skin of 1 mm)', () => {
    // k = 1 + (skin/core - 1) x depth x area/volume; 600 over 150 kg/m3, 1 mm, 0.15 m2 at 4.5 L, area as volume^(2/3).
    const skinPack = 1 + (600 / 150 - 1) * 0.001 * ((0.15 * (5.2 / 4.5) ** (2 / 3)) / 0.0052);
    expectPrinted(skinPack, '1.095');
    const batch = valueOf(planBatch({ ...cup, shortFillChance: given(0.05) }));
    expect(batch.packFactor).toBe(1.1);
    const values = unknown(batch)?.values;
    expect(values?.packFactor).toBe(1.1);
    expect(values?.chancePack).toBeGreaterThan(1);
    expect(values?.chancePack).toBeLessThan(1.1);
    expect(batch.shortFillChance).toBeLessThan(0.05);
  });

  it('a known minimum fill is taken at its word, and a pack above 1.10 is left alone', () => {
    const known = valueOf(planBatch({ ...cup, minFillKgM3: given(97), shortFillChance: given(0.05) }));
    expect(known.packFactor).toBeLessThan(1.1);
    const high = valueOf(planBatch({ ...cup, shortFillChance: given(1e-6) }));
    expect(high.packFactor).toBeGreaterThan(1.1);
    expectClose(high.shortFillChance, 1e-6, 1e-6);
    expect(unknown(high)?.values.chancePack).toBeUndefined();
  });

  it('its sentence says that the true chance is larger, and that the pack was raised where it was', () => {
    const said = (inputs: BatchInputs): string => {
      const found = unknown(valueOf(planBatch(inputs)));
      if (found === undefined) throw new Error('no MIN_FILL_UNKNOWN');
      const { text, hint } = sayYield(found);
      return `${text} ${hint}`;
    };
    expect(said(cup)).toMatch(/minimum fill is not known.*taken as the free rise.*skin.*larger/s);
    expect(said(cup)).toContain('--min-fill');
    expect(said(cup)).not.toContain('raised');
    expect(said({ ...cup, shortFillChance: given(0.05) })).toMatch(/pack 1\.0\d+.* raised to 1\.1\./);
  });
});

describe('a cup test of another day', () => {
  const old: BatchInputs = { ...cup, freeRiseKgM3: { ...cup.freeRiseKgM3, isOld: true } };

  it('counts as the label does: 8 %, the pressure of the day, and a Not checked', () => {
    const batch = valueOf(planBatch(old));
    expect(batch.assumptions.find(({ name }) => name === 'u_free_rise')?.value).toBe(0.08);
    expect(batch.assumptions.map(({ name }) => name)).toContain('u_station_pressure');
    const found = batch.findings.find(({ code }) => code === 'NO_CUP_TEST');
    expect(found?.status).toBe('unknown');
    expect(sayYield(found!).text).toContain('old cup test');
    const label = valueOf(planBatch({ ...cup, freeRiseKgM3: { value: 96, from: 'data-sheet' } }));
    expect(batch.sigmaShare).toBe(label.sigmaShare);
    expect(batch.shortFillChance).toBe(label.shortFillChance);
  });

  it('that of today stays 1.5 % and is no finding', () => {
    const batch = valueOf(planBatch(cup));
    expect(batch.assumptions.find(({ name }) => name === 'u_free_rise')?.value).toBe(0.015);
    expect(batch.findings.map(({ code }) => code)).not.toContain('NO_CUP_TEST');
  });
});

describe('the most a scale takes', () => {
  const overloaded = (maxG: number): Batch['findings'][number] | undefined =>
    valueOf(planBatch({ ...cup, packFactor: given(1.3), scaleMaxG: given(maxG) })).findings.find(
      ({ code }) => code === 'SCALE_OVERLOADED',
    );

  it('a Look where A and B together are more than that', () => {
    const { totalG } = valueOf(planBatch({ ...cup, packFactor: given(1.3) }));
    expect(overloaded(totalG)).toBeUndefined();
    expect(overloaded(totalG - 1)).toMatchObject({ status: 'look', values: { totalG, maxG: totalG - 1 } });
    expect(sayYield(overloaded(totalG - 1)!).text).toContain(`${totalG} g`);
  });
});
