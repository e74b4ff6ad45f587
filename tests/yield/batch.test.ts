import { describe, expect, it } from 'vitest';
import { planBatch } from '../../src/yield';
import type { Batch, BatchInputs } from '../../src/yield';
import { mixedMassG } from '../../src/yield/mixedMass';
import { roundParts } from '../../src/yield/rounding';
import { expectClose } from '../support/close';
import { between, lcg } from '../support/lcg';
import { problemOf, valueOf } from '../support/outcome';
import { expectPrinted } from '../support/printed';

const given = (value: number): { value: number; from: 'given' } => ({ value, from: 'given' });

const t1: BatchInputs = {
  cavityCm3: given(5200),
  riserCm3: given(300),
  freeRiseKgM3: { value: 128.147707, from: 'cup-test' },
  ratio: { a: 52, b: 100, by: 'mass' },
  packFactor: given(1.3),
  ventsG: given(10),
  gasLossShare: given(0.01),
  residueG: given(30),
  scaleStepG: given(1),
};

const bare: BatchInputs = {
  cavityCm3: given(5200),
  freeRiseKgM3: { value: 160.184634, from: 'data-sheet' },
  ratio: { a: 52, b: 100, by: 'mass' },
};

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
    const { packFactor: _pack, ...others } = t1;
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
  ] as const)('T28: a share of %d of 73 kg is a volume in litres', (share, printed) =>
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

describe('refusals', () => {
  it.each<[string, Partial<BatchInputs>, string, string?]>([
    ['a pack of 0.9', { packFactor: given(0.9) }, 'PACK_REFUSED'],
    ['a pack of 3', { packFactor: given(3) }, 'PACK_REFUSED'],
    ['a cavity of 0', { cavityCm3: given(0) }, 'INPUT_OUT_OF_BOUNDS', 'cavityCm3'],
    ['a cavity below 0', { cavityCm3: given(-5) }, 'INPUT_OUT_OF_BOUNDS', 'cavityCm3'],
    ['a cavity that is no number', { cavityCm3: given(Number.NaN) }, 'INPUT_NOT_A_NUMBER', 'cavityCm3'],
    [
      'a range that misses its value',
      { cavityCm3: { value: 5, low: 6, high: 7, from: 'scanned' } },
      'INPUT_OUT_OF_BOUNDS',
    ],
    [
      'half a range',
      { cavityCm3: { value: 5, low: 4, from: 'scanned' } },
      'INPUT_NOT_A_NUMBER',
      'cavityCm3.high',
    ],
    ['a density in g/cm3', { freeRiseKgM3: given(0.16) }, 'INPUT_OUT_OF_BOUNDS', 'freeRiseKgM3'],
    [
      'a doubt below 0',
      { residueG: { value: 30, u: -1, from: 'given' } },
      'INPUT_OUT_OF_BOUNDS',
      'residueG.u',
    ],
    ['a scale step of 0', { scaleStepG: given(0) }, 'INPUT_OUT_OF_BOUNDS', 'scaleStepG'],
    ['a foam as dense as its liquid', { freeRiseKgM3: given(900) }, 'NOT_A_FOAM'],
    ['two packs', { shortFillChance: given(0.01) }, 'INPUT_CONFLICT'],
    ['a ratio with a 0', { ratio: { a: 0, b: 100, by: 'mass' } }, 'RATIO_NOT_POSITIVE'],
    [
      'parts below the scale',
      { cavityCm3: given(1), riserCm3: given(0), ventsG: given(0), residueG: given(0) },
      'PART_BELOW_SCALE',
    ],
  ])('%s', (_name, change, code, input) => {
    const problem = problemOf(planBatch({ ...t1, ...change }));
    expect(problem.code).toBe(code);
    if (input !== undefined) expect(problem.values.input).toBe(input);
  });

  it('overpack without a minimum fill', () => {
    expect(problemOf(planBatch({ ...bare, overpackShare: given(1.1) })).code).toBe('MIN_FILL_NEEDED');
  });

  it('a chance that no pack can give', () => {
    const poor = {
      ...bare,
      cavityCm3: { value: 5200, from: 'taped' as const, uShare: 0.4 },
      shortFillChance: given(0.001),
    };
    expect(problemOf(planBatch(poor)).code).toBe('SHORT_FILL_OUT_OF_REACH');
  });
});

describe('laws (random, seed 1912)', () => {
  const ROUNDS = 300;

  function randomInputs(random: () => number): BatchInputs {
    const stepG = [0.01, 0.1, 0.2, 0.5, 1, 2][Math.floor(6 * random())] ?? 1;
    return {
      cavityCm3: { value: between(random, 300, 20000), from: random() < 0.5 ? 'scanned' : 'water-fill' },
      riserCm3: given(between(random, 0, 300)),
      freeRiseKgM3: { value: between(random, 40, 320), from: random() < 0.5 ? 'cup-test' : 'data-sheet' },
      ratio: { a: between(random, 20, 200), b: 100, by: 'mass' },
      packFactor: given(between(random, 1, 2.4)),
      residueG: given(between(random, 0, 60)),
      scaleStepG: given(stepG),
    };
  }

  it('more pack, a larger cavity, a denser foam never mean less to mix', () => {
    const random = lcg(1912);
    for (let round = 0; round < ROUNDS; round += 1) {
      const inputs = randomInputs(random);
      const base = valueOf(planBatch(inputs)).mixedG;
      const more = (change: Partial<BatchInputs>): number =>
        valueOf(planBatch({ ...inputs, ...change })).mixedG;
      const message = `seed 1912, round ${round}`;
      expect(more({ packFactor: given((inputs.packFactor?.value ?? 1) + 0.05) }), message).toBeGreaterThan(
        base,
      );
      expect(
        more({ cavityCm3: { ...inputs.cavityCm3, value: 1.01 * inputs.cavityCm3.value } }),
        message,
      ).toBeGreaterThan(base);
      expect(more({ residueG: given((inputs.residueG?.value ?? 0) + 1) }), message).toBeGreaterThan(base);
    }
  });

  it('A + B is the total, in whole steps and as written; the ratio is within the rounding bound; shares add to 1', () => {
    const random = lcg(1912);
    for (let round = 0; round < ROUNDS; round += 1) {
      const inputs = randomInputs(random);
      const batch = valueOf(planBatch(inputs));
      const message = `seed 1912, round ${round}`;
      expect(batch.steps.a + batch.steps.b, message).toBe(batch.steps.total);
      expect((batch.partAG + batch.partBG).toFixed(6), message).toBe(batch.totalG.toFixed(6));
      expect(String(batch.partAG).length, message).toBeLessThan(10);
      expect(Math.abs(batch.totalG - batch.mixedG), message).toBeLessThanOrEqual(batch.stepG * (0.5 + 1e-9));
      const half = 0.5 * batch.stepG;
      const bound = half / batch.partAG + half / batch.partBG;
      expect(Math.abs(batch.ratioErrorShare), message).toBeLessThanOrEqual(bound * 1.01);
      expectClose(
        batch.uncertainty.reduce((sum, { share }) => sum + share, 0),
        1,
        1e-12,
        message,
      );
    }
  });

  it('scaling cavity, riser and losses by k scales the mix by k', () => {
    const random = lcg(1912);
    for (let round = 0; round < ROUNDS; round += 1) {
      const mass = {
        freeRiseKgM3: between(random, 40, 320),
        packFactor: between(random, 1, 2.5),
        cavityCm3: between(random, 1, 9999),
        riserCm3: between(random, 0, 99),
        ventsG: between(random, 0, 20),
        gasLossShare: between(random, 0, 0.1),
        residueG: between(random, 0, 50),
      };
      const k = between(random, 0.1, 10);
      const scaled = {
        ...mass,
        cavityCm3: k * mass.cavityCm3,
        riserCm3: k * mass.riserCm3,
        ventsG: k * mass.ventsG,
        residueG: k * mass.residueG,
      };
      expectClose(mixedMassG(scaled), k * mixedMassG(mass), 1e-12, `seed 1912, round ${round}`);
    }
  });

  it('wild input gives an answer without a NaN or a problem, never a throw', () => {
    const random = lcg(1912);
    const wild = [
      Number.NaN,
      0,
      -1,
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      1e300,
      1e-300,
      1,
      0.5,
      100,
      5e6,
    ];
    const pick = (): number => wild[Math.floor(wild.length * random())] ?? 0;
    const some = (calm: number): { value: number; from: 'given' } => given(random() < 0.1 ? pick() : calm);
    const maybe = (calm: number): { value: number; from: 'given'; u?: number } => ({
      ...some(calm),
      ...(random() < 0.1 ? { u: pick() } : {}),
    });
    let answers = 0;
    for (let round = 0; round < 4000; round += 1) {
      const inputs: BatchInputs = {
        cavityCm3: maybe(5000),
        freeRiseKgM3: maybe(100),
        ratio: { a: some(52).value, b: some(100).value, by: random() < 0.5 ? 'mass' : 'volume' },
        ...(random() < 0.7 ? { partDensities: { aKgM3: some(1200).value, bKgM3: some(1030).value } } : {}),
        ...(random() < 0.5 ? { packFactor: maybe(1.3) } : { shortFillChance: maybe(0.02) }),
        ...(random() < 0.5
          ? {
              minFillKgM3: maybe(110),
              residueG: maybe(20),
              ventsG: maybe(5),
              riserCm3: maybe(50),
              scaleStepG: maybe(1),
              gasLossShare: maybe(0.01),
            }
          : {}),
      };
      const outcome = planBatch(inputs);
      if (!outcome.ok) continue;
      answers += 1;
      // JSON turns NaN and Infinity into null, and nothing else here is null.
      expect(JSON.stringify(outcome.value), `seed 1912, round ${round}`).not.toContain('null');
    }
    expect(answers).toBeGreaterThan(400);
  });
});
