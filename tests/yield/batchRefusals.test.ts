import { describe, expect, it } from 'vitest';
import { planBatch } from '../../src/yield';
import type { BatchInputs } from '../../src/yield';
import { mixedMassG } from '../../src/yield/mixedMass';
import { bare, given, t1 } from '../support/batchInputs';
import { expectClose } from '../support/close';
import { between, lcg } from '../support/lcg';
import { problemOf, valueOf } from '../support/outcome';

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
    ['a scale that takes nothing', { scaleMaxG: given(0) }, 'INPUT_OUT_OF_BOUNDS', 'scaleMaxG'],
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
      // Up to two steps more than the nearest total, where that keeps the ratio.
      expect(batch.totalG - batch.mixedG, message).toBeGreaterThanOrEqual(-batch.stepG * (0.5 + 1e-9));
      expect(batch.totalG - batch.mixedG, message).toBeLessThanOrEqual(batch.stepG * (2.5 + 1e-9));
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
