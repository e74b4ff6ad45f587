import { describe, expect, it } from 'vitest';
import { lastFill } from '../../src/app/measure/lastFill';
import { measureMarks } from '../../src/app/measure/marks';
import { wayVolumeWords } from '../../src/app/shelf/wayVolume';
import { newPiece } from '../../src/app/ticket/newPiece';
import { nextCasting, nextMold } from '../../src/app/ticket/nextCasting';
import { fillNow, pourNow } from '../../src/app/ticket/now';
import { pieceWith, wordsOfPiece } from '../../src/app/ticket/record';
import { seenNow } from '../../src/app/ticket/seenNow';
import { newTicket } from '../../src/app/ticket/state';
import { wordsOf } from '../../src/app/ticket/words';
import type { FillRow } from '../../src/job/book/bookRow';
import type { Piece } from '../../src/job/piece';
import { emptyCore } from '../../src/store';
import { expectClose } from '../support/close';
import { step, type } from './pageEngine';
import { fill, sunk, without, type Actions } from './waysEngine';

describe('a mold that was filled with water', () => {
  it('is not confirmed dry since, whatever was said before', () => {
    const dry = step(newTicket(), { do: 'pourFact', fact: 'moldWater', value: 'confirmed dry' });
    const { ticket } = without(...fill);
    expect(step(dry, ...type('fillWater', '4')).pouring.facts.moldWater).toBe('not confirmed dry');
    const check = pourNow(ticket).answer!.checks.find(({ code }) => code === 'MOLD_DAMP');
    expect(check?.status).toBe('stop');
    const undone = step(dry, ...type('fillWater', '4'), { do: 'undo' });
    expect(undone.pouring.facts.moldWater).toBe('confirmed dry');
  });

  it('says Stop where its jacket is of plaster, and so does a bare plaster sculpt in water', () => {
    const jacketed: Actions = [{ do: 'molding', molding: { type: 'skin', jacket: 'plaster' } }];
    expect(measureMarks(without(...fill, ...jacketed).ticket)[0]).toBe('stop');
    expect(measureMarks(without(...fill).ticket)[0]).toBe('fine');
    const plaster: Actions = [{ do: 'fact', fact: 'sculptSurface', value: 'plaster' }];
    expect(measureMarks(without(...sunk('water'), ...plaster).ticket)[0]).toBe('stop');
    expect(measureMarks(without(...sunk('rice'), ...plaster).ticket)[0]).not.toBe('stop');
  });

  it('is taken from the Book as it would be typed', () => {
    const taken = step(newTicket(), { do: 'takeFill', fill: { waterG: 4470, waterTempC: 21.5 } });
    expect(taken.fields.fillWater.text).not.toBe('');
    expectClose(fillNow(taken).answer!.volumeCm3.value, 4470 / 0.99789, 1e-5, 'cavity');
    expect(taken.pouring.facts.moldWater).toBe('not confirmed dry');
    const blank = step(taken, { do: 'takeFill', fill: { waterG: 4470 } });
    expect(blank.fields.fillTemp.text).toBe('');
  });

  it('is found in the Book by piece and mold, the newest', () => {
    const piece = newPiece({ name: 'Troll', today: '2026-01-01', core: emptyCore() });
    const row = (id: string, more: Partial<FillRow>): FillRow => ({
      kind: 'fill',
      id,
      piece: piece.id,
      ...more,
    });
    const rows = [
      row('1', { waterG: 4470, waterTempC: 20, day: '2026-02-01' }),
      row('2', { waterG: 4460, day: '2026-01-01' }),
      row('3', { waterG: 9, day: '2026-03-01', mold: 'another' }),
      row('4', { day: '2026-04-01' }),
      { ...row('5', { waterG: 8, day: '2026-05-01' }), piece: 'another' },
    ];
    expect(lastFill(rows, piece)).toEqual({ fill: { waterG: 4470, waterTempC: 20 }, day: '2026-02-01' });
    expect(lastFill(rows.slice(2), piece)).toBeUndefined();
    // With two molds a row has to name the one it is of.
    expect(lastFill(rows, nextMold(piece))).toBeUndefined();
  });
});

describe('what is kept of the size', () => {
  const fresh = newPiece({ name: 'Troll', today: '2026-01-01', core: emptyCore() });
  const { ticket } = without(...sunk('water'), ...fill);
  const piece = pieceWith(fresh, wordsOf(ticket));
  const { mold } = piece.hand;

  it('is read again as it was: the water with the mold, the sculpt’s own with the sculpt', () => {
    expect(Object.keys(piece.molds[mold]!.fields)).toEqual(expect.arrayContaining(['fillWater', 'fillTemp']));
    expect(Object.keys(piece.sculpt.fields)).toEqual(expect.arrayContaining(['sunkBefore', 'sunkAfter']));
    const { words, unread } = wordsOfPiece(JSON.parse(JSON.stringify(piece)) as Piece);
    expect(unread).toEqual([]);
    expect(wordsOf(words)).toEqual(wordsOf(ticket));
  });

  it('goes on to the next casting, and no water to another mold', () => {
    const next = nextCasting(piece, piece.hand.casting);
    expect(next.molds[mold]!.fields.fillWater?.text).toBe('4470');
    const other = nextMold(piece);
    expect(other.molds[other.hand.mold]!.fields.fillWater).toBeUndefined();
    expect(other.molds[mold]!.fields.fillWater?.text).toBe('4470');
    expect(fillNow({ ...newTicket(), ...wordsOfPiece(other).words }).state).toBe('open');
    expect(fillNow({ ...newTicket(), ...wordsOfPiece(next).words }).state).toBe('answered');
  });

  it('is on the Shelf without the engine, and its grams as they were seen', () => {
    expect(wayVolumeWords(fresh)).toBeUndefined();
    expect(wayVolumeWords(piece)).toMatch(/^4\u202f478 cm³, .* by the water fill$/);
    const seen = seenNow(ticket, { piece, outline: undefined, version: '1' });
    expect(seen.sculpt).toBeUndefined();
    expect(seen.casting!.seen.totalG).toBe(pourNow(ticket).answer!.cups.totalG);
  });
});
