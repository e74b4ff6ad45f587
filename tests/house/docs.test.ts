import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { POUR_RULES } from '../../src/yield/pour/rules';
import type { Rule } from '../../src/yield';

/*
 * docs/rules.md, sums.md and registered.md are made from the code's own tables. Here they are read as a reader does: every table of rules that stands
 * anywhere in the sources is looked for in them, row by row.
 */

const root = resolve(import.meta.dirname, '../..');
const doc = (name: string): string => readFileSync(join(root, 'docs', name), 'utf8');
const rules = doc('rules.md');

const sources = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => ({ name, text: readFileSync(join(root, 'src', name), 'utf8') }));

/** Tables in the sources, by what closes them. */
const tablesOf = (what: RegExp): { name: string; table: string }[] =>
  sources.flatMap(({ name, text }) =>
    [...text.matchAll(/export const ([A-Z_]+) = \{[\s\S]*?\n\} as const satisfies (.+);\n/g)]
      .filter(([, , type]) => what.test(type!))
      .map(([, table]) => ({ name, table: table! })),
  );

const RULE_TABLES = tablesOf(/\bRule>+$/);
const BOUND_TABLES = tablesOf(/\{ low: number; high: number; unit: string \}|\bBounds>/);

const read = async <Row>({ name, table }: { name: string; table: string }): Promise<Record<string, Row>> => {
  const module = (await import(join(root, 'src', name))) as Record<string, Record<string, Row>>;
  return module[table]!;
};

/** Cells of the row of a name, in the part of the page that is about a table. */
function cellsOf(table: string, key: string): string[] {
  const part = rules.split(`\`${table}\``)[1]!.split('\n#')[0]!;
  const row = part.split('\n').find((line) => line.startsWith(`| \`${key}\` |`));
  return row === undefined ? [] : row.split(/(?<!\\)\|/).map((cell) => cell.trim());
}

it('the tables were found', () => {
  expect(RULE_TABLES.map(({ table }) => table).sort()).toEqual(
    expect.arrayContaining(['CHECK_FIGURES', 'POUR_RULES', 'RULES', 'WARMTH_RULES']),
  );
  expect(RULE_TABLES.length).toBeGreaterThanOrEqual(10);
  expect(BOUND_TABLES.length).toBeGreaterThanOrEqual(8);
});

it.each(RULE_TABLES)(
  'every rule of $table stands in the docs as it is: value, range, source',
  async (one) => {
    for (const [key, rule] of Object.entries(await read<Rule>(one))) {
      const [, , value, span, , from] = cellsOf(one.table, key);
      expect(Number(value), key).toBeCloseTo(rule.value, 8);
      expect(span, key).toBe(
        rule.low === undefined
          ? ''
          : `${Number(rule.low.toPrecision(9))} to ${Number(rule.high!.toPrecision(9))}`,
      );
      expect(from, key).toBe(rule.from.replaceAll('|', '\\|'));
    }
  },
);

it.each(BOUND_TABLES)('every bound of $table stands in the docs', async (one) => {
  for (const [key, { low, high }] of Object.entries(await read<{ low: number; high: number }>(one)))
    expect(cellsOf(one.table, key).slice(2, 4).map(Number), key).toEqual([low, high]);
});

it('every rule says where it comes from', () => {
  for (const line of rules.split('\n').filter((row) => /^\| `/.test(row)))
    expect(line.split('|').at(-2)!.trim(), line).not.toBe('');
});

describe('the sums', () => {
  const figures = sources.filter(({ name }) => name.replaceAll('\\', '/').startsWith('plan/pour/figures/'));
  const keys = new Set(
    figures.flatMap(({ text }) => [...text.matchAll(/\bkey: '(\w+)'/g)].map(([, key]) => key!)),
  );
  const rows = doc('sums.md')
    .split('\n')
    .filter((line) => line.startsWith('| `'))
    .map((line) => line.split(/(?<!\\)\|/).map((cell) => cell.trim()));

  it('of every figure that the page opens have a formula, inputs and a source', () => {
    expect(keys.size).toBeGreaterThan(40);
    const shown = new Set(rows.map(([, key]) => key!.replaceAll('`', '')));
    expect([...keys].filter((key) => !shown.has(key))).toEqual([]);
    for (const [, key, title, unit, formula, inputs, source] of rows)
      for (const cell of [title, unit, formula, inputs, source]) expect(cell, key).not.toBe('');
  });

  it('whose formula is written in a line of the sources is that line', () => {
    const texts = figures.map(({ text }) => text).join('\n');
    const whole = [...texts.matchAll(/formula:\s*'([^']+)'/g)].map(([, formula]) => formula!);
    const shown = rows.map(([, , , , formula]) => formula!);
    expect(whole.length).toBeGreaterThan(30);
    expect(whole.filter((formula) => !shown.includes(formula))).toEqual([]);
  });
});

/** The pages follow the code, or `npm run docs -- --check` says so; tried on a rule that is changed for the while of the test. */
it('the check of the docs finds nothing, and finds a default that has moved', () => {
  const check = (...more: string[]) =>
    spawnSync(process.execPath, ['scripts/docs.mjs', '--check', ...more], { cwd: root, encoding: 'utf8' });
  expect(check().stderr).toBe('');
  expect(POUR_RULES.strapTension.value).toBe(200);
  const moved = check('--as-if', 'POUR_RULES.strapTension=250');
  expect(moved.status).toBe(1);
  expect(moved.stderr).toContain('docs/rules.md');
});

describe('links between the docs', () => {
  const pages = [
    ...['README.md', 'DEVELOPERS.md', 'CHANGELOG.md', 'bench/README.md', 'sample-meshes/README.md'],
    ...readdirSync(join(root, 'docs'))
      .filter((name) => name.endsWith('.md'))
      .map((name) => `docs/${name}`),
  ];
  it.each(pages)('%s', (page) => {
    const text = readFileSync(join(root, page), 'utf8');
    const links = [...text.matchAll(/\]\(([^)#]+)(?:#[^)]*)?\)/g)].map(([, target]) => target!);
    const lost = links
      .filter((target) => !/^https?:/.test(target))
      .filter((target) => !existsSync(join(root, dirname(page), target)));
    expect(lost).toEqual([]);
  });
});
