import {
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { replaceFile } from '../../src/cli/replaceFile';
import { readShop, type Shop } from '../../src/job/shop';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { call, document, type Desk, type Document } from '../support/cliCall';
import { valueOf } from '../support/outcome';

const FILE = JSON.stringify({ ...SAMPLE_SHOP, book: SAMPLE_ROWS, presses: [{ bar: 2 }] });
const desk: Desk = { files: { 's.json': FILE } };
const book = (args: readonly string[], on: Desk = desk): Document =>
  document(['book', ...args, '--book', 's.json'], on);
type Rows = Record<string, unknown>[];

/** The shop as it was written; the file must open. */
const written = (args: readonly string[], on: Desk = desk, file = 's.json'): Shop => {
  const called = call(['book', ...args, '--book', file], on);
  expect(called.exit, called.notes).toBe(0);
  return valueOf(readShop(String(called.files.get(file)), file));
};

describe('book learn of the sample shop', () => {
  const { result, findings, assumptions, schema, inputs } = book(['learn']);
  const advice = result.advice as Rows;

  it('has the keys of the contract', () => {
    expect(schema).toBe('risewright/book@1');
    expect(inputs).toEqual({ action: 'learn', book: 's.json' });
    expect(Object.keys(result)).toEqual(['residue', 'free_rise', 'fill', 'advice']);
    expect(assumptions).toEqual([{ name: 'fill_chance', value: 0.95, unit: '', from: 'chosen' }]);
  });

  it('residue is a line; the light foam rises above its card', () => {
    expect(result.residue).toMatchObject({ way: 'line', pours: 12 });
    const [light] = result.free_rise as Rows;
    expect(light).toMatchObject({ foam: 'Sample Foam Light', cups: 2, short_pours: 1, full_pours: 5 });
    expect((light!.range_free_rise_kg_m3 as number[])[0]).toBeGreaterThan(light!.card_kg_m3 as number);
  });

  it('says what moved together, that pack alone is not enough, and one thing to change', () => {
    expect(advice.map(({ code }) => code)).toEqual([
      'moved_together',
      'good_only_with',
      'pack_not_enough',
      'change_next',
    ]);
    expect(advice[0]!.settings).toEqual(['mold_c', 'opening', 'room_c']);
    expect(advice[2]).toMatchObject({ good: 5, bad: 7 });
    for (const { text } of advice) expect(text).toMatch(/^[A-Z].*\.$/);
  });

  it('asks about pour 12 beside it', () => {
    expect(findings.map(({ code }) => code)).toEqual(['BOOK_CASTING_OVER']);
  });

  it('reads the same from --shop, and for a person the next pour stands last', () => {
    expect(document(['book', 'learn', '--shop', 's.json'], desk).result).toEqual(result);
    const { out } = call(['book', 'learn', '--book', 's.json'], desk);
    expect(out.trimEnd().split('\n').at(-1)).toMatch(/^ {2}Next +Change one next time: pour as pour 5/);
  });

  it('of one foam it says nothing of the other; a name that is no card is refused', () => {
    const [only, ...more] = book(['learn', '--foam', 'Sample Foam Light']).result.free_rise as Rows;
    expect([only!.foam, more]).toEqual(['Sample Foam Light', []]);
    expect(book(['learn', '--foam', 'Light']).error?.code).toBe('CARD_UNKNOWN');
  });
});

describe('book check', () => {
  it('catches pour 12, and only that', () => {
    const { result, findings } = book(['check']);
    expect(result).toMatchObject({ pours: 12 });
    expect(result.asks).toEqual([
      {
        pour: 12,
        id: 'pour-12',
        code: 'casting-over',
        field: 'casting_g',
        typed: 230,
        instead: 216,
        held_back: ['casting_g'],
        is_poured: true,
      },
    ]);
    expect(findings).toHaveLength(1);
    expect(findings[0]!.text).toContain('230 g is just what was poured');
  });
});

describe('book add', () => {
  const args = [
    'add',
    '--foam',
    'Sample Foam Light',
    '--mixed',
    '1 lb 2 oz',
    '--residue',
    '25',
    '--mold-temp',
    '95 F',
  ];

  it('writes one row under the others, and everything else in the file as it was', () => {
    const shop = written(args);
    const before = JSON.parse(FILE) as Record<string, unknown>;
    const { book: rows, ...rest } = shop as unknown as Record<string, unknown>;
    const { book: rowsBefore, ...restBefore } = before;
    expect(rest).toEqual(restBefore);
    expect((rows as Rows).slice(0, -1)).toEqual(rowsBefore);
    const added = (rows as Rows).at(-1)!;
    expect(added).toMatchObject({ kind: 'pour', no: 13, foam: 'Sample Foam Light', residueG: 25 });
    expect(added.mixedG).toBeCloseTo(18 * 28.349523125, 9);
    expect(added.moldC).toBeCloseTo(35, 9);
  });

  it('begins a book that is not there yet, and reads cards of another file', () => {
    const files = { 'cards.json': JSON.stringify(SAMPLE_SHOP) };
    const shop = written([...args, '--shop', 'cards.json'], { files }, 'new.json');
    expect(shop).toMatchObject({ foams: [], book: [{ no: 1 }] });
    expect(call(['book', 'add', '--mixed', '513', '--shop', 'gone.json'], { files }).exit).toBe(3);
  });

  it('writes cups and fills', () => {
    const cup = written([
      'add',
      '--kind',
      'cup',
      '--water',
      '500',
      '--foam-mass',
      '53.4',
      '--foam-mass',
      '54',
    ]);
    expect((cup.book as Rows).at(-1)).toMatchObject({ kind: 'cup', waterG: 500, foamsG: [53.4, 54] });
  });

  it('writes down what is odd and asks about it', () => {
    const { findings, result } = book(['add', '--mixed', '500', '--casting', '600']);
    expect(findings.map(({ code }) => code)).toEqual(['BOOK_CASTING_OVER']);
    expect(result.row).toMatchObject({ casting_g: 600 });
  });

  it.each<[string, string[], RegExp]>([
    ['a number that can be two', ['--mixed', '1,250'], /"1\.25 g" or "1250 g"/],
    ['nothing', [], /says nothing/],
    ['a skin beyond the scale', ['--skin', '9'], /not from 1 to 5/],
    ['a field of another kind', ['--kind', 'fill', '--residue', '3'], /has no --residue/],
    ['a day that is none', ['--day', '31.3.2026'], /is not a day/],
    ['a foam without a card', ['--foam', 'Foam'], /Foam/],
    ['an option of another action', ['--mixed', '3', '--leave-out'], /takes no --leave-out/],
  ])('%s is refused, and nothing is written', (_, more, why) => {
    const called = call(['book', 'add', ...more, '--book', 's.json'], desk);
    expect(called.exit).toBe(2);
    expect(called.notes).toMatch(why);
    expect(called.files.size).toBe(0);
  });

  it('a row that is there, word for word, is not written twice', () => {
    const file = JSON.stringify(written(args));
    const again = call(['book', ...args, '--book', 's.json'], { files: { 's.json': file } });
    expect([again.exit, again.files.size]).toEqual([2, 0]);
  });

  it('a disk that refuses is told', () => {
    const called = call(['book', ...args, '--book', 's.json'], { ...desk, cannotWrite: 'the disk is full' });
    expect([called.exit, called.notes.includes('the disk is full')]).toEqual([2, true]);
  });
});

describe('book list', () => {
  it('gives every row with units in its keys, and what cannot be read stays and is told', () => {
    const later = JSON.stringify({ ...SAMPLE_SHOP, book: [...SAMPLE_ROWS, { kind: 'press' }] });
    const on = { files: { 's.json': later } };
    const { result, findings } = book(['list'], on);
    expect(result).toMatchObject({ pours: 12, cups: 3, fills: 2, unread: 1 });
    expect((result.rows as Rows)[0]).toMatchObject({ no: 1, mixed_g: 513, mold_c: 20, pack_factor: 1.15 });
    expect(findings.map(({ code }) => code)).toEqual(['BOOK_ROW_UNREAD']);
    expect(written(['add', '--mixed', '500'], on).book).toContainEqual({ kind: 'press' });
  });

  it('of one kind; an empty book says what it is for', () => {
    expect(book(['list', '--kind', 'cup']).result).toMatchObject({ pours: 0, cups: 3 });
    const { out } = call(['book', 'list', '--shop', 's.json'], {
      files: { 's.json': JSON.stringify(SAMPLE_SHOP) },
    });
    expect(out).toContain('how much stays in the cup');
  });
});

describe('book export and import', () => {
  const csv = call(['book', 'export', '--book', 's.json'], desk).out;
  const list = (text: string): Desk => ({ files: { ...desk.files, 'l.csv': text } });

  it('stdout has the list and nothing else; --csv writes it to a file', () => {
    expect(csv.startsWith('Kind,Id,No,Day,')).toBe(true);
    expect(csv.endsWith('\r\n')).toBe(true);
    const called = call(['book', 'export', '--csv', 'l.csv', '--book', 's.json'], desk);
    expect(called.files.get('l.csv')).toBe(csv);
    expect(call(['book', 'export', '--csv', 's.json', '--book', 's.json'], desk).files.size).toBe(0);
  });

  it('into an empty book it is the same book; taken in again nothing is written', () => {
    const shop = written(['import', '--csv', 'l.csv'], list(csv), 'new.json');
    expect(shop.book).toEqual(JSON.parse(JSON.stringify(SAMPLE_ROWS)));
    const again = call(['book', 'import', '--csv', 'l.csv', '--book', 's.json', '--json'], list(csv));
    expect(JSON.parse(again.out)).toMatchObject({ result: { taken: 0, already_there: 17 } });
    expect(again.files.size).toBe(0);
  });

  it('a cell that cannot be read is told with its place and nothing is taken, or all rows but that', () => {
    const odd = list('"Mixed, g",Note\r\n"1,250",odd\r\n500,fine\r\n');
    const refused = call(['book', 'import', '--csv', 'l.csv', '--book', 's.json'], odd);
    expect([refused.exit, refused.files.size]).toEqual([3, 0]);
    expect(refused.out).toContain('Row 2, column 1 (Mixed, g): "1,250" was not taken.');
    const { result, assumptions } = book(['import', '--csv', 'l.csv', '--leave-out'], odd);
    expect(result).toMatchObject({ taken: 1, left_out: 1 });
    expect(assumptions).toEqual([{ name: 'kind', value: 'pour', unit: '', from: 'assumed' }]);
  });

  it('columns of other names are taken as --column says, and unknown ones are told', () => {
    const { result, findings } = book(
      ['import', '--csv', 'l.csv', '--column', 'Total=mixedG:oz', '--column', 'Who='],
      list('Total,Who,Weather\n8.71,me,fog\n'),
    );
    expect((result.rows as Rows)[0]!.mixed_g).toBeCloseTo(246.924, 3);
    expect(findings.map(({ code }) => code)).toEqual(['BOOK_COLUMN_UNKNOWN']);
    expect(
      book(['import', '--csv', 'l.csv', '--column', 'Total=grams'], list('Total\n1\n')).error?.code,
    ).toBe('BAD_CALL');
  });

  it('the id of another row with other words is a clash', () => {
    const called = call(
      ['book', 'import', '--csv', 'l.csv', '--book', 's.json'],
      list('Id,Note\npour-1,other\n'),
    );
    expect([called.exit, called.files.size]).toEqual([3, 0]);
    expect(called.out).toContain('pour-1');
  });

  it.each([
    ['no list', ['import', '--csv', 'l.csv'], 'Weather\nfog\n', 3],
    ['no file named', ['import'], '', 2],
    ['a list that is not there', ['import', '--csv', 'gone.csv'], '', 3],
  ])('%s is refused', (_, args, text, exit) => {
    expect(call(['book', ...args, '--book', 's.json'], list(text)).exit).toBe(exit);
  });
});

describe('a call of the book', () => {
  it('needs a book and one of its actions, and never writes an answer over it', () => {
    expect(call(['book', 'list']).exit).toBe(2);
    expect(call(['book', 'eat', '--book', 's.json'], desk).notes).toContain('book add, book list');
    const over = call(['book', 'list', '--book', 's.json', '-o', './s.json'], desk);
    expect([over.exit, over.files.size]).toEqual([2, 0]);
  });
});

describe('a file that is replaced', () => {
  const folder = mkdtempSync(join(tmpdir(), 'risewright-book-'));
  it('is whole, keeps its rights, leaves nothing beside it, and a link stays a link', () => {
    const [file, link] = [join(folder, 's.json'), join(folder, 'link.json')];
    writeFileSync(file, 'old', { mode: 0o600 });
    symlinkSync(file, link);
    replaceFile(link, 'new');
    expect(readFileSync(file, 'utf8')).toBe('new');
    expect(statSync(file).mode & 0o777).toBe(0o600);
    expect(readdirSync(folder).sort()).toEqual(['link.json', 's.json']);
    replaceFile(join(folder, 'first.json'), 'one');
    expect(readFileSync(join(folder, 'first.json'), 'utf8')).toBe('one');
    expect(() => replaceFile(join(folder, 'gone', 'x.json'), 'x')).toThrow(/ENOENT/);
    rmSync(folder, { recursive: true });
  });
});
