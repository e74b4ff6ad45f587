import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  checkedPours,
  newRow,
  numberedPours,
  readBook,
  withRows,
  type BookRow,
  type PourRow,
} from '../../src/job/book';
import { readShop } from '../../src/job/shop';
import { shopText } from '../../src/job/shopText';
import { SAMPLE_BOOK, SAMPLE_ROWS } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { problemOf, valueOf } from '../support/outcome';

const pour = (more: Partial<PourRow> = {}): PourRow => ({ kind: 'pour', id: 'x', ...more });

describe('rows of the book', () => {
  it('every row of the sample is read as it stands', () => {
    expect(readBook(SAMPLE_ROWS)).toEqual({ rows: [...SAMPLE_ROWS], unread: [] });
  });

  it('every weight can be left out, and a key of a later version stays', () => {
    const later = { ...pour(), mood: 'grim' };
    expect(readBook([later]).rows).toEqual([later]);
  });

  it('rows of the first form, without kind and id, are pours by their number', () => {
    const { kind: _kind, id: _id, ...first } = SAMPLE_BOOK[2]!;
    expect(readBook([first]).rows).toEqual([{ ...first, kind: 'pour', id: 'pour-3' }]);
  });

  it.each<[string, unknown, RegExp]>([
    ['a row of an unknown kind', { kind: 'press', id: 'p' }, /kind/],
    ['a text where a mass belongs', { ...pour(), mixedG: '513' }, /^mixedG: /],
    ['a mass below nothing', { ...pour(), trimG: -1 }, /^trimG: it is below 0$/],
    ['a skin of 9', { ...pour(), skin: 9 }, /^skin: it is not from 1 to 5$/],
    ['a day that is none', { ...pour(), day: '2026-02-30' }, /^day: /],
    ['a number in its place', 7, /not an object/],
  ])('%s is told with its place, and the others are read', (_, entry, why) => {
    const { rows, unread } = readBook([pour({ id: 'one' }), entry, pour({ id: 'two' })]);
    expect(rows.map(({ id }) => id)).toEqual(['one', 'two']);
    expect(unread).toHaveLength(1);
    expect(unread[0]!.at).toBe(2);
    expect(unread[0]!.why).toMatch(why);
  });

  it('an id twice: the second is told', () => {
    expect(readBook([pour(), pour()])).toMatchObject({ rows: [pour()], unread: [{ at: 2 }] });
  });

  it('a shop with a book that nobody can read opens, and loses nothing of it', () => {
    for (const book of [{ shelves: 3 }, 'later', [{ kind: 'press', bar: 2 }, ...SAMPLE_ROWS]]) {
      const text = shopText({ ...SAMPLE_SHOP, book });
      const shop = valueOf(readShop(text, 's.json'));
      expect(shop.book).toEqual(book);
      expect(shopText(shop)).toBe(text);
      expect(readBook(book).unread).toHaveLength(1);
    }
  });

  it('the file of the first release opens with an empty book', () => {
    const shop = valueOf(readShop(readFileSync('tests/job/files/shop-1.json', 'utf8'), 'shop-1.json'));
    expect(readBook(shop.book)).toEqual({ rows: [], unread: [] });
  });
});

describe('a row more', () => {
  it('goes under the last, beside what cannot be read; a book that is no list is not written into', () => {
    const odd = { kind: 'press' };
    expect(valueOf(withRows([odd], [pour()]))).toEqual([odd, pour()]);
    expect(valueOf(withRows(undefined, [pour()]))).toEqual([pour()]);
    expect(problemOf(withRows({}, [pour()])).code).toBe('BOOK_NOT_A_LIST');
  });

  it('has an id from what it says, and the next number', () => {
    const draft = { kind: 'pour', mixedG: 513 } as const;
    const row = newRow(draft, SAMPLE_ROWS) as PourRow;
    expect(row).toMatchObject({ ...draft, no: 13 });
    expect(newRow(draft, [])).toMatchObject({ id: row.id, no: 1 });
    expect(newRow({ ...draft, mixedG: 514 }, []).id).not.toBe(row.id);
  });

  it('pours are called by their numbers, or by their places where those do not tell them apart', () => {
    const numbers = (...nos: (number | undefined)[]): number[] =>
      numberedPours(
        nos.map((no, n): BookRow => pour({ id: String(n), ...(no === undefined ? {} : { no }) })),
      ).map(({ no }) => no);
    expect(numbers(12, 3)).toEqual([3, 12]);
    expect(numbers(4, 4)).toEqual([1, 2]);
    expect(numbers(4, undefined)).toEqual([1, 2]);
  });
});

describe('slips of the pen', () => {
  it('only pour 12 has one, and only its casting is held back; the row stays as it was typed', () => {
    const pours = checkedPours(SAMPLE_ROWS, SAMPLE_SHOP);
    const asked = pours.filter(({ slips }) => slips.length > 0);
    expect(asked.map(({ no }) => no)).toEqual([12]);
    const { castingG: _castingG, ...rest } = SAMPLE_BOOK[11]!;
    expect(asked[0]!.sound).toEqual(rest);
    expect(asked[0]!.row).toEqual(SAMPLE_BOOK[11]);
  });
});
