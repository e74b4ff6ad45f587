import { describe, expect, it } from 'vitest';
import { planBatch } from '../../src/yield';
import type { Batch, BatchInputs } from '../../src/yield';
import { roundParts } from '../../src/yield/rounding';
import { bare, given, t1 } from '../support/batchInputs';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';
import { expectPrinted } from '../support/printed';

const codes = (batch: Batch): string[] => batch.findings.map(({ code }) => code);
const assumed = (batch: Batch): string[] => batch.assumptions.map(({ name }) => name);

describe('planBatch', () => {
  it('T1: the batch of the core model, and its parts', () => {
    const batch = valueOf(planBatch(t1));
    expectPrinted(batch.mixedG, '965.612', 'mixed');
    const exact = valueOf(
      roundParts({ mixedG: batch.mixedG, ratio: { a: 52, b: 100, by: 'mass' }, stepG: 0.001 }),
    );
    // A scale of 1 mg shows the parts of the reference, each off by at most half a step.
    expectClose(exact.partAG, 330.341, 2e-6, 'A');
    expectClose(exact.partBG, 635.271, 2e-6, 'B');
    expect([batch.partAG, batch.partBG, batch.totalG]).toEqual([330, 636, 966]);
  });

  it('T2: overpack 110 % of a minimum fill of 180 over 160 is pack 1.2375', () => {
    const others = { ...t1 };
    delete others.packFactor;
    const batch = valueOf(
      planBatch({ ...others, freeRiseKgM3: given(160), minFillKgM3: given(180), overpackShare: given(1.1) }),
    );
    expectClose(batch.packFactor, 1.2375, 1e-12);
    expectClose(batch.moldedDensityKgM3, 198, 1e-12);
    expectClose(batch.leastPack, 1.125, 1e-12);
  });

  it('what goes into the mold is the mix less the residue; the rest of the balance closes', () => {
    const batch = valueOf(planBatch(t1));
    expectClose(batch.inMoldG + 30, batch.mixedG, 1e-12);
    // Poured less gas less vents is the foam of cavity and riser at the molded density.
    expectClose(0.99 * batch.inMoldG - 10, (batch.moldedDensityKgM3 * 5500) / 1000, 1e-12);
  });

  it('the range holds 90 of 100: 1.644854 standard uncertainties either way', () => {
    const batch = valueOf(planBatch(t1));
    expectClose(batch.mixedRangeG[1] - batch.mixedG, 1.644853627 * batch.sigmaShare * batch.mixedG, 1e-9);
    expectClose(batch.mixedRangeG[0] + batch.mixedRangeG[1], 2 * batch.mixedG, 1e-12);
  });

  it('lists every default it used', () => {
    expect(assumed(valueOf(planBatch(bare)))).toEqual([
      'liquid_density_kg_m3',
      'riser_cm3',
      'vents_g',
      'gas_loss',
      'residue_g',
      'scale_step_g',
      'min_fill_kg_m3',
      'u_free_rise',
      'u_scan_to_mold',
      'u_station_pressure',
      'u_residue_g',
      'u_gas_loss',
      'u_vents_g',
      'pack_factor',
    ]);
    expect(valueOf(planBatch(bare)).assumptions.find(({ name }) => name === 'pack_factor')).toEqual({
      name: 'pack_factor',
      value: 1.3,
      unit: '',
      from: 'assumed',
      basis: 'common practice, no source',
    });
  });

  it('assumes nothing where all was given with its doubt', () => {
    const sure = (value: number): { value: number; from: 'given'; u: number } => ({
      value,
      from: 'given',
      u: 0.01 * value,
    });
    const batch = valueOf(
      planBatch({
        cavityCm3: sure(5200),
        riserCm3: sure(300),
        freeRiseKgM3: { value: 128, from: 'cup-test', uShare: 0.015 },
        minFillKgM3: given(140),
        liquidKgM3: given(1070),
        ratio: t1.ratio,
        packFactor: given(1.3),
        ventsG: sure(10),
        gasLossShare: sure(0.01),
        residueG: sure(30),
        scaleStepG: given(1),
      }),
    );
    expect(batch.assumptions).toEqual([]);
    expect(batch.findings).toEqual([]);
  });

  it('a cup test drops the pressure term and the floor; a label keeps 5 % at least and says so', () => {
    const labelled = valueOf(
      planBatch({ ...bare, freeRiseKgM3: { value: 160, from: 'data-sheet', uShare: 0.01 } }),
    );
    expect(labelled.sigmaShare).toBe(0.05);
    expect(assumed(labelled)).toContain('sigma_floor');
    expect(codes(labelled)).toContain('NO_CUP_TEST');
    const tested = valueOf(
      planBatch({ ...bare, freeRiseKgM3: { value: 160, from: 'cup-test', uShare: 0.01 } }),
    );
    expect(tested.sigmaShare).toBeLessThan(0.05);
    expect(tested.uncertainty.find(({ input }) => input === 'station_pressure')?.contributionG).toBe(0);
    expect(codes(tested)).not.toContain('NO_CUP_TEST');
  });

  it('a scan adds what lies between scan and mold to its own range, in quadrature', () => {
    const cavity = { value: 5000, low: 4902, high: 5098 };
    const row = (from: 'scanned' | 'water-fill'): number => {
      const batch = valueOf(planBatch({ ...t1, cavityCm3: { ...cavity, from } }));
      return batch.uncertainty.find(({ input }) => input === 'cavity')?.contributionG ?? Number.NaN;
    };
    // 196 cm3 of range are u = 50 cm3; 1.5 % of 5000 are 75 cm3.
    expectClose(row('scanned') / row('water-fill'), Math.hypot(50, 75) / 50, 1e-12);
  });

  it('by volume the parts are split by mass, through both densities', () => {
    const ratio = { a: 2, b: 1, by: 'volume' as const };
    const batch = valueOf(planBatch({ ...bare, ratio, partDensities: { aKgM3: 1100, bKgM3: 1200 } }));
    // 2 x 1.10 to 1 x 1.20, within half a gram of A.
    expectClose(batch.partAG / batch.partBG, 2.2 / 1.2, 0.5 / batch.partAG + 0.5 / batch.partBG);
    expect(problemOf(planBatch({ ...bare, ratio })).code).toBe('PART_DENSITIES_NEEDED');
  });

  it('in a small mold the doubt about the residue counts against the foam, not against the mix', () => {
    const sure = (value: number): { value: number; from: 'given'; u: number } => ({
      value,
      from: 'given',
      u: 0,
    });
    const batch = valueOf(
      planBatch({
        ...t1,
        cavityCm3: sure(200),
        riserCm3: sure(0),
        freeRiseKgM3: { value: 100, from: 'cup-test', u: 0 },
        ventsG: sure(0),
        gasLossShare: sure(0),
        residueG: { value: 30, from: 'given', u: 4 },
        scaleStepG: given(0.001),
      }),
    );
    // Only the residue is in doubt: 4 g of the 26 g of foam and of the 56 g mixed; the milligram scale adds 1e-8 of it.
    expectClose(batch.packSigmaShare, 4 / 26, 1e-6);
    expectClose(batch.sigmaShare, 4 / 56, 1e-6);
  });

  it('a wanted chance of a short fill gives the pack that has it', () => {
    const batch = valueOf(planBatch({ ...bare, minFillKgM3: given(180), shortFillChance: given(0.05) }));
    expectClose(batch.shortFillChance, 0.05, 1e-9);
    expect(batch.packFrom).toBe('given');
  });
});

/**
 * Head sizes: mass shares and density from published segment tables (Zatsiorsky and Seluyanov 6.94 %, Clauser 1969
 * 7.28 %, Dempster 1955 7.9 % of body mass, 1.11 g/cm3), and plain solids.
 */
describe('life-size heads', () => {
  const headL = (share: number, bodyKg: number): number => (share * bodyKg) / 1.11;

  it.each([
    [0.0694, '4.56'],
    [0.0728, '4.79'],
    [0.079, '5.20'],
  ] as const)('T28: a share of %d of 73 kg is a volume in liters', (share, printed) =>
    expectPrinted(headL(share, 73), printed),
  );

  it('T30: an ellipsoid 195 x 152 x 232 mm on a neck of 380 mm girth x 120 mm is 4.98 L', () => {
    const ellipsoidL = (Math.PI / 6) * 1.95 * 1.52 * 2.32;
    const neckL = (3.8 ** 2 / (4 * Math.PI)) * 1.2;
    expectPrinted(ellipsoidL, '3.60');
    expectPrinted(neckL, '1.38');
    expectPrinted(ellipsoidL + neckL, '4.98');
  });

  it.each([4.8, 5.7])(
    'a head of %d L in a 10 lb/ft3 foam takes 900 g of B and 360 g of A within 15 % (common practice, no source)',
    (volumeL) => {
      const batch = valueOf(
        planBatch({
          cavityCm3: given(1000 * volumeL),
          riserCm3: given(300),
          packFactor: given(1.3),
          freeRiseKgM3: { value: 160.184634, from: 'data-sheet' },
          ratio: { a: 40, b: 100, by: 'mass' },
        }),
      );
      expectClose(batch.mixedG, 1260, 0.15);
      expectClose(batch.partAG / batch.partBG, 360 / 900, 0.003);
    },
  );
});

describe('findings', () => {
  const find = (inputs: BatchInputs, code: string): string | undefined =>
    valueOf(planBatch(inputs)).findings.find((found) => found.code === code)?.status;

  it.each([
    [1.05, 'look'],
    [1.3, undefined],
    [1.8, 'look'],
    [2.2, 'stop'],
  ])('pack %d: %s', (pack, status) => {
    expect(find({ ...t1, packFactor: given(pack) }, 'PACK_UNUSUAL')).toBe(status);
  });

  it('a short fill that is likely is a Look, then a Stop', () => {
    const cold = (pack: number): BatchInputs => ({
      ...bare,
      minFillKgM3: given(180),
      packFactor: given(pack),
    });
    expect(find(cold(1.3), 'SHORT_FILL_LIKELY')).toBe('look');
    expect(find(cold(1.15), 'SHORT_FILL_LIKELY')).toBe('stop');
    expect(find(t1, 'SHORT_FILL_LIKELY')).toBeUndefined();
  });

  it('a small batch on a coarse scale is told of, with what would do', () => {
    const small: BatchInputs = {
      ...t1,
      cavityCm3: given(150),
      riserCm3: given(0),
      residueG: given(5),
      scaleStepG: given(5),
    };
    expect(find(small, 'SCALE_COARSE')).toBe('look');
    expect(find(small, 'RATIO_ROUNDED')).toBe('stop');
    expect(find({ ...small, residueG: given(30) }, 'RESIDUE_LARGE')).toBe('look');
  });

  it('a minimum fill lighter than the free rise is looked at and not used', () => {
    const batch = valueOf(planBatch({ ...bare, minFillKgM3: given(120) }));
    expect(batch.leastPack).toBe(1);
    expect(codes(batch)).toContain('MIN_FILL_BELOW_FREE_RISE');
  });
});
