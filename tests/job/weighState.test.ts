import { describe, expect, it } from 'vitest';
import type { Piece } from '../../src/job/piece';
import { readPiece } from '../../src/job/piece';
import { giveBack, lotsOf, takeOff } from '../../src/job/stockTake';
import { readWeigh, withWeigh, type WeighState } from '../../src/job/weighState';

const piece = (weigh?: unknown): Piece => ({
  id: 'p',
  name: 'P',
  code: 'P',
  begunOn: '2026-01-01',
  sculpt: { fields: {}, choices: {} },
  molds: { m: { no: 1, fields: {}, choices: {} } },
  castings: { c: { no: 1, mold: 'm', fields: {}, choices: {}, ...(weigh === undefined ? {} : { weigh }) } },
  hand: { mold: 'm', casting: 'c' },
});

const SAID: WeighState = {
  boxes: { mixed: { text: '587', unit: 'g' }, trim: 'not', room: { text: '72', unit: 'F', picked: 22.2 } },
  filled: 'short',
  missing: { text: '3', unit: '%' },
  skin: 3,
  opening: 'plug',
  voids: ['front'],
  note: 'ear tip',
  isSwapped: true,
  isPlanOut: false,
  kept: { castingG: 230 },
  lot: 'L-07',
  isTaken: true,
  photo: 'x',
  takenOff: { card: 'F', lot: 'L-07', aKg: 0.379, bKg: 0.209 },
  written: { rowId: 'pour-1', atMs: 5, before: { kind: 'pour' } },
};

describe('what stands in a weigh-back', () => {
  it('is read as it was kept, out of a piece that went through a file', () => {
    const kept = withWeigh(piece(), 'c', SAID);
    const read = readPiece(JSON.parse(JSON.stringify(kept)));
    expect(readWeigh(read as Piece, 'c')).toEqual({ state: SAID, unread: [] });
  });

  it('is nothing where nothing was said, or of a casting that is not there', () => {
    expect(readWeigh(piece(), 'c')).toEqual({ state: { boxes: {} }, unread: [] });
    expect(readWeigh(piece(), 'gone')).toEqual({ state: { boxes: {} }, unread: [] });
    expect(withWeigh(piece(), 'gone', SAID)).toEqual(piece());
  });

  it.each<[string, unknown, string[]]>([
    ['a list', [], ['weigh-back']],
    ['boxes in words', { boxes: 'none', skin: 3 }, ['boxes']],
    ['a skin of 9', { boxes: {}, skin: 9, filled: 'full' }, ['skin']],
    ['a box of a number', { boxes: { mixed: 587, residue: { text: '25' } } }, ['mixed']],
    ['a box of a later version', { boxes: { lid: { text: '5' } } }, ['lid']],
    ['an answer of a later version', { boxes: {}, mood: 'grim' }, ['mood']],
    ['a stock of words', { boxes: {}, takenOff: { card: 'F', aKg: '1', bKg: 1 } }, ['takenOff']],
  ])('%s never keeps the piece or the rest from being read, and is told', (_, weigh, unread) => {
    const one = piece(weigh);
    expect(typeof readPiece(JSON.parse(JSON.stringify(one)))).toBe('object');
    expect(readWeigh(one, 'c').unread).toEqual(unread);
  });

  it('what cannot be read stays beside what is said, until it is said anew', () => {
    const one = piece({ boxes: { lid: { text: '5' }, mixed: 587 }, skin: 9, mood: 'grim' });
    const said = withWeigh(one, 'c', { boxes: { casting: { text: '531' } }, filled: 'full' });
    expect(said.castings.c).toMatchObject({
      weigh: {
        boxes: { lid: { text: '5' }, mixed: 587, casting: { text: '531' } },
        skin: 9,
        mood: 'grim',
        filled: 'full',
      },
    });
    const anew = withWeigh(said, 'c', { boxes: { mixed: { text: '587' } }, skin: 3 });
    expect(anew.castings.c).toMatchObject({ weigh: { skin: 3, mood: 'grim' } });
    expect(readWeigh(anew, 'c').state).toEqual({ boxes: { mixed: { text: '587' } }, skin: 3 });
  });
});

describe('what goes off the stock', () => {
  const stock = [
    { card: 'F', lot: 'L-07', aKg: 2, bKg: 1.1 },
    { card: 'F', lot: 'L-09', aKg: 0.3 },
    { card: 'S', baseKg: 6 },
  ];
  it('goes off that lot alone and comes back as it was, also in figures that binary fractions cannot hold', () => {
    const took = takeOff(stock, { card: 'F', lot: 'L-07', aKg: 0.379, bKg: 0.209 })!;
    expect(took.stock).toEqual([{ card: 'F', lot: 'L-07', aKg: 1.621, bKg: 0.891 }, stock[1], stock[2]]);
    expect(giveBack(took.stock, took.taken)).toEqual(stock);
  });
  it('never falls below nothing, and what was never counted stays so: what really went comes back', () => {
    const took = takeOff(stock, { card: 'F', lot: 'L-09', aKg: 0.379, bKg: 0.209 })!;
    expect(took.stock[1]).toEqual({ card: 'F', lot: 'L-09', aKg: 0 });
    expect(took.taken).toEqual({ card: 'F', lot: 'L-09', aKg: 0.3, bKg: 0 });
    expect(giveBack(took.stock, took.taken)).toEqual(stock);
  });
  it('is nothing where the lot is not there', () => {
    expect(takeOff(stock, { card: 'F', aKg: 1, bKg: 1 })).toBeUndefined();
    expect(giveBack(stock, { card: 'F', lot: 'gone', aKg: 1, bKg: 1 })).toEqual(stock);
    expect(lotsOf(stock, 'S')).toEqual([]);
  });
});
