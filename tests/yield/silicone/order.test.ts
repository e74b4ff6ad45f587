import { describe, expect, it } from 'vitest';
import { orderSilicone, smallestMixG } from '../../../src/yield';
import type { OrderInputs, SiliconeOrder } from '../../../src/yield';
import { roundMix } from '../../../src/yield/silicone/roundMix';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';

const exactly = (cm3: number): OrderInputs['volumeCm3'] => ({ value: cm3, low: cm3, high: cm3 });
const TIN: OrderInputs = {
  volumeCm3: exactly(1000),
  densityKgM3: 1100,
  ratio: { base: 10, catalyst: 1, by: 'mass' },
  method: 'pour',
  scaleStepG: 1,
};
const order = (change: Partial<OrderInputs>): SiliconeOrder => valueOf(orderSilicone({ ...TIN, ...change }));

describe('silicone to mix', () => {
  it('is density x volume x (1 + waste) and a film a cup: 1 L at 1.10 poured is 1155 + 20 g (arithmetic)', () => {
    const { neededG, inMoldG } = order({});
    expectClose(neededG.value, 1175, 1e-12);
    expectClose(inMoldG, 1155, 1e-12);
    expectClose(order({ method: 'brush', cups: 3 }).neededG.value, 1100 * 1.1 + 60, 1e-12);
  });

  it('carries the range of the volume through', () => {
    const { neededG } = order({
      volumeCm3: { value: 1000, low: 900, high: 1200 },
      wasteShare: 0,
      cupLossG: 0,
    });
    expectClose(neededG.low, 990, 1e-12);
    expectClose(neededG.high, 1320, 1e-12);
  });

  it('is split by weight: 1100 g at 10:1 is 1000 of base and 100 of catalyst, at 1:1 it is 550 and 550 (arithmetic)', () => {
    const bare = { wasteShare: 0, cupLossG: 0 };
    expect(order(bare)).toMatchObject({ totalG: 1100, baseG: 1000, catalystG: 100, ratioErrorShare: 0 });
    expect(order({ ...bare, ratio: { base: 1, catalyst: 1, by: 'mass' } })).toMatchObject({
      totalG: 1100,
      baseG: 550,
      catalystG: 550,
    });
  });

  it('lists what nobody told: waste, cup loss and the step of the scale, each with its source', () => {
    const { scaleStepG, ...bare } = TIN;
    const { assumptions } = valueOf(orderSilicone(bare));
    expect(assumptions.map(({ name, value }) => [name, value])).toEqual([
      ['silicone_waste', 0.05],
      ['silicone_cup_loss_g', 20],
      ['scale_step_g', scaleStepG],
    ]);
    for (const { basis } of assumptions) expect(basis).toContain('common practice, no source');
    expect(order({ wasteShare: 0, cupLossG: 0 }).assumptions).toEqual([]);
  });
});

describe('the smallest mix a scale can weigh', () => {
  it('is 220 g at 10:1 with steps of 1 g and 5 % of the catalyst (1 x 11 / 0.05), and as much at 1:10', () => {
    const ratio = { base: 10, catalyst: 1, by: 'mass' as const };
    expectClose(smallestMixG({ ratio, stepG: 1, errorShare: 0.05 }), 220, 1e-12);
    expectClose(smallestMixG({ ratio: { base: 1, catalyst: 10, by: 'mass' }, stepG: 1 }), 220, 1e-12);
  });

  it('below it a look is taken, at it none', () => {
    const bare = { wasteShare: 0, cupLossG: 0, densityKgM3: 1000 };
    const [found] = order({ ...bare, volumeCm3: exactly(100) }).findings;
    expect(found).toMatchObject({ code: 'MIX_BELOW_SCALE', status: 'look' });
    expect(order({ ...bare, volumeCm3: exactly(220) }).findings).toEqual([]);
    expect(order({ ...bare, volumeCm3: exactly(440), cups: 3 }).findings).toHaveLength(1);
  });

  it('4 g at 10:1 cannot be weighed at all in grams: that is a stop', () => {
    const problem = problemOf(
      orderSilicone({ ...TIN, volumeCm3: exactly(4), densityKgM3: 1000, wasteShare: 0, cupLossG: 0 }),
    );
    expect(problem).toMatchObject({ code: 'MIX_BELOW_SCALE', status: 'stop' });
  });
});

describe('whole steps of the scale', () => {
  it('base and catalyst add up, never less than needed, never over two steps or 5 % more (seed 2101)', () => {
    const random = lcg(2101);
    let raised = 0;
    for (let round = 0; round < 3000; round += 1) {
      const stepG = [0.1, 0.5, 1, 2, 5][round % 5]!;
      const ratio = { base: between(random, 1, 12), catalyst: 1, by: 'mass' as const };
      const neededG = between(random, 30 * stepG, 3000 * stepG);
      const mix = valueOf(roundMix({ neededG, ratio, stepG }));
      const message = `seed 2101, round ${round}`;
      const inSteps = [mix.totalG, mix.baseG, mix.catalystG].map((g) => Math.round(g / stepG));
      expect(inSteps[1]! + inSteps[2]!, message).toBe(inSteps[0]);
      for (const [index, g] of [mix.totalG, mix.baseG, mix.catalystG].entries())
        expect(Math.abs(g - inSteps[index]! * stepG), message).toBeLessThan(1e-9 * neededG);
      expect(mix.totalG, message).toBeGreaterThanOrEqual(neededG * (1 - 1e-11));
      expect(mix.totalG, message).toBeLessThan(neededG + 3 * stepG);
      // The catalyst is within half a step of its share.
      expect(Math.abs(mix.catalystG - mix.totalG / (ratio.base + 1)), message).toBeLessThan(0.5001 * stepG);
      if (mix.totalG > neededG + stepG) raised += 1;
    }
    expect(raised).toBeGreaterThan(20);
  });

  it('more cups never mean less silicone, and the total is the cups together (seed 2102)', () => {
    const random = lcg(2102);
    for (let round = 0; round < 300; round += 1) {
      const volumeCm3 = exactly(between(random, 500, 5000));
      let beforeG = 0;
      for (const cups of [1, 2, 3, 5]) {
        const { totalG, mix, neededG, baseG, catalystG } = order({ volumeCm3, cups });
        expect(neededG.value, `seed 2102, round ${round}`).toBeGreaterThan(beforeG);
        expect(totalG).toBe(cups * mix.totalG);
        expect(baseG + catalystG).toBe(totalG);
        beforeG = neededG.value;
      }
    }
  });
});

describe('an order that cannot be right', () => {
  it.each([
    ['no volume', { volumeCm3: exactly(0) }, 'volumeCm3'],
    ['a volume that is not a number', { volumeCm3: exactly(NaN) }, 'volumeCm3'],
    ['density in g/cm3', { densityKgM3: 1.1 }, 'densityKgM3'],
    ['density of 0', { densityKgM3: 0 }, 'densityKgM3'],
    ['no catalyst', { ratio: { base: 10, catalyst: 0, by: 'mass' as const } }, 'ratioPart'],
    ['negative base', { ratio: { base: -10, catalyst: 1, by: 'mass' as const } }, 'ratioPart'],
    ['negative waste', { wasteShare: -0.1 }, 'wasteShare'],
    ['waste in percent', { wasteShare: 10 }, 'wasteShare'],
    ['cup loss not a number', { cupLossG: NaN }, 'cupLossG'],
    ['scale step of 0', { scaleStepG: 0 }, 'scaleStepG'],
  ])('%s', (_, change, input) => {
    const problem = problemOf(orderSilicone({ ...TIN, ...change }));
    expect(problem.code).toMatch(/^INPUT_/);
    expect(problem.values.input).toBe(input);
  });

  it('a range upside down or half a cup is a mistake of ours', () => {
    expect(() => orderSilicone({ ...TIN, volumeCm3: { value: 5, low: 6, high: 7 } })).toThrow(/low <= value/);
    expect(() => orderSilicone({ ...TIN, cups: 1.5 })).toThrow(/whole number/);
  });
});
