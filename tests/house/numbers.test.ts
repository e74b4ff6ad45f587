import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { COMMANDS } from '../../src/cli/commands';
import { document, type Desk } from '../support/cliCall';
import { everyNumber } from '../support/everyNumber';

/** docs/numbers.md names every number of every command, and nothing that is none. */

const root = resolve(import.meta.dirname, '../..');
const page = readFileSync(join(root, 'docs/numbers.md'), 'utf8');

/** Words between backticks, in the parts of a path: "rims[].length_mm" names rims and length_mm. */
const wordsOf = (text: string): Set<string> =>
  new Set([...text.matchAll(/`([^`]+)`/g)].flatMap(([, code]) => code!.split(/[^a-z0-9_]+/).filter(Boolean)));

const section = (command: string): string =>
  page.split(`\n## ${command}\n`)[1]?.split('\n## ')[0] ?? `no section of ${command}`;
/** A result that holds the result of another command is told there. */
const ALSO: Readonly<Record<string, readonly string[]>> = {
  packs: ['batch'],
  sheet: ['batch'],
};
const ENVELOPE = page.split('\n## ')[0]!;
/** What a part of the page names: the first cell of its rows. A sum or a rule that is named beside it is no key. */
const keysOf = (part: string): string =>
  part
    .split('\n')
    .filter((line) => line.startsWith('| `'))
    .map((line) => line.split('|')[1])
    .join('\n');
const named = (command: string): Set<string> =>
  wordsOf([ENVELOPE, ...[command, ...(ALSO[command] ?? [])].map((name) => keysOf(section(name)))].join('\n'));

const desk: Desk = {
  files: { 'shop.json': JSON.stringify({ ...SAMPLE_SHOP, book: SAMPLE_ROWS }) },
};
const BOX = ['box-40x30x20-ascii.stl', '--file-unit', 'mm'];
const TOLD = [
  ...['--volume', '4500', '--free-rise', '96', '--ratio', '100:55', '--altitude', '500', '--room', '18'],
  ...['--ingredients', '22', '--mold-temp', '24', '--cream', '60', '--times-at', '23', '--open', '25'],
  ...['--cup-volume', '1 L', '--projected-area', '450', '--plug-area', '20', '--straps', '3'],
  ...['--nco', '13 %', '--water', '0.5 %', '--wall', '25', '--warm-air', '45', '--warm-to', '36'],
  ...['--price-a', '9', '--price-b', '7', '--failure-cost', '80', '--past', '1.25=filled'],
];
const MOLD = [
  ...['--shop', 'shop.json', '--silicone', 'Sample Silicone 25', '--texture', '1.2', '--bond-area', '40'],
  ...['--paint-coverage', '5 m2', '--paint-coats', '2', '--open-skin', '5 %', '--stock-base', '1'],
  ...['--stock-catalyst', '0.1', '--base', 'closed'],
];

const HOLES = ['--liquid-volume', '300', '--pour-within', '30', '--rise-time', '90'];

/** Calls in which much was told, so that much is answered. */
const CALLS: readonly (readonly string[])[] = [
  ['size', ...BOX, '--offset', '5', '--voxel', '1'],
  ['size', 'quay-troll-scan.stl', '--up', '+y', '--tall', '290.9 mm'],
  ['fill', '--water', '4500', '--water-temp', '20'],
  ['displace', '--medium', 'water', '--before', '5 L', '--after', '6.2 L'],
  ['girth', '--limb', 'length=270mm,girths=300mm/210mm', '--ball', 'girth=400mm'],
  ['cup', '--cup-water', '480', '--water-temp', '21', '--foam-mass', '46', '--foam-mass', '47'],
  ['mold', ...BOX, ...MOLD, '--type', 'block', '--parts', '2'],
  ['mold', ...BOX, ...MOLD, '--voxel', '2', '--type', 'skin', '--coat', '3'],
  ['opening', ...BOX, '--voxel', '2', '--base', 'closed', ...HOLES],
  ['batch', ...TOLD],
  ['batch', '--shop', 'shop.json', '--foam', 'Sample Foam Light', '--volume', '4500'],
  ['packs', ...TOLD, '--pack', '1.25'],
  ['sheet', ...TOLD],
  [
    'run',
    '--castings',
    '10',
    '--molds',
    '2',
    '--shop',
    'shop.json',
    '--foam',
    'Sample Foam Light',
    ...TOLD.slice(0, 2),
  ],
  ['book', 'learn', '--book', 'shop.json'],
  ['book', 'list', '--book', 'shop.json'],
  ['book', 'check', '--book', 'shop.json'],
  ['units', '10 1/4 in'],
];

/** The last word of a path that is a name, "at_mm" of "places.0.at_mm.2". */
const keyOf = (path: string): string =>
  path
    .split('.')
    .filter((part) => part !== '' && !/^\d+$/.test(part))
    .at(-1) ?? '';

describe('each number of', () => {
  it.each(CALLS.map((args) => ({ args, line: args.slice(0, 4).join(' ') })))('$line', ({ args }) => {
    const { result, error } = document(args, desk);
    expect(error).toBeUndefined();
    const keys = new Set([...everyNumber(result)].map(([path]) => keyOf(path)));
    expect(keys.size).toBeGreaterThan(0);
    const known = named(args[0]!);
    expect([...keys].filter((key) => !known.has(key))).toEqual([]);
  });

  it('every command is there', () => {
    const called = new Set(CALLS.map(([name]) => name));
    // It writes files, and tells their names.
    called.add('sample');
    expect(COMMANDS.map(({ name }) => name).filter((name) => !called.has(name))).toEqual([]);
  });
});

const filesIn = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => readFileSync(join(root, folder, name), 'utf8'));
const cli = filesIn('src/cli').join('\n');
const known = `${cli}\n${filesIn('src/job/book').join('\n')}\n${filesIn('src/units').join('\n')}`;

/** Keys that tell a unit by their end: no branch of the code may hold one that the page does not name, be it called above or not. */
const UNIT =
  /\b([a-z][a-z0-9]*(?:_[a-z0-9]+)*_(?:mm|cm2|mm2|cm3|g|kg|kg_m3|kpa|pa|n|s|min|c|degrees|share|chance|price|cost))\??:/g;

it('no key with a unit is left out, whichever call gives it', () => {
  const all = wordsOf(`${ENVELOPE}\n${keysOf(page)}`);
  const keys = [...cli.matchAll(UNIT)].map(([, key]) => key!);
  expect(keys.length).toBeGreaterThan(100);
  expect([...new Set(keys)].filter((key) => !all.has(key))).toEqual([]);
});

it('no key is named that the code does not have', () => {
  const camel = (key: string): string =>
    key.replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase());
  const keys = page
    .split('\n')
    .filter((line) => line.startsWith('| `'))
    .flatMap((line) => [...wordsOf(line.split('|')[1]!)]);
  expect(keys.length).toBeGreaterThan(200);
  const isInCode = (key: string): boolean => new RegExp(`\\b(${key}|${camel(key)})\\b`).test(known);
  expect(keys.filter((key) => !isInCode(key.replace(/^range_/, '')))).toEqual([]);
});

it('every row says what the number is and whose figure it is', () => {
  const rows = page.split('\n').filter((line) => line.startsWith('| `'));
  for (const row of rows) {
    const cells = row.split(/(?<!\\)\|/).map((cell) => cell.trim());
    expect(cells, row).toHaveLength(6);
    expect(cells[2], row).not.toBe('');
    expect(cells[4], row).not.toBe('');
  }
});
