import { describe, expect, it } from 'vitest';
import { cupsOfDraft, MOST_CUPS, newCupDraft, oneMoreCup, type CupDraft } from '../../src/app/cup/cupDraft';
import { pourToldNow } from '../../src/app/ticket/now';
import { nextCasting } from '../../src/app/ticket/nextCasting';
import { newPiece } from '../../src/app/ticket/newPiece';
import { pieceWith, wordsOfPiece } from '../../src/app/ticket/record';
import { wordsOf } from '../../src/app/ticket/words';
import { emptyCore } from '../../src/store';
import { expectClose } from '../support/close';
import { poured, settle, step, type } from './pageEngine';

const cups = (water: string, temp: string, ...foams: string[]): CupDraft => ({
  water: { text: water, unit: 'g' },
  temp: { text: temp, unit: 'C' },
  foams: foams.map((text) => ({ text, unit: 'g' })),
});

describe('a cup test', () => {
  it('is the foam over the volume of the water: 177.2 g in 1105 g at 25 C are 159.89 kg/m3', () => {
    const figures = cupsOfDraft(cups('1105', '25', '177.2'))!;
    expect(figures.ok).toBe(true);
    if (!figures.ok) return;
    // Reference, section 1, T3.
    expectClose(figures.value.freeRiseKgM3.value, 159.89, 1e-4, 'free rise');
    expect(figures.value.uShare).toBe(0.03);
    expectClose(figures.value.freeRiseKgM3.high / figures.value.freeRiseKgM3.value - 1, 1.6449 * 0.03, 1e-3);
  });

  it('of three cups is their mean, and surer', () => {
    const figures = cupsOfDraft(cups('1105', '25', '177.2', '178', '176.4'))!;
    expect(figures.ok && figures.value.cups).toHaveLength(3);
    expect(figures.ok && figures.value.uShare).toBe(0.015);
  });

  it('says nothing while a box has no single meaning, and takes 20 C where nobody measured', () => {
    expect(cupsOfDraft(newCupDraft())).toBeUndefined();
    expect(cupsOfDraft(cups('1105', 'warm', '177.2'))).toBeUndefined();
    expect(cupsOfDraft(cups('1105', '25', '177.2', 'much'))).toBeUndefined();
    const blank = cupsOfDraft(cups('1105', '', '177.2', ''))!;
    expect(blank.ok && blank.value).toMatchObject({ isTempAssumed: true, waterTempC: 20 });
  });

  it('is refused where no foam could weigh so', () => {
    const slip = cupsOfDraft(cups('1105', '25', '9000'))!;
    expect(slip.ok).toBe(false);
  });

  it('has as many cups as are worth weighing', () => {
    const many = Array.from({ length: 9 }).reduce<CupDraft>((draft) => oneMoreCup(draft), newCupDraft());
    expect(many.foams.length).toBeGreaterThanOrEqual(MOST_CUPS);
  });

  it('is taken as the free rise of today with its own doubt, which goes with the figure', () => {
    const { ticket, desk } = poured();
    const taken = settle(step(ticket, { do: 'cupTest', cup: { kgM3: 106.5432, uShare: 0.03 } }), desk);
    expect(pourToldNow(taken)!.pour.freeRiseKgM3).toEqual({ value: 106.5, from: 'cup-test', uShare: 0.03 });
    const other = settle(step(taken, ...type('freeRise', '107 kg/m3')), desk);
    expect(pourToldNow(other)!.pour.freeRiseKgM3).toEqual({ value: 107, from: 'cup-test' });
    const back = settle(step(taken, { do: 'undo' }), desk);
    expect(pourToldNow(back)).toEqual(pourToldNow(ticket));
  });

  it('is kept with the casting, and is none of today for the next', () => {
    const { ticket } = poured();
    const taken = step(ticket, { do: 'cupTest', cup: { kgM3: 106.5, uShare: 0.03 } });
    const fresh = newPiece({ name: 'Troll', today: '2026-01-01', core: emptyCore() });
    const piece = pieceWith(fresh, wordsOf(taken));
    expect(wordsOfPiece(piece).words.foam.cup).toEqual({ kgM3: 106.5, uShare: 0.03 });
    expect(wordsOfPiece(nextCasting(piece, piece.hand.casting)).words.foam.from).toBe('given');
  });
});
