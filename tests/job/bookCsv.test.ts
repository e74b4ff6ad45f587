import { describe, expect, it } from 'vitest';
import { bookCsv, importBook, type BookRow, type Imported } from '../../src/job/book';
import { csvRows } from '../../src/job/csvRows';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import { expectClose } from '../support/close';
import { lcg } from '../support/lcg';

const read = (text: string, wish: Parameters<typeof importBook>[1] = {}): Imported => {
  const imported = importBook(text, wish);
  if ('why' in imported) throw new Error(`line ${imported.line}: ${imported.why}`);
  return imported;
};
const drafts = (text: string, wish = {}): unknown[] => read(text, wish).rows.map(({ draft }) => draft);

describe('the book as CSV', () => {
  it('has its units in the heads, and every line ends in CR LF', () => {
    const lines = bookCsv(SAMPLE_ROWS).split('\r\n');
    expect(lines).toHaveLength(1 + SAMPLE_ROWS.length + 1);
    for (const head of ['"Mixed, g"', '"Mold, C"', '"Void, cm3"']) expect(lines[0]).toContain(head);
  });

  it('given out and taken in it is the same, notes that look like formulas, quotes and line ends too', () => {
    const odd: BookRow[] = ['=1+1', "'quoted", "'=1", '-2 mm', 'say "now",\r\nthen', '1,250'].map(
      (note, n) => ({ kind: 'pour', id: `o${n}`, note, trimG: 0 }),
    );
    const rows = [...SAMPLE_ROWS, ...odd];
    const { rows: back, troubles, heads } = read(bookCsv(rows));
    expect(troubles).toEqual([]);
    expect(heads).toEqual({ unknown: [], leftOut: [] });
    expect(back.map(({ draft }) => draft)).toEqual(rows);
    expect(bookCsv(odd)).toContain("'=1+1");
  });
});

/** What a spreadsheet that parts cells by a semicolon or a tab, and knows no quotes within, takes for cells. */
const cellsAtWorst = (text: string): string[] => text.split(/[;,\t\r\n]/).map((cell) => cell.trim());

describe('a note that looks like a formula', () => {
  it.each([
    ['=1+1', "'=1+1"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['\t=1', "'\t'=1"],
    ['\r+1', "'\r'+1"],
    ['left; =HYPERLINK("x")', 'left;\' =HYPERLINK("x")'],
    ['one\n-1', "one\n'-1"],
    ['\uff1d1', "'\uff1d1"],
  ])('%j is given out as %j', (note, given) => {
    const [, row] = csvRows(bookCsv([{ kind: 'pour', id: 'a', note }]), ',') as { cells: string[] }[];
    expect(row!.cells).toContain(given);
  });

  it('is none in the file however it is parted, and is the same again when it is taken in (seed 20261130)', () => {
    const random = lcg(20261130);
    const signs = [
      '=',
      '+',
      '-',
      '@',
      '\t',
      '\r',
      '\n',
      ';',
      ',',
      "'",
      '"',
      ' ',
      'a',
      '1',
      '\uff0b',
      '\u00a0',
    ];
    const notes = Array.from({ length: 500 }, () =>
      Array.from(
        { length: 1 + Math.floor(8 * random()) },
        () => signs[Math.floor(signs.length * random())],
      ).join(''),
    ).filter((note) => note.trim() !== '');
    const rows = notes.map((note, n) => ({ kind: 'pour' as const, id: `n${n}`, note }));
    const text = bookCsv(rows);
    expect(read(text).rows.map(({ draft }) => draft)).toEqual(rows);
    // A comma within a cell stands in quotes, which whoever parts by commas knows.
    for (const { cells } of csvRows(text, ',') as { cells: string[] }[])
      for (const cell of cells.flatMap((one) => cellsAtWorst(one.replaceAll(',', 'x'))))
        expect(cell).not.toMatch(/^[=+\-@\uff0b]/);
  });

  it('the longest of blanks takes no longer than it is', () => {
    const note = `${'\n '.repeat(100_000)}=1`;
    expect(drafts(bookCsv([{ kind: 'pour', id: 'a', note }]))).toEqual([{ kind: 'pour', id: 'a', note }]);
  });
});

describe('a list of another hand', () => {
  it('is taken by its heads and their units, whatever parts the cells', () => {
    const rows = drafts('Mixed (oz);Room [F];Note\r\n8,71;72;first\r\n') as {
      mixedG: number;
      roomC: number;
    }[];
    expectClose(rows[0]!.mixedG, 8.71 * 28.349523125, 1e-12);
    expectClose(rows[0]!.roomC, (72 - 32) / 1.8, 1e-12);
    expect(drafts('Mixed, g\tMold\n513\t35 C\n')).toEqual([{ kind: 'pour', mixedG: 513, moldC: 35 }]);
  });

  it('or as the caller says; a column that is left out is', () => {
    const columns = { Total: { field: 'mixedG', unit: 'g' }, Who: null } as const;
    expect(drafts('Total,Who\n513,me\n', { columns })).toEqual([{ kind: 'pour', mixedG: 513 }]);
    expect(read('Total,Who\n513,me\n', { columns }).heads.leftOut).toEqual(['Who']);
  });

  it('says that the kind was assumed, unless a column or the caller says it', () => {
    expect(read('"Mixed, g"\n513\n').kindAssumed).toBe(true);
    expect(read('Kind,"Mixed, g"\npour,513\n').kindAssumed).toBe(false);
    expect(read('"Water, g"\n500\n', { kind: 'cup' })).toMatchObject({
      kindAssumed: false,
      rows: [{ row: 2, draft: { kind: 'cup', waterG: 500 } }],
    });
  });

  it('tells the columns that are none of the book', () => {
    expect(read('"Mixed, g",Weather\n513,fog\n').heads.unknown).toEqual(['Weather']);
  });

  it.each<[string, string, number, string | undefined]>([
    ['a comma that can be two things', '"1,250"', 1, 'comma-or-thousands'],
    ['no number', 'much', 1, 'not-a-number'],
    ['a unit of another kind', '20 C', 1, 'wrong-kind'],
  ])('%s is refused with row and column, and the row with it', (_, cell, column, reason) => {
    const { rows, troubles } = read(`"Mixed, g",Note\n513,fine\n${cell},odd\n`);
    expect(rows.map(({ row }) => row)).toEqual([2]);
    expect(troubles).toHaveLength(1);
    expect(troubles[0]).toMatchObject({ row: 3, column, head: 'Mixed, g', why: { reason } });
  });

  it('a number without a unit, in cell and head, is not guessed', () => {
    expect(read('Mixed\n513\n').troubles).toMatchObject([
      { row: 2, column: 1, why: { reason: 'unit-missing' } },
    ]);
    expect(drafts('Mixed\n513 g\n')).toEqual([{ kind: 'pour', mixedG: 513 }]);
    expect(read('"Mixed, stone"\n5\n').troubles).toMatchObject([{ row: 2, column: 1 }]);
  });

  it.each([
    ['Opening\najar\n', 1],
    ['Day\n31.3.2026\n', 1],
    ['No\n1.5\n', 1],
    ['"Mixed, g",Mixed (oz)\n1,2\n', 2],
    ['Note\nfine,more\n', 2],
  ])('%j is told at column %i', (text, column) => {
    const { troubles } = read(text);
    expect(troubles.map((trouble) => trouble.column)).toEqual([column]);
  });

  it('a skin beyond the scale is told with its row', () => {
    expect(read('Skin\n9\n').troubles).toEqual([{ row: 2, wanted: 'skin: it is not from 1 to 5' }]);
  });

  it('blank lines are no rows', () => {
    expect(drafts('"Mixed, g"\n\n513\n\n')).toEqual([{ kind: 'pour', mixedG: 513 }]);
  });

  it.each([
    ['"Mixed, g"\n"513\n', /never closed/],
    ['Note\n"a"b\n', /behind a closing quote/],
    ['Weather,Mood\nfog,grim\n', /none of its heads/],
    ['', /none of its heads/],
  ])('%j is no list, and says why', (text, why) => {
    expect(importBook(text)).toMatchObject({ why: expect.stringMatching(why) as string });
  });
});

describe('records of comma-separated values', () => {
  it('of every sort in RFC 4180, each with its line', () => {
    const text = '\ufeffa,"b ""x"" c"\r\n"two\r\nlines",\r\nlast,';
    expect(csvRows(text, ',')).toEqual([
      { line: 1, cells: ['a', 'b "x" c'] },
      { line: 2, cells: ['two\r\nlines', ''] },
      { line: 4, cells: ['last', ''] },
    ]);
    for (const text of ['a\nb\nc', 'a\rb\rc\r', 'a\r\nb\r\nc\r\n'])
      expect(csvRows(text, ',')).toMatchObject([
        { line: 1, cells: ['a'] },
        { line: 2, cells: ['b'] },
        { line: 3, cells: ['c'] },
      ]);
    expect(csvRows('6" nail;b', ';')).toEqual([{ line: 1, cells: ['6" nail', 'b'] }]);
  });
});
