import { describe, expect, it } from 'vitest';
import {
  bookCsv,
  checkedPours,
  findingsOf,
  importBook,
  isThere,
  learnBook,
  readBook,
  sortRows,
  usualCasting,
  type BookRow,
  type PourRow,
} from '../../src/job/book';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { expectClose } from '../support/close';

const changed = (no: number, more: Partial<PourRow>): BookRow[] =>
  SAMPLE_ROWS.map((row) => (row.kind === 'pour' && row.no === no ? { ...row, ...more } : row));

const checked = (rows: readonly BookRow[], no: number) =>
  checkedPours(rows, SAMPLE_SHOP).find((pour) => pour.no === no)!;

const firm = (rows: readonly BookRow[]) =>
  learnBook(rows, SAMPLE_SHOP).foams.find(({ foam }) => foam === 'Sample Foam Firm')!;

describe('a figure that is kept as it was typed', () => {
  const rows = changed(12, { keptAsTyped: ['castingG'] });

  it('is not asked about again, stays in the book, and is still held back', () => {
    const pour = checked(rows, 12);
    expect(findingsOf(checked(SAMPLE_ROWS, 12), 1).map(({ code }) => code)).toEqual(['BOOK_CASTING_OVER']);
    expect(findingsOf(pour, 1)).toEqual([]);
    expect(pour.row.castingG).toBe(230);
    expect(pour.sound).not.toHaveProperty('castingG');
  });

  it('teaches what it taught while it was asked about: nothing', () => {
    expect(firm(rows)).toEqual(firm(SAMPLE_ROWS));
  });

  it('stays held back where what showed the slip is gone: its card, or a finer scale', () => {
    const turned = changed(3, { foam: 'A card that is gone', aG: 200, bG: 300, keptAsTyped: ['aG'] });
    const { sound, slips } = checked(turned, 3);
    expect(slips.filter(({ field }) => field === 'aG')).toEqual([]);
    expect(sound).not.toHaveProperty('aG');
    expect(sound).not.toHaveProperty('bG');
    const mixed = checked(changed(3, { keptAsTyped: ['mixedG'] }), 3).sound;
    for (const field of ['mixedG', 'aG', 'bG']) expect(mixed).not.toHaveProperty(field);
    expect(checked(changed(3, { keptAsTyped: ['balance'] }), 3).sound).toEqual({
      ...checked(SAMPLE_ROWS, 3).sound,
      keptAsTyped: ['balance'],
    });
  });

  it('another question about the same pour is still asked', () => {
    const pour = checked(changed(12, { keptAsTyped: ['castingG'], moldC: 98.6 }), 12);
    expect(pour.slips.map(({ code }) => code)).toEqual(['fahrenheit']);
  });

  it('weights that do not add up: answered by "balance", and by nothing else', () => {
    const off = { castingG: 480, residueG: 24 };
    const codes = (more: Partial<PourRow>) =>
      findingsOf(checked(changed(3, { ...off, ...more }), 3), 1).map(({ code }) => code);
    expect(codes({})).toEqual(['BOOK_BALANCE_OFF']);
    expect(codes({ keptAsTyped: ['castingG'] })).toEqual(['BOOK_BALANCE_OFF']);
    expect(codes({ keptAsTyped: ['balance'] })).toEqual([]);
  });

  it('a name that is no field is told, and the row stays', () => {
    const odd = { kind: 'pour', id: 'x', keptAsTyped: ['mood'] };
    expect(readBook([odd]).unread).toMatchObject([
      { at: 1, why: expect.stringMatching(/^keptAsTyped/) as string },
    ]);
  });
});

describe('a pour that is left out', () => {
  it('teaches nothing, is asked nothing, and is still in the list', () => {
    const rows = changed(12, { isLeftOut: true });
    const learned = learnBook(rows, SAMPLE_SHOP);
    expect(learned.pours).toHaveLength(12);
    expect(learned.residue.pours).toBe(11);
    expect(learned.next?.change?.fromPours).not.toContain(12);
    expect(findingsOf(checked(rows, 12), 1)).toEqual([]);
  });

  it('learns as a book without it does', () => {
    const without = SAMPLE_ROWS.filter((row) => row.id !== 'pour-6');
    const { pours: _all, ...left } = learnBook(changed(6, { isLeftOut: true }), SAMPLE_SHOP);
    const { pours: _fewer, ...never } = learnBook(without, SAMPLE_SHOP);
    expect(left).toEqual(never);
  });

  it('goes out and comes in with the list, and a list of before still finds its row', () => {
    const rows = changed(6, { isLeftOut: true, keptAsTyped: ['castingG', 'balance'] });
    const read = importBook(bookCsv(rows));
    if ('why' in read) throw new Error(read.why);
    expect(read.troubles).toEqual([]);
    expect(read.rows.find(({ draft }) => draft.id === 'pour-6')!.draft).toMatchObject({
      isLeftOut: true,
      keptAsTyped: ['castingG', 'balance'],
    });
    expect(sortRows(read, SAMPLE_ROWS)).toEqual({
      fresh: [],
      there: SAMPLE_ROWS.length,
      twice: 0,
      clashes: [],
    });
    expect(
      isThere(
        rows.find(({ id }) => id === 'pour-6')!,
        SAMPLE_ROWS,
      ),
    ).toBe('same');
  });

  it('another word than "yes" is asked about', () => {
    const read = importBook('Kind,Left out\npour,maybe\n');
    expect('why' in read ? [] : read.troubles).toMatchObject([{ row: 2, head: 'Left out' }]);
  });
});

describe('what a casting would weigh by the other pours', () => {
  const usualOf = (rows: readonly BookRow[], no: number) =>
    usualCasting(checked(rows, no).row, checkedPours(rows, SAMPLE_SHOP));

  it('pour 12: 214 g, by the five others of its foam', () => {
    const usual = usualOf(SAMPLE_ROWS, 12)!;
    expect(Math.round(usual.castingG)).toBe(214);
    // Missing of what left the cup: 1/196, 2/234, 2/248, 2/222, 2/242.
    const shares = [1 / 196, 2 / 234, 2 / 248, 2 / 222, 2 / 242];
    expectClose(usual.lostShare, shares.reduce((sum, one) => sum + one, 0) / 5, 1e-12);
    expect(usual).toMatchObject({ pours: 5, isOfFoam: true });
  });

  it('with too few of its foam, by all; with too few at all, or a weight missing, nothing', () => {
    const other = changed(12, { foam: 'Another' });
    expect(usualOf(other, 12)).toMatchObject({ isOfFoam: false, pours: 10 });
    const two = SAMPLE_ROWS.filter((row) => ['pour-2', 'pour-3', 'pour-12'].includes(row.id));
    expect(usualOf(two, 12)).toBeUndefined();
    const { trimG: _trim, ...untrimmed } = checked(SAMPLE_ROWS, 12).row;
    expect(usualCasting(untrimmed, checkedPours(SAMPLE_ROWS, SAMPLE_SHOP))).toBeUndefined();
  });
});
