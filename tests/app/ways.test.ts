import { describe, expect, it } from 'vitest';
import { measureMarks } from '../../src/app/measure/marks';
import { isVolumeStopped } from '../../src/app/batch/marks';
import { asksOf } from '../../src/app/ticket/asks';
import { newPiece } from '../../src/app/ticket/newPiece';
import { filledNow, fillNow, pourNow, pourToldNow, sculptNow, volumeNow } from '../../src/app/ticket/now';
import { readyKeyOf, readyNow } from '../../src/app/ticket/ready';
import { pieceWith } from '../../src/app/ticket/record';
import { newTicket } from '../../src/app/ticket/state';
import { wordsOf } from '../../src/app/ticket/words';
import { announce } from '../../src/app/words/announce';
import { emptyCore } from '../../src/store';
import { fillAgainst, RULES } from '../../src/yield';
import type { Desk } from '../../src/worker/answer';
import { expectClose } from '../support/close';
import { openBox, poured, settle, step, still, type } from './pageEngine';
import { AT_20, fill, foam, sunk, tape, water, without, type Actions } from './waysEngine';

describe('a volume without a scan', () => {
  it('by water comes to the grams of that volume, with its own range', () => {
    const { ticket } = without(...fill);
    const known = volumeNow(ticket).answer!;
    expect(known.by).toBe('fill');
    expectClose(known.volumeCm3.value, 4470 / AT_20, 1e-5, 'cavity');
    const told = pourToldNow(ticket)!;
    expect(told.pour.cavity).toEqual({ volumeCm3: known.volumeCm3 });
    expect([told.castingCm2, told.pour.uScanToMoldShare]).toEqual([undefined, undefined]);
    const pour = pourNow(ticket).answer!;
    expect(pour.cavityCm3).toEqual(known.volumeCm3);
    expect(pour.batch.totalG).toBeGreaterThan(0);
    expect(pour.sizeAware).toBeUndefined();
    expect(announce(ticket)).toContain('Volume 4\u202f478 cubic centimeters. A ');
  });

  it('by level and by the tape is surer or less sure, and the pour goes by it: its spread, its short fills, its spare', () => {
    const pours = [fill, sunk('water'), tape, sunk('rice')].map(
      (way) => pourNow(without(...way).ticket).answer!,
    );
    const spreads = pours.map(({ batch }) => (batch.mixedRangeG[1] - batch.mixedRangeG[0]) / batch.totalG);
    const chances = pours.map(({ batch }) => batch.shortFillChance);
    expect(spreads).toEqual([...spreads].sort((a, b) => a - b));
    expect(chances).toEqual([...chances].sort((a, b) => a - b));
    expect(chances[2]! / chances[0]!).toBeGreaterThan(1.05);
    const cavity = pours.map(({ batch }) => batch.uncertainty.find(({ input }) => input === 'cavity')!.share);
    expect(cavity[2]! / cavity[0]!).toBeGreaterThan(20);
  });

  it('of a sunk sculpt has the doubt between sculpt and mold on top, as a scan has', () => {
    const told = pourToldNow(without(...sunk('water')).ticket)!;
    expect(told.pour.uScanToMoldShare).toEqual({ value: RULES.uScanToMold.value, from: 'assumed' });
  });

  it('asks nothing but the pour: there is nothing to size, mold or draw', () => {
    const typed = step(newTicket(), ...foam, ...fill, still);
    expect(asksOf(typed).map(({ job }) => job)).toEqual(['pour']);
  });

  it('waits for every side of every body, and adds them up', () => {
    const two: Actions = [...tape, { do: 'addBody', kind: 'ball' }];
    expect(volumeNow(without(...two).ticket).state).toBe('open');
    const one = volumeNow(without(...tape).ticket).answer!.volumeCm3.value;
    const both = volumeNow(without(...two, ...type('body.1.girth', '314.159')).ticket).answer!.volumeCm3;
    // C^3/(6 pi^2) of a ball of 100 mm, flatter by what an oval of 1.2 to 1 is.
    expectClose(both.value - one, 523.6 * 0.98, 0.02, 'the ball');
  });

  it('lets a body go with its sides, and the next moves up', () => {
    const { ticket } = without(...tape, { do: 'addBody', kind: 'ball' }, ...type('body.1.girth', '314'), {
      do: 'dropBody',
      row: 0,
    });
    expect(ticket.sizing.bodies).toEqual([{ kind: 'ball' }]);
    expect(ticket.fields['body.0.girth']?.text).toBe('314');
    expect(ticket.fields['body.0.length']?.text).toBe('');
    expect(ticket.fields['body.1.girth']?.text).toBe('');
  });

  it.each(['4,470', 'much'])('has no grams while the water reads %s', (text) => {
    const { ticket } = without(...fill, ...type('fillWater', text));
    expect(volumeNow(ticket)).toEqual({ state: 'unread', field: 'fillWater' });
    expect(pourNow(ticket).state).toBe('open');
    expect(pourToldNow(ticket)).toBeUndefined();
  });

  it('that did not rise is refused and gives no grams', () => {
    const { ticket } = without(...sunk('water'), ...type('sunkAfter', '2.5'));
    expect(volumeNow(ticket).state).toBe('refused');
    expect(pourNow(ticket).state).toBe('open');
    expect(measureMarks(ticket)).toContain('stop');
  });

  it('with a wide range wants a look, a narrow one is fine', () => {
    expect(measureMarks(without(...tape).ticket).at(-1)).toBe('look');
    expect(measureMarks(without(...fill).ticket).at(-1)).toBe('fine');
  });

  it('is less what stands in the mold, and more once the mold is warmer than the water was', () => {
    const { ticket, desk } = without(...fill);
    const cored = settle(step(ticket, ...type('coreVolume', '478 cm3')), desk);
    expectClose(filledNow(cored).answer!.volumeCm3.value, 4000, 1e-3, 'with a core');
    const warm = settle(step(ticket, ...type('castingTemp', '40')), desk);
    expect(filledNow(warm).answer!.volumeCm3.value / volumeNow(warm).answer!.volumeCm3.value).toBeGreaterThan(
      1.005,
    );
    expect(filledNow(step(ticket, ...type('castingTemp', 'hot'))).state).not.toBe('answered');
  });

  it('is ready when it is said to be, until the volume changes; undone it is ready again', () => {
    const { ticket, desk } = without(...fill);
    const ready = step(ticket, { do: 'pouring', pouring: { readyFor: readyKeyOf(ticket)! } });
    expect(readyNow(ready)).toBe('ready');
    const more = step(ready, ...type('fillWater', '4480'));
    expect(readyNow(more)).toBe('changed');
    expect(readyNow(settle(more, desk))).toBe('changed');
    expect(readyNow(settle(step(more, { do: 'undo' }), desk))).toBe('ready');
  });
});

describe('water beside a scan', () => {
  // The box holds 2000 cm3 by its scan.
  const { ticket: scanned, desk } = poured();
  const filled = settle(step(scanned, ...water('2036.3')), desk);

  it('wins: the grams are of the mold, and the surface is still that of the scan', () => {
    expect(volumeNow(filled).answer!.by).toBe('fill');
    expect(sculptNow(filled).answer!.by).toBe('scan');
    expectClose(pourNow(filled).answer!.cavityCm3.value, 2036.3 / AT_20, 1e-5, 'cavity');
    expect(pourNow(filled).answer!.batch.totalG).toBeGreaterThan(pourNow(scanned).answer!.batch.totalG);
    expect(pourToldNow(filled)!.castingCm2).toBe(pourToldNow(scanned)!.castingCm2);
  });

  it('stands aside when the scan is chosen, and undo brings it back', () => {
    const aside = settle(step(filled, { do: 'fillAside', isAside: true }), desk);
    expect(volumeNow(aside).answer!.by).toBe('scan');
    expect(pourNow(aside).answer!.batch.totalG).toBe(pourNow(scanned).answer!.batch.totalG);
    expect(fillNow(aside).state).toBe('answered');
    expect(volumeNow(step(aside, { do: 'undo' })).answer!.by).toBe('fill');
  });

  it('within twice the doubts agrees, further off wants a look, at the volume and nowhere else', () => {
    expect(measureMarks(filled).at(-1)).toBe('fine');
    const far = settle(step(scanned, ...water('2136')), desk);
    expect(measureMarks(far).at(-1)).toBe('look');
    expect(isVolumeStopped(far)).toBe(false);
  });

  it('is no longer ready once water was filled in, and again once that is undone', () => {
    const ready = step(scanned, { do: 'pouring', pouring: { readyFor: readyKeyOf(scanned)! } });
    const wet = step(ready, ...type('fillWater', '2000'));
    expect([readyNow(ready), readyNow(wet), readyNow(step(wet, { do: 'undo' }))]).toEqual([
      'ready',
      'changed',
      'ready',
    ]);
  });

  it('is asked for once, after the scan is read again; meanwhile what was ready is ready', () => {
    const kept = { ...filled, scanId: 's' };
    const ready = step(kept, { do: 'pouring', pouring: { readyFor: readyKeyOf(kept)! } });
    const fresh = newPiece({ name: 'Box', today: '2026-01-01', core: emptyCore() });
    const piece = pieceWith(fresh, wordsOf(ready));
    const again = step(newTicket(), { do: 'load', piece });
    expect(volumeNow(again).state).toBe('working');
    expect(asksOf(again)).toEqual([]);
    expect(readyNow(again)).toBe('ready');
  });

  it('a scan brought in after a tape is the way in; water stays in the mold', () => {
    const bench: Desk = {};
    const opened = openBox(step(newTicket(), ...tape, ...water('2000')), bench);
    expect(opened.sizing.way).toBe('scan');
    expect(opened.fields.fillWater.text).toBe('2000');
    expect(volumeNow(settle(opened, bench)).answer?.by).toBe('fill');
  });

  it('holds sculpt against mold: a far one is further off than twice all that is in doubt', () => {
    const sculpt = { value: 1000, low: 1000, high: 1000, from: 'scanned' } as const;
    const mold = (value: number) => ({ value, low: value, high: value, from: 'water-fill' }) as const;
    expect(fillAgainst(sculpt, mold(1029))).toMatchObject({ allowedShare: 0.03, isFar: false });
    expect(fillAgainst(sculpt, mold(969)).isFar).toBe(true);
    // 30 cm3 more in doubt either way, at 95 of 100: hypot(3 %, 3 %).
    const wide = { ...sculpt, low: 970, high: 1030 };
    expectClose(fillAgainst(wide, mold(1040)).allowedShare, 0.03 * Math.SQRT2, 1e-9, 'limit');
  });
});
