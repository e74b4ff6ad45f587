import { describe, expect, it } from 'vitest';
import { call, document, type Document } from '../support/cliCall';
import { expectClose } from '../support/close';
import { SHOP_DESK, TROLL } from '../support/pourCalls';

const TEN = ['run', '--castings', '10', '--molds', '2'];
const LIGHT = ['--shop', 'shop.json', '--foam', 'Sample Foam Light'];
const BARE = [...TEN, '--mixed', '588 g', '--ratio', '100:55'];
const answer = (args: readonly string[]): Document => {
  const one = document(args, SHOP_DESK);
  if (one.error !== undefined) throw new Error(one.error.text);
  return one;
};
const lastLine = (out: string): string => out.trimEnd().split('\n').at(-1)!;

describe('ten trolls on two molds', () => {
  const SCANNED = [...TEN, ...TROLL, '--pack', '1.25'];

  it('at pack 1.25 the stock ends after five, B a little before A', () => {
    const { out, exit } = call(SCANNED, SHOP_DESK);
    expect(exit).toBe(0);
    expect(lastLine(out)).toBe(
      '  Stock       lasts for 5 of 11 castings: B runs out after casting 5, A after casting 5',
    );
    expect(answer(SCANNED).result).toMatchObject({
      stock_castings: 5,
      runs_out: [
        { part: 'B', after_casting: 5 },
        { part: 'A', after_casting: 5 },
      ],
    });
  });

  it('each casting is what batch says for that pack, its assumptions and findings with it', () => {
    const { result, assumptions, findings } = answer(SCANNED);
    const batch = answer(['batch', ...TROLL, '--pack', '1.25']);
    const { part_a_g, part_b_g } = batch.result;
    expect(result).toMatchObject({ part_a_g, part_b_g });
    expect(assumptions.slice(0, batch.assumptions.length)).toEqual(batch.assumptions);
    expect(findings.slice(0, batch.findings.length)).toEqual(batch.findings);
  });

  it('588 g each: 379 of A and 209 of B, 11 of them and a cup of 60 g; two kits of 2 kg to buy', () => {
    const { result, inputs } = answer([...TEN, ...LIGHT, '--mixed', '588 g']);
    expect(result).toMatchObject({ material_g: 11 * 588 + 60, part_a_g: 379, part_b_g: 209, spares: 1 });
    expect(result).toMatchObject({ buy: [{ kit_g: 2000, count: 2 }], bought_g: 4000 });
    // B is the shorter: (11 x 209 + 60 x 55/155 - 1 100) g over its share of 55/155.
    expectClose(result.buy_g as number, ((11 * 209 + (60 * 55) / 155 - 1100) * 155) / 55, 1e-9);
    expect(inputs).toEqual({ castings: '10', molds: '2', mixed: '588 g', foam: 'Sample Foam Light' });
  });

  it('rounds: every mold once, the last one with what is left; their A and B are those of the run', () => {
    const cycles = answer([...TEN, ...LIGHT, '--mixed', '588 g', '--work-day', '3 h']).result
      .cycles as Record<string, number>[];
    // 25 min to opening and 45 beside: two rounds in three hours.
    expect(cycles.map(({ day }) => day)).toEqual([1, 1, 2, 2, 3, 3]);
    expect(cycles.map(({ first_casting, last_casting }) => [first_casting, last_casting])).toEqual(
      [1, 3, 5, 7, 9].map((first) => [first, first + 1]).concat([[11, 11]]),
    );
    expect(cycles.reduce((sum, { part_a_g }) => sum + part_a_g!, 0)).toBe(11 * 379);
    expect(cycles.reduce((sum, { part_b_g }) => sum + part_b_g!, 0)).toBe(11 * 209);
  });
});

describe('what is told instead', () => {
  it('stock that is typed wins over the shop, lot by lot; a part that lasts is not named', () => {
    const lots = ['--stock', 'A=2kg,B=900 g', '--stock', 'b = 5'];
    const { result } = answer([...TEN, ...LIGHT, '--mixed', '588 g', ...lots]);
    expect(result).toMatchObject({
      stock: { a: { have_g: 2000 }, b: { have_g: 5900, short_g: 0 } },
      runs_out: [{ part: 'A', after_casting: 5 }],
    });
  });

  it('a part nobody counted is said, and nothing is bought on a guess', () => {
    const args = [...BARE, '--stock', 'A=2kg'];
    const { result } = answer(args);
    expect(result).toMatchObject({ not_counted: ['B'], runs_out: [{ part: 'A', after_casting: 5 }] });
    for (const key of ['buy', 'buy_g', 'stock_castings', 'days']) expect(result).not.toHaveProperty(key);
    expect(lastLine(call(args).out)).toContain('A runs out after casting 5; the rest not checked');
    expect(lastLine(call(BARE).out)).toContain('nobody counted A or B');
  });

  it('none of a part ends it before the first; enough of both lasts', () => {
    expect(lastLine(call([...BARE, '--stock', 'A=9kg,B=0']).out)).toContain(
      'B runs out before the first casting',
    );
    const plenty = [...BARE, '--stock', 'A=9kg,B=9kg'];
    expect(lastLine(call(plenty).out)).toContain('lasts for all 11 castings');
    expect(answer(plenty).result).toMatchObject({ buy: [], buy_g: 0, runs_out: [] });
  });

  it('kits nobody named: kilograms are told, and the finding says so', () => {
    const { result, findings } = answer([...BARE, '--stock', 'A=1kg,B=1kg']);
    expect(result).not.toHaveProperty('buy');
    expect(result.buy_g as number).toBeGreaterThan(0);
    expect(findings).toMatchObject([{ code: 'KITS_UNKNOWN', status: 'unknown' }]);
    const kits = answer([...BARE, '--stock', 'A=1kg,B=1kg', '--kit', '2', '--kit', '500 g']);
    expect(kits.result.buy).toEqual([
      { kit_g: 2000, count: 2 },
      { kit_g: 500, count: 2 },
    ]);
  });

  it('no spares, no cup; a price of the mix; molds that wear out', () => {
    const args = [...BARE, '--spares', '0', '--cup-test', '0', '--price-a', '10', '--price-b', '20'];
    const { result } = answer([...args, '--other-cost', '3', '--mold-life', '4', '--mold-used', '1']);
    expect(result).toMatchObject({ material_g: 5880, spares: 0 });
    // 588 g of 100 parts at 10 and 55 at 20 a kilogram, and 3 beside.
    expectClose(result.cost_per_casting as number, (0.588 * (100 * 10 + 55 * 20)) / 155 + 3, 1e-9);
    expect(result.mold_life).toEqual({ castings_each: 5, left_each: 3, lasts: false, molds_needed: 3 });
  });

  it('what was assumed is listed with where it comes from', () => {
    const { assumptions } = answer([...TEN, ...LIGHT, '--mixed', '588 g']);
    expect(assumptions.map(({ name }) => name)).toEqual([
      ...['spare_castings', 'turnaround_min', 'work_day_min', 'cup_test_g'],
    ]);
    for (const { from, basis } of assumptions) {
      expect(from).toBe('assumed');
      expect(basis).toContain('Chosen here');
    }
  });

  it('a Stop of the batch ends with 6 when strict; the same bytes twice, no null', () => {
    const coarse = [...TEN, '--mixed', '40 g', '--ratio', '100:7', '--scale-step', '5 g'];
    expect(answer(coarse).findings).toMatchObject([{ code: 'RATIO_ROUNDED', status: 'stop' }]);
    expect(call([...coarse, '--strict']).exit).toBe(6);
    const [one, two] = [1, 2].map(() => call([...coarse, '--json']).out);
    expect(one).toBe(two);
    expect(one).not.toMatch(/null|NaN|Infinity|undefined/);
  });
});

it.each<[string, string[], string]>([
  ['no castings', ['run', '--molds', '2', '--mixed', '588', '--ratio', '100:55'], 'castings is missing'],
  ['no molds', ['run', '--castings', '9', '--mixed', '588', '--ratio', '100:55'], 'molds is missing'],
  ['half a casting', ['run', '--castings', '2.5', ...BARE.slice(3)], 'only whole ones'],
  ['castings of two readings', ['run', '--castings', '1,250', ...BARE.slice(3)], 'It can be'],
  ['nothing to cast', TEN, 'What one casting takes is not known'],
  ['no foam', [...TEN, '--volume', '4500'], 'The foam is not known'],
  ['no ratio', [...TEN, '--mixed', '588 g'], 'The mixing ratio is missing'],
  ['mixed and a pack', [...BARE, '--pack', '1.2'], '--pack is about how much to mix'],
  ['mixed and a volume', [...BARE, '--volume', '4 L'], '--volume is about how much to mix'],
  ['a ratio the other way', [...TEN, ...LIGHT, '--mixed', '588', '--ratio', '55:100'], 'in the other order'],
  ['stock of a third part', [...BARE, '--stock', 'C=2kg'], '"C" is none of a, b'],
  ['stock of two readings', [...BARE, '--stock', 'A=1,250'], '--stock A "1,250"'],
  ['one price', [...BARE, '--price-a', '9'], 'the price of both parts'],
  ['a mistyped option', [...TEN, '--casting', '3'], '--castings'],
])('%s: exit 2', (_, args, says) => {
  const called = call(args, SHOP_DESK);
  expect(called.exit).toBe(2);
  expect(called.out).toBe('');
  expect(called.notes).toContain(says);
});
