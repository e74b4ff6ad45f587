import { describe, expect, it } from 'vitest';
import { expectClose } from '../support/close';
import { call, document, type Desk } from '../support/cliCall';
import { PLAIN, SHOP_DESK, TROLL } from '../support/pourCalls';

type Column = Record<string, number> & {
  refused?: { code: string; text: string };
  findings: { code: string; status: string }[];
  mixes: { part_a_g: number; part_b_g: number }[];
};
const columnsOf = (args: readonly string[], desk: Desk = SHOP_DESK): Column[] => {
  const one = document(['packs', ...args], desk);
  if (one.error !== undefined) throw new Error(one.error.text);
  return one.result.columns as Column[];
};
/** Cells of the row of that name in the table for a person. */
const row = (out: string, label: string): string[] =>
  out
    .split('\n')
    .find((line) => line.startsWith(`  ${label} `))!
    .slice(label.length + 2)
    .trim()
    .split(/\s{2,}/);

describe('packs of the sample troll', () => {
  const args = [...TROLL, '--opens', '+y', '--price-a', '9', '--price-b', '11', '--failure-cost', '150'];

  it('prints a table to pour from: every level has its A and B in grams, which add up and keep the ratio', () => {
    const { out, exit } = call(['packs', ...args], SHOP_DESK);
    expect(exit).toBe(0);
    const [pack, a, b, sum] = ['Pack factor', 'A, g', 'B, g', 'Together, g'].map((l) => row(out, l));
    expect(pack).toEqual(['1.10', '1.20', '1.30', '1.40', '1.50', '1.60']);
    a!.forEach((_, n) => {
      expect(Number(a![n]) + Number(b![n])).toBe(Number(sum![n]));
      // The card says A:B 100:55; the scale shows whole grams.
      expectClose(Number(a![n]) / Number(b![n]), 100 / 55, 5e-3, 'ratio');
    });
    for (const label of ['Molded, kg/m\u00b3', 'Stiffness, times', 'Short fill', 'Pressure, kPa', 'Clamp, N'])
      expect(row(out, label)).toHaveLength(6);
    for (const label of ['Straps', 'Cost of the mix', 'Cost if it fails', '5 % more pack'])
      expect(row(out, label)).toHaveLength(6);
  });

  it('says which definition it counts with, what the pressure leaves out, and the cautions', () => {
    const { out } = call(['packs', ...args], SHOP_DESK);
    expect(out).toContain('Pack factor is molded over free-rise density');
    expect(out).toContain('Overpack in percent is another term');
    expect(out).toContain('only within one formulation');
    expect(out).toContain('never seal a mold');
    expect(out).toContain('The data sheets, local codes and licensed practice come before anything here.');
  });

  it('each column is what batch says for that pack, key by key', () => {
    const columns = columnsOf(args);
    for (const column of columns) {
      const batch = document(['batch', ...args, '--pack', String(column.pack_factor)], SHOP_DESK).result;
      for (const [key, value] of Object.entries(batch)) expect(column[key], key).toEqual(value);
    }
  });

  it('rises in mass, density, pressure and straps from level to level, and falls in chance of a short fill', () => {
    const columns = columnsOf(args);
    columns.slice(1).forEach((column, n) => {
      const before = columns[n]!;
      for (const key of [
        'mixed_g',
        'molded_density_kg_m3',
        'pressure_kpa',
        'clamp_n',
        'stiffness_ratio',
        'cost',
      ])
        expect(column[key]!, key).toBeGreaterThan(before[key]!);
      expect(column.short_fill_chance!).toBeLessThan(before.short_fill_chance!);
    });
  });

  it('the stiffness is (k2/k1) squared against the pack named (Gibson and Ashby, open cells)', () => {
    const columns = columnsOf([...args, '--pack', '1.2']);
    for (const { stiffness_ratio, pack_factor } of columns)
      expectClose(stiffness_ratio!, (pack_factor! / 1.2) ** 2, 1e-9);
    expect(document(['packs', ...args, '--pack', '1.2'], SHOP_DESK).result).toMatchObject({
      reference_pack: 1.2,
      reference_from: 'given',
    });
  });

  it('the same bytes twice, no null, no NaN', () => {
    const [one, two] = [1, 2].map(() => call(['packs', ...args, '--json'], SHOP_DESK).out);
    expect(one).toBe(two);
    expect(one).not.toMatch(/null|NaN|Infinity|undefined/);
  });
});

describe('levels', () => {
  const packs = (more: string[]): number[] => columnsOf([...PLAIN, ...more]).map((c) => c.pack_factor!);

  it('from, to and step, both ends in', () => {
    expect(packs(['--from', '1.2', '--to', '1.3', '--step', '0.05'])).toEqual([1.2, 1.25, 1.3]);
    expect(packs([])).toEqual([1.1, 1.2, 1.3, 1.4, 1.5, 1.6]);
  });

  it('a pack that no foam can have keeps its column and says why; the others stand', () => {
    const columns = columnsOf([...PLAIN, '--from', '2.3', '--to', '2.7', '--step', '0.2']);
    expect(columns.map((c) => c.refused?.code)).toEqual([undefined, undefined, 'PACK_REFUSED']);
    const { out } = call(['packs', ...PLAIN, '--from', '2.3', '--to', '2.7', '--step', '0.2']);
    expect(out).toContain('At pack 2.70: Pack factor 2.7 is outside 1 to 2.5.');
    expect(row(out, 'Pack factor')).toEqual(['2.30', '2.50']);
  });

  it('straps without end at one level are no reason against the others', () => {
    const columns = columnsOf([
      ...[...PLAIN, '--from', '1.0', '--to', '2.4', '--step', '0.7'],
      ...['--projected-area', '3000 cm2', '--strap-tension', '40 N'],
    ]);
    expect(columns[0]!.refused).toBeUndefined();
    expect(columns.at(-1)!.refused!.code).toBe('STRAPS_TOO_MANY');
  });

  it('a level that needs more cups has them in its column', () => {
    const columns = columnsOf([...PLAIN, '--cup-volume', '1.5 L']);
    const cups = columns.map(({ mixes }) => mixes.length);
    expect(cups[0]!).toBeLessThan(cups.at(-1)!);
    for (const { mixes, part_a_g } of columns)
      expect(mixes.reduce((sum, mix) => sum + mix.part_a_g, 0)).toBe(part_a_g);
    const { out } = call(['packs', ...PLAIN, '--cup-volume', '1.5 L']);
    expect(row(out, 'Cups')).toEqual(cups.map(String));
    expect(out).toContain('A, g, each cup');
  });

  it.each<[string, string[], string]>([
    ['from above to', ['--from', '1.6', '--to', '1.2'], 'PACK_LEVELS'],
    ['more than anyone reads', ['--step', '0.006'], 'PACK_LEVELS'],
    ['a step of nothing', ['--step', '0'], 'BAD_CALL'],
    ['a pack in percent', ['--from', '120 %'], 'BAD_CALL'],
    ['a word', ['--to', 'much'], 'BAD_CALL'],
    ['pack and short fill', ['--pack', '1.3', '--short-fill', '1 %'], 'INPUT_CONFLICT'],
  ])('%s: exit 2', (_, more, code) => {
    const called = call(['packs', ...PLAIN, ...more, '--json']);
    expect(called.exit).toBe(2);
    expect(document(['packs', ...PLAIN, ...more]).error!.code).toBe(code);
  });
});

describe('what came of it before', () => {
  it('a casting counts at the level it was packed at, within 0.025', () => {
    const past = ['1.2=short', '1.22=filled', '1.3=filled'].flatMap((one) => ['--past', one]);
    const columns = columnsOf([...PLAIN, ...past]);
    const of = (pack: number) => columns.find((c) => c.pack_factor === pack)!.past;
    expect(of(1.2)).toMatchObject([{ poured: 2, filled: 1 }]);
    expect(of(1.3)).toMatchObject([{ poured: 1, filled: 1 }]);
    expect(of(1.5)).toEqual([]);
    expect(row(call(['packs', ...PLAIN, ...past]).out, 'Filled before').slice(0, 3)).toEqual([
      '-',
      '1 of 2',
      '1 of 1',
    ]);
  });
});

describe('findings', () => {
  it('what holds at every level stands once, what holds at one stands with it', () => {
    const one = document(['packs', ...PLAIN, '--free-rise-from', 'data-sheet']);
    const columns = one.result.columns as Column[];
    const shared = one.findings.map(({ code }) => code);
    expect(shared).toContain('MOLD_DAMP');
    for (const { findings } of columns) expect(findings.map((f) => f.code)).not.toContain('MOLD_DAMP');
    const low = columns[0]!.findings.find((f) => f.code === 'SHORT_FILL_RISK');
    expect(low!.status).toBe('stop');
    expect(columns.at(-1)!.findings.find((f) => f.code === 'SHORT_FILL_RISK')!.status).toBe('fine');
  });

  it('strict: a Stop at one level leaves others to choose; a Stop at every level is exit 6', () => {
    const strict = (more: string[]) => call(['packs', ...PLAIN, ...more, '--strict']).exit;
    expect(strict(['--from', '1.0', '--to', '1.5', '--step', '0.5'])).toBe(0);
    expect(strict(['--from', '2.1', '--to', '2.4', '--step', '0.1'])).toBe(6);
    expect(strict(['--mold-water', 'not confirmed dry'])).toBe(6);
  });
});

it('--show: one system at a time in the table', () => {
  const shown = (system: string) => call(['packs', ...PLAIN, '--show', system]).out;
  expect(shown('metric')).toContain('Pressure, kPa');
  expect(shown('metric')).not.toContain('Pressure, psi');
  expect(shown('us')).toContain('Molded, lb/ft\u00b3');
  expect(shown('us')).not.toContain('Molded, kg/m\u00b3');
});
