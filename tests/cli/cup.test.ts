import { describe, expect, it } from 'vitest';
import { call, document } from '../support/cliCall';
import { expectClose } from '../support/close';

const WATER = ['--cup-water', '500g', '--water-temp', '20C'];

describe('cup', () => {
  it('189.2 g full, 12.0 g empty, 1105.0 g of water at 25 C: 159.89 kg/m3 in 1108.27 cm3', () => {
    const full = ['--full-mass', '189.2 g', '--cup-mass', '12.0 g'];
    const size = ['cup', '--cup-water', '1105.0 g', '--water-temp', '25 C'];
    const { result, range } = document([...size, ...full]);
    expectClose(result.free_rise_kg_m3 as number, 159.89, 2e-5);
    expectClose(result.cup_cm3 as number, 1108.27, 1e-5);
    // One cup is known to 3 %, and 9 times in 10 are 1.645 of those.
    expectClose(range.free_rise_kg_m3![1], 159.89 * (1 + 1.645 * 0.03), 1e-4);
    // The foam alone is the same.
    const alone = document([...size, '--foam-mass', '177.2 g']);
    expectClose(alone.result.free_rise_kg_m3 as number, result.free_rise_kg_m3 as number, 1e-12);
  });

  it('under 100 g of foam it says that the cup is small, and knows it to 4 % at best', () => {
    const { findings, result, assumptions } = document(['cup', ...WATER, '--foam-mass', '53.4g']);
    expectClose(result.free_rise_kg_m3 as number, (1000 * 53.4 * 0.99821) / 500, 1e-5);
    expect(result).toMatchObject({ n: 1, u_share: 0.04 });
    expect(findings).toMatchObject([{ code: 'CUP_TEST_SMALL', status: 'look' }]);
    expect(assumptions).toMatchObject([{ name: 'u_free_rise', value: 0.04, from: 'assumed' }]);
    expect(call(['cup', ...WATER, '--foam-mass', '53.4g', '--strict']).exit).toBe(0);
  });

  it('the mean of three cups; how far they lie apart is their own doubt, and nothing assumed', () => {
    const cups = ['150', '160', '170'].flatMap((massG) => ['--foam-mass', massG]);
    const { result, assumptions } = document(['cup', '--cup-water', '1500', '--water-temp', '20', ...cups]);
    expectClose(result.free_rise_kg_m3 as number, (1000 * 160 * 0.99821) / 1500, 1e-5);
    expectClose(result.u_share as number, 10 / 160 / Math.sqrt(3), 1e-9);
    expect(result.cups).toHaveLength(3);
    expect(assumptions).toEqual([]);
  });

  it('two cups as one: 3 % over the root of two, as common practice has it', () => {
    const cups = ['--foam-mass', '160', '--foam-mass', '160'];
    const { result, assumptions } = document(['cup', '--cup-water', '1500', ...cups]);
    expectClose(result.u_share as number, 0.03 / Math.SQRT2, 1e-12);
    expect(assumptions.map(({ name }) => name)).toEqual(['water_temperature', 'u_free_rise']);
  });

  it('the line for batch is one that batch takes; the free rise stands last', () => {
    const { out } = call(['cup', ...WATER, '--foam-mass', '53.4g']);
    const line = /takes it as --free-rise "([^"]+)" --free-rise-from (\S+)/.exec(out)!;
    const batch = ['batch', '--volume', '4500', '--ratio', '100:55', '--free-rise', line[1]!];
    expect(call([...batch, '--free-rise-from', line[2]!]).exit).toBe(0);
    expect(out.trimEnd().split('\n').at(-1)).toMatch(
      /^ {2}Free rise +106\.6 kg\/m³ .*from 1 cup \(cup-test\)/,
    );
  });

  it.each<[string, string[], string]>([
    ['no water', ['--foam-mass', '53 g'], '--cup-water'],
    ['no foam', WATER, '--foam-mass'],
    ['foam and full cups', [...WATER, '--foam-mass', '53', '--full-mass', '60'], 'is the foam alone'],
    ['a full cup without an empty one', [...WATER, '--full-mass', '60'], 'The empty cup is missing'],
    ['an empty cup without a full one', [...WATER, '--cup-mass', '6'], 'The full cup is missing'],
    ['a full cup lighter than the empty one', [...WATER, '--full-mass', '6', '--cup-mass', '60'], 'add up'],
    ['534 g of foam in half a liter', [...WATER, '--foam-mass', '534'], 'Free-rise density is 1'],
    ['two readings', [...WATER, '--foam-mass', '53,400'], '"53.4 g" or "53400 g"'],
    ['a length', [...WATER, '--foam-mass', '53 mm'], 'a mass is wanted'],
  ])('%s: exit 2', (_, args, says) => {
    const called = call(['cup', ...args]);
    expect(called.exit).toBe(2);
    expect(called.notes).toContain(says);
  });
});
