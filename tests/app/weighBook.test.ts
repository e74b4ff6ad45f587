import { describe, expect, it } from 'vitest';
import { bookDiffers } from '../../src/app/weigh/bookDiffers';
import { rowOfCasting, takenBack, writtenInto } from '../../src/app/weigh/bookOfCasting';
import type { WeighFacts } from '../../src/app/weigh/pourOfWeigh';
import { weighNow } from '../../src/app/weigh/weighNow';
import { checkedPours, readBook, type PourRow } from '../../src/job/book';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import type { WeighState } from '../../src/job/weighState';
import type { ShopCore } from '../../src/store';
import { problemOf, valueOf } from '../support/outcome';
import { FACTS, FOUR, SHOP_CORE as CORE, typed } from './weighTyped';

describe('slips of the pen', () => {
  const hand: WeighFacts = {
    ...FACTS,
    piece: '2-hand',
    planned: { partAG: 68, partBG: 179, totalG: 247, stepG: 1, packFactor: 1.35, foam: 'Sample Foam Firm' },
  };
  const twelve = typed({ mixed: '247', residue: '17', trim: '14', casting: '230' });

  it('a casting that is just what was poured is asked about, with its reading: 230 of 247 less 17', () => {
    const [ask, ...more] = weighNow(twelve, hand, CORE).asks;
    expect(more).toEqual([]);
    expect(ask).toMatchObject({
      box: 'casting',
      isKept: false,
      slip: { code: 'casting-over', instead: 216, isPoured: true },
    });
    expect(ask!.picks.map(({ words }) => words)).toEqual(['216 g, as it was weighed with the trim on']);
    expect(weighNow(ask!.picks[0]!.to, hand, CORE)).toMatchObject({ asks: [], draft: { castingG: 216 } });
  });

  it('kept, it is written as typed and nothing is learned from it; not answered, the Book asks', () => {
    const open = weighNow(twelve, hand, CORE);
    expect(open.draft).toMatchObject({ castingG: 230 });
    const asked = checkedPours([{ ...open.draft, id: 'x' }], CORE)[0]!;
    expect(asked.slips.map(({ code }) => code)).toEqual(['casting-over']);
    const kept = weighNow(open.asks[0]!.keep.to, hand, CORE);
    expect(kept.asks[0]!.isKept).toBe(true);
    expect(kept.draft).toMatchObject({ castingG: 230, keptAsTyped: ['castingG'] });
    const checked = checkedPours([{ ...kept.draft, id: 'x' }], CORE)[0]!;
    expect(checked.slips).toEqual([]);
    expect(checked.sound.castingG).toBeUndefined();
  });

  it('a kept figure is asked about anew once another is typed', () => {
    const kept = weighNow(twelve, hand, CORE).asks[0]!.keep.to;
    const other = { ...kept, boxes: { ...kept.boxes, casting: { text: '240', unit: 'g' } } };
    const now = weighNow(other, hand, CORE);
    expect(now.asks[0]!.isKept).toBe(false);
    expect(now.draft.keptAsTyped).toBeUndefined();
  });

  it('ounces typed as grams, F typed as C: the reading puts the unit right and leaves the figure', () => {
    const oz = weighNow(typed({ mixed: '8.71' }), hand, CORE);
    expect(oz.asks[0]).toMatchObject({ box: 'mixed', slip: { code: 'ounces' } });
    expect(oz.asks[0]!.picks[0]!.words).toBe('8.71 oz, which is 247 g');
    const put = weighNow(oz.asks[0]!.picks[0]!.to, hand, CORE);
    expect(put.draft.mixedG).toBeCloseTo((8.71 * 453.59237) / 16, 9);
    expect(put.asks).toEqual([]);
    const hot = weighNow(typed({ mold: '98.6' }), hand, CORE);
    expect(hot.asks[0]!.picks[0]!.words).toBe('98.6 °F, which is 37 °C');
    expect(weighNow(hot.asks[0]!.picks[0]!.to, hand, CORE).draft.moldC).toBeCloseTo(37, 9);
  });

  it('ounces that nobody answered for stay asked about in the Book, and kept ones teach nothing', () => {
    const oz = weighNow(typed({ mixed: '8.71', residue: '0.6' }), hand, CORE);
    expect(oz.draft).toMatchObject({ mixedG: 8.71, plannedG: 247 });
    const open = checkedPours([{ ...oz.draft, id: 'x' }], CORE)[0]!;
    expect(open.slips.map(({ code }) => code)).toEqual(['ounces']);
    expect(open.sound).not.toHaveProperty('mixedG');
    const kept = weighNow(oz.asks[0]!.keep.to, hand, CORE);
    const checked = checkedPours([{ ...kept.draft, id: 'x' }], CORE)[0]!;
    expect(checked.slips).toEqual([]);
    expect(checked.sound).not.toHaveProperty('mixedG');
  });

  it('A and B the other way round are asked about, and turned or left', () => {
    const facts = { ...hand, bench: { ...hand.bench, aG: 179, bG: 68 } };
    const [ask] = weighNow(typed({}), facts, CORE).asks;
    expect(ask).toMatchObject({ box: undefined, slip: { code: 'sides-swapped' } });
    expect(weighNow(ask!.picks[0]!.to, facts, CORE)).toMatchObject({ asks: [], draft: { aG: 68, bG: 179 } });
    expect(weighNow(ask!.keep.to, facts, CORE).draft).toMatchObject({ aG: 179, bG: 68, keptAsTyped: ['aG'] });
  });

  it('A and B that stand in the Book the other way round are asked about, and no button is offered that does nothing', () => {
    const known: PourRow = { kind: 'pour', id: 'k', aG: 179, bG: 68 };
    const [ask] = weighNow(typed({}), { ...hand, known }, CORE).asks;
    expect(ask).toMatchObject({ slip: { code: 'sides-swapped' }, picks: [] });
  });

  it('A and B of the bench that do not add up to the mix are asked about', () => {
    const facts = { ...hand, bench: { ...hand.bench, aG: 68, bG: 179 } };
    const [ask] = weighNow(typed({ mixed: '274' }), facts, CORE).asks;
    expect(ask).toMatchObject({ box: 'mixed', slip: { code: 'sum-off', instead: 247 } });
    expect(weighNow(ask!.picks[0]!.to, facts, CORE)).toMatchObject({ asks: [], draft: { mixedG: 247 } });
  });
});

describe('written into the book', () => {
  const draftOf = (
    state: WeighState,
  ): Omit<PourRow, 'id'> & { piece: string; casting: string; no: number } => ({
    ...weighNow(state, FACTS, CORE).draft,
    piece: FACTS.piece,
    casting: FACTS.casting,
    no: FACTS.no,
  });
  const once = valueOf(writtenInto(CORE, draftOf(typed(FOUR)), { take: undefined, atMs: 7 }));

  it('is one row more, and the same casting again takes its own place', () => {
    const rows = readBook(once.core.book).rows;
    expect(rows).toHaveLength(SAMPLE_ROWS.length + 1);
    expect(rows.at(-1)).toMatchObject({ no: 13, casting: 'c13', castingG: 531 });
    const later = { ...(rows.at(-1) as PourRow), lotB: 'L-08', isLeftOut: true };
    const edited: ShopCore = { ...once.core, book: [...rows.slice(0, -1), later] };
    const again = valueOf(
      writtenInto(edited, draftOf(typed({ ...FOUR, casting: '530', trim: '' })), {
        take: undefined,
        atMs: 8,
      }),
    );
    expect(readBook(again.core.book).rows).toHaveLength(SAMPLE_ROWS.length + 1);
    const row = readBook(again.core.book).rows.at(-1) as PourRow;
    expect(row).toMatchObject({ id: later.id, castingG: 530, lotB: 'L-08', isLeftOut: true });
    expect(row.trimG).toBeUndefined();
    expect(again.written.before).toEqual(later);
    expect(takenBack(again.core, again.written)).toEqual({ ok: true, value: edited });
    expect(takenBack(once.core, once.written)).toEqual({ ok: true, value: CORE });
  });

  it('a figure that was typed anew in the Book is told before an older one takes its place', () => {
    const row = readBook(once.core.book).rows.at(-1) as PourRow;
    expect(bookDiffers(row, draftOf(typed(FOUR)), 1)).toEqual([]);
    const anew = { ...row, castingG: 529, moldC: 34.5 };
    expect(bookDiffers(anew, draftOf(typed(FOUR)), 1)).toEqual(['the casting 529 g', 'the mold 34.5 °C']);
    expect(bookDiffers(row, draftOf(typed({ ...FOUR, trim: '' })), 1)).toEqual(['the trim 29 g']);
  });

  it('takes the place of an older row of the piece with its number and no casting, and of no other', () => {
    expect(rowOfCasting(SAMPLE_ROWS, { piece: '2-hand', casting: 'x', no: 12 })?.id).toBe('pour-12');
    expect(rowOfCasting(SAMPLE_ROWS, { piece: '1-troll', casting: 'x', no: 12 })).toBeUndefined();
    expect(rowOfCasting(once.core.book, { piece: '1-troll', casting: 'other', no: 13 })).toBeUndefined();
  });

  it('the stock becomes less only where that is ticked and the lot is known, and is given back with the row', () => {
    const ticked = typed(FOUR, { isTaken: true });
    expect(weighNow(ticked, FACTS, CORE).take).toBeUndefined();
    expect(weighNow(typed(FOUR, { lot: 'L-07' }), FACTS, CORE).take).toBeUndefined();
    const { take } = weighNow({ ...ticked, lot: 'L-07' }, FACTS, CORE);
    expect(take).toEqual({ card: 'Sample Foam Light', lot: 'L-07', aKg: 0.379, bKg: 0.209 });
    const done = valueOf(writtenInto(CORE, draftOf(ticked), { take, atMs: 9 }));
    expect(done.core.stock[0]).toMatchObject({ lot: 'L-07', aKg: 1.621, bKg: 0.891 });
    expect(valueOf(takenBack(done.core, done.written))).toEqual(CORE);
    const again = weighNow({ ...ticked, lot: 'L-07', takenOff: done.written.taken! }, FACTS, CORE);
    expect(again.take).toBeUndefined();
  });

  it('is refused where the book is none, and nothing is changed', () => {
    const refused = writtenInto({ ...CORE, book: { later: true } }, draftOf(typed(FOUR)), {
      take: undefined,
      atMs: 1,
    });
    expect(problemOf(refused).code).toBe('BOOK_NOT_A_LIST');
  });
});
