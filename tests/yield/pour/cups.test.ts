import { describe, expect, it } from 'vitest';
import { planBatch, planCups } from '../../../src/yield';
import { t1 } from '../../support/batchInputs';
import { expectClose } from '../../support/close';
import { upTo } from '../../support/draws';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';

const RATIO = { a: 52, b: 100, by: 'mass' } as const;
/** The batch T1: 935.6 g into the mold, 30 g stay in the cup. */
const batch = valueOf(planBatch(t1));
const T1 = {
  inMoldG: batch.inMoldG,
  residueG: 30,
  ratio: RATIO,
  stepG: 1,
  liquidKgM3: 1070,
};

describe('what one person can mix and pour', () => {
  it('one large cup takes all of it, and is the batch as planned', () => {
    const { cups, ...sums } = valueOf(planCups(T1, { cupCm3: 5000 }));
    expect(cups).toEqual([{ partAG: batch.partAG, partBG: batch.partBG, totalG: batch.totalG }]);
    expect(sums).toMatchObject({ totalG: batch.totalG, limitedBy: 'container', rounds: 1, findings: [] });
  });

  it('a cup of 1.5 L filled to a third takes 535 g of 1.07 (arithmetic): two cups', () => {
    const plan = valueOf(planCups(T1, { cupCm3: 1500, mixers: 2 }));
    expectClose(plan.largestMixG!, 535, 1e-12);
    expect(plan.cups).toHaveLength(2);
    expect(plan.findings).toMatchObject([{ code: 'CUPS_TOGETHER', status: 'look' }]);
    expect(plan.assumptions.map(({ name }) => name)).toEqual(['cup_fill']);
  });

  it('every cup keeps its own residue: two cups mix 30 g more than one', () => {
    const one = valueOf(planCups({ ...T1, stepG: 0.01 }, { cupCm3: 5000 }));
    const two = valueOf(planCups({ ...T1, stepG: 0.01 }, { cupCm3: 1500 }));
    // Up to two steps a cup are taken for a finer ratio.
    expect(Math.abs(two.totalG - one.totalG - 30)).toBeLessThanOrEqual(0.1);
  });

  it('more cups than hands: told, as the first creams before the last is poured', () => {
    const alone = valueOf(planCups(T1, { cupCm3: 1500 }));
    expect(alone).toMatchObject({ rounds: 2 });
    expect(alone.findings).toMatchObject([
      { code: 'CUPS_OVER_HANDS', status: 'look', values: { count: 2, mixers: 1 } },
    ]);
    expect(alone.assumptions.map(({ name }) => name)).toContain('mixers');
  });

  it('the clock limits too: 5 s at 80 g/s pour 400 g, whatever the cup', () => {
    const window = { creamS: 35, mixS: 20, carryS: 5, marginS: 5 };
    const plan = valueOf(planCups(T1, { cupCm3: 5000, window, pourGPerS: 80 }));
    expect(plan.largestMixG).toBe(400);
    expect(plan.limitedBy).toBe('pour window');
    expect(plan.window!.pourWindowS.value).toBe(5);
    expect(plan.cups).toHaveLength(3);
  });

  it('cup and clock both known: the smaller says, 1.07 x 900 / 3 = 321 g against 400 g', () => {
    const window = { creamS: 35, mixS: 20, carryS: 5, marginS: 5 };
    const plan = valueOf(planCups(T1, { cupCm3: 900, window, pourGPerS: 80 }));
    expectClose(plan.largestMixG!, 321, 1e-12);
    expect(plan.limitedBy).toBe('container');
  });

  it('neither cup nor cream time known: one cup, and Not checked', () => {
    const plan = valueOf(planCups(T1));
    expect(plan.cups).toHaveLength(1);
    expect(plan).not.toHaveProperty('largestMixG');
    expect(plan.findings).toMatchObject([{ code: 'CUPS_NOT_CHECKED', status: 'unknown' }]);
  });

  it('a coarse scale that was fine for the batch is told to be too coarse for its small cups', () => {
    const plan = valueOf(planCups({ ...T1, stepG: 2 }, { cupCm3: 600 }));
    expect(plan.findings.map(({ code }) => code)).toContain('SCALE_COARSE');
  });

  it('cups are alike, hold on the scale, fit the cup, keep the ratio, and fill the mold (random, seed 9)', () => {
    const random = lcg(9);
    for (let round = 0; round < 300; round += 1) {
      const stepG = [0.1, 0.5, 1, 2][upTo(random, 0, 3)]!;
      const inputs = {
        inMoldG: between(random, 100, 6000),
        residueG: between(random, 0, 40),
        ratio: { a: between(random, 25, 120), b: 100, by: 'mass' } as const,
        stepG,
        liquidKgM3: between(random, 1000, 1150),
      };
      const limits = { cupCm3: between(random, 800, 6000), mixers: upTo(random, 1, 4) };
      const plan = valueOf(planCups(inputs, limits));
      const message = `seed 9, round ${round}`;
      const sum = (part: 'partAG' | 'partBG' | 'totalG'): number =>
        plan.cups.reduce((all, cup) => all + cup[part], 0);
      for (const part of ['partAG', 'partBG', 'totalG'] as const)
        expectClose(sum(part), plan[part], 1e-12, `${message} ${part}`);
      expectClose(plan.partAG + plan.partBG, plan.totalG, 1e-12, message);
      const [cup] = plan.cups;
      expect(cup!.totalG, message).toBeLessThanOrEqual(plan.largestMixG! * (1 + 1e-9));
      expect(Math.abs(cup!.partAG / stepG - Math.round(cup!.partAG / stepG)), message).toBeLessThan(1e-6);
      expect(
        Math.abs(cup!.partAG - (cup!.totalG * inputs.ratio.a) / (inputs.ratio.a + 100)),
        message,
      ).toBeLessThanOrEqual(stepG / 2 + 1e-9);
      // Each cup is rounded to the nearest step, or up for the ratio.
      const neededG = inputs.inMoldG + plan.cups.length * inputs.residueG;
      expect(plan.totalG, message).toBeGreaterThanOrEqual(neededG - (plan.cups.length * stepG) / 2 - 1e-9);
      const larger = valueOf(planCups({ ...inputs, inMoldG: 1.2 * inputs.inMoldG }, limits));
      expect(larger.cups.length, message).toBeGreaterThanOrEqual(plan.cups.length);
      const roomier = valueOf(planCups(inputs, { ...limits, cupCm3: 1.3 * limits.cupCm3 }));
      expect(roomier.cups.length, message).toBeLessThanOrEqual(plan.cups.length);
    }
  });

  it.each([
    ['no cup', { cupCm3: 0 }, 'cupCm3'],
    ['a cup filled to the rim', { cupCm3: 1000, cupFillShare: 1 }, 'cupFillShare'],
    ['nobody', { mixers: 0 }, 'mixers'],
    ['one and a half persons', { mixers: 1.5 }, 'mixers'],
    ['pouring that never ends', { pourGPerS: 0 }, 'pourGPerS'],
    ['cream time not a number', { window: { creamS: Number.NaN } }, 'creamS'],
  ])('refused: %s', (_, limits, input) => {
    const problem = problemOf(planCups(T1, limits));
    expect(problem.code).toMatch(/^INPUT_/);
    expect(problem.values.input).toBe(input);
  });

  it('refused: nothing to pour, cups smaller than what stays in them, no window, a part the scale cannot show', () => {
    expect(problemOf(planCups({ ...T1, inMoldG: 0 })).values.input).toBe('mixedG');
    expect(problemOf(planCups(T1, { cupCm3: 60 })).code).toBe('CUPS_TOO_MANY');
    expect(problemOf(planCups(T1, { window: { creamS: 10 } })).code).toBe('POUR_WINDOW_NONE');
    expect(problemOf(planCups({ ...T1, inMoldG: 20, residueG: 0, stepG: 50 })).code).toBe('PART_BELOW_SCALE');
  });
});
