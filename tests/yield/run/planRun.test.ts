import { describe, expect, it } from 'vitest';
import { SAMPLE_SHOP } from '../../../src/job/sampleShop';
import type { MassRatio } from '../../../src/yield';
import { planRun } from '../../../src/yield/run';
import type { RunInputs } from '../../../src/yield/run';
import { expectClose } from '../../support/close';
import { problemOf, valueOf } from '../../support/outcome';

const light = SAMPLE_SHOP.foams.find(({ name }) => name === 'Sample Foam Light')!;

/** Ten trolls at pack 1.25: 588 g each, 379 of A and 209 of B, on two molds. */
const trolls: RunInputs = {
  castings: 10,
  molds: 2,
  batch: { partAG: 379, partBG: 209 },
  ratio: light.ratio as MassRatio,
  stock: SAMPLE_SHOP.stock.filter(({ card }) => card === light.name),
  kits: [{ massKg: 2 }],
  ...(light.openMin === undefined ? {} : { openMin: light.openMin }),
};

describe('ten trolls on two molds', () => {
  const run = valueOf(planRun(trolls));

  it('about 6.5 kg with a spare and a cup, in six rounds of one day', () => {
    // 11 x 588 g and a cup of 60 g; a round is 25 + 45 min, six are 7 h.
    expectClose(run.materialKg, 6.528, 1e-9);
    expect(run).toMatchObject({ spares: 1, cycles: 6, cyclesADay: 6, days: 1, cups: 1 });
  });

  it('the stock is outrun after five, B a little before A (1 100 of 209 against 2 000 of 379)', () => {
    expect(run.stock.castings).toBe(5);
    expect(run.stock.runsOut).toEqual([
      { part: 'b', afterCasting: 5 },
      { part: 'a', afterCasting: 5 },
    ]);
    expectClose(run.stock.a.shortKg!, (11 * 379 + (60 * 100) / 155) / 1000 - 2, 1e-9);
  });

  it('to buy: 3.4 kg, two kits of 2 kg', () => {
    // B is the shorter: (11 x 209 + 60 x 55/155 - 1 100) g over its share of 55/155.
    expectClose(run.buyKg!, ((11 * 0.209 + (0.06 * 55) / 155 - 1.1) * 155) / 55, 1e-9);
    expect(run.buy).toMatchObject({ kitCount: 2, totalKg: 4 });
  });

  it('lists what it assumed', () => {
    expect(run.assumptions.map(({ name }) => name)).toEqual([
      'spare_castings',
      'turnaround_min',
      'work_day_min',
      'cup_test_g',
    ]);
  });
});

describe('runs', () => {
  it('a ratio told in small numbers is the same ratio', () => {
    const small = { ...trolls, ratio: { a: 1, b: 0.55, by: 'mass' as const } };
    expectClose(valueOf(planRun(small)).buyKg!, valueOf(planRun(trolls)).buyKg!, 1e-12);
    const tiny = { ...trolls, ratio: { a: 0.5, b: 0.275, by: 'mass' as const } };
    expectClose(valueOf(planRun(tiny)).buyKg!, valueOf(planRun(trolls)).buyKg!, 1e-12);
  });

  it('one part short: only that one is named, and the kits are for it', () => {
    const run = valueOf(planRun({ ...trolls, stock: [{ aKg: 50, bKg: 1 }], spareShare: 0, cupG: 0 }));
    expect(run.stock.runsOut).toEqual([{ part: 'b', afterCasting: 4 }]);
    expectClose(run.buyKg!, (1.09 * 155) / 55, 1e-9);
  });

  it('exactly enough is enough, in lots added up', () => {
    const stock = [
      { aKg: 1.895, bKg: 1 },
      { aKg: 1.895, bKg: 1.09 },
    ];
    const run = valueOf(planRun({ ...trolls, stock, spareShare: 0, cupG: 0 }));
    expect(run.stock).toMatchObject({ castings: 10, runsOut: [] });
    expectClose(1 + run.buyKg!, 1, 1e-12);
  });

  it('the cup of the second day comes off before its castings', () => {
    // Four a day; 2 000 g of A: a cup of 310 g takes 200 of A. 200 + 4 x 379 = 1 716; another 200 leave nothing for the fifth.
    const slow = { ...trolls, openMin: 75, dayMin: 240, cupG: 310 };
    expect(valueOf(planRun(slow)).stock.a.castings).toBe(4);
    expect(valueOf(planRun({ ...slow, cupG: 60 })).stock.a.castings).toBe(5);
  });

  it('a part nobody counted is not taken for none', () => {
    const run = valueOf(planRun({ ...trolls, stock: [{ aKg: 2 }] }));
    expect(run.stock.uncounted).toEqual(['b']);
    expect(run.stock.castings).toBeUndefined();
    expect(run.stock.runsOut).toEqual([{ part: 'a', afterCasting: 5 }]);
    expect(run.buyKg).toBeUndefined();
  });

  it('days: three rounds a day of 120 min need two for six; a round longer than the day is one a day', () => {
    const slow = { ...trolls, openMin: 75, dayMin: 360 };
    expect(valueOf(planRun(slow))).toMatchObject({ cyclesADay: 3, days: 2, cups: 2 });
    expect(valueOf(planRun({ ...trolls, openMin: 900 }))).toMatchObject({ cyclesADay: 1, days: 6 });
    const { openMin: _open, ...unknown } = trolls;
    expect(valueOf(planRun(unknown)).days).toBeUndefined();
  });

  it('cost of a casting that is kept, by hand', () => {
    const run = valueOf(planRun({ ...trolls, foamPerKg: 20, otherPerCasting: 3 }));
    expectClose(run.costPerCasting!, (20 * 6.528 + 11 * 3) / 10, 1e-9);
  });

  it('mold life: eleven pours on two molds are six each', () => {
    const lasting = valueOf(planRun({ ...trolls, moldLife: 30, moldUsed: 24 })).moldLife;
    expect(lasting).toEqual({ castingsEach: 6, leftEach: 6, lasts: true, moldsNeeded: 2 });
    const worn = valueOf(planRun({ ...trolls, moldLife: 30, moldUsed: 28 })).moldLife;
    expect(worn).toEqual({ castingsEach: 6, leftEach: 2, lasts: false, moldsNeeded: 3 });
    expect(valueOf(planRun(trolls)).moldLife).toBeUndefined();
  });

  it.each<[string, Partial<RunInputs>, string, string]>([
    ['half a casting', { castings: 2.5 }, 'INPUT_NOT_WHOLE', 'castings'],
    ['no mold', { molds: 0 }, 'INPUT_OUT_OF_BOUNDS', 'molds'],
    [
      'a batch that is no number',
      { batch: { partAG: Number.NaN, partBG: 2 } },
      'INPUT_NOT_A_NUMBER',
      'partAG',
    ],
    ['stock below nothing', { stock: [{ aKg: -1 }] }, 'INPUT_OUT_OF_BOUNDS', 'foamStockKg'],
  ])('refuses %s', (_name, wrong, code, input) => {
    expect(problemOf(planRun({ ...trolls, ...wrong }))).toMatchObject({ code, values: { input } });
  });

  it('refuses a ratio without a side', () => {
    const ratio: MassRatio = { a: 0, b: 1, by: 'mass' };
    expect(problemOf(planRun({ ...trolls, ratio })).code).toBe('RATIO_NOT_POSITIVE');
  });
});
