import { describe, expect, it } from 'vitest';
import { checkedPours, readRow } from '../../src/job/book';
import { residueRows } from '../../src/job/book/evidence';
import { SAMPLE_BOOK } from '../../src/job/sampleBook';
import type { WeighBox, WeighState } from '../../src/job/weighState';
import type { WeighFacts } from '../../src/app/weigh/pourOfWeigh';
import { stateOfRow } from '../../src/app/weigh/stateOfRow';
import { weighNow } from '../../src/app/weigh/weighNow';
import { balanceWords } from '../../src/app/words/weighBalanceWords';
import { FACTS, FOUR, SHOP_CORE as CORE, typed } from './weighTyped';

describe('the row of a weigh-back', () => {
  it('has what was typed, the temperatures and the opening from the bench, and the plan; and is a sound row', () => {
    const { draft } = weighNow(
      typed(FOUR, { filled: 'full', skin: 3, voids: ['right side'], note: 'ear ' }),
      FACTS,
      CORE,
    );
    expect(draft).toEqual({
      kind: 'pour',
      piece: '1-troll',
      mold: 'm',
      casting: 'c13',
      no: 13,
      day: '2026-11-30',
      foam: 'Sample Foam Light',
      pack: 1.25,
      roomC: 22,
      moldC: 36,
      opening: 'plug',
      cavityCm3: 4478,
      aG: 379,
      bG: 209,
      mixedG: 587,
      residueG: 25,
      trimG: 29,
      castingG: 531,
      filled: 'full',
      skin: 3,
      note: 'voids: right side; ear; A and B as planned, not weighed',
    });
    expect(typeof readRow({ ...draft, id: 'x' })).toBe('object');
  });

  it('color is in the mix, as the scale weighs it: the sums have it too, and nothing is asked', () => {
    const colored: WeighFacts = { ...FACTS, planned: { ...FACTS.planned!, colorG: 18 } };
    const now = weighNow(typed({ mixed: '606', residue: '25', trim: '29', casting: '548' }), colored, CORE);
    expect(now.asks).toEqual([]);
    expect(now.draft).toMatchObject({ aG: 379, bG: 209, colorG: 18, mixedG: 606 });
    expect(now.balance).toMatchObject({ status: 'fine', missingG: 4 });
    const bench = { ...colored, bench: { ...FACTS.bench, aG: 379, bG: 209 } };
    const unweighed = weighNow(typed({ residue: '25', trim: '29', casting: '548' }), bench, CORE);
    expect(unweighed.asks).toEqual([]);
    expect(unweighed.balance).toMatchObject({ status: 'fine', mixedG: 606, missingG: 4 });
    const sound = checkedPours([{ ...unweighed.draft, id: 'x' }], CORE)[0]!;
    expect(sound.slips).toEqual([]);
    expect(residueRows([sound])).toEqual([{ no: 13, is: { mixedG: 606, residueG: 25 } }]);
    const without = weighNow(typed({ mixed: '588' }), bench, CORE);
    expect(without.asks[0]!.words.ask).toBe(
      'A and B with the color add up to 606 g, but 588 g is written as mixed.',
    );
  });

  it('leaves out what was skipped, and what was said not to be known, also over what the bench knew', () => {
    const state: WeighState = {
      boxes: { mixed: 'not', room: 'not', mold: { text: '', unit: 'C' } },
      filled: 'not',
      skin: 'not',
      opening: 'not',
      isPlanOut: true,
    };
    expect(weighNow(state, { ...FACTS, planned: undefined }, CORE).draft).toEqual({
      kind: 'pour',
      piece: '1-troll',
      mold: 'm',
      casting: 'c13',
      no: 13,
      day: '2026-11-30',
    });
  });

  it('reads units as they are typed or stand beside the box: oz, lb oz, F', () => {
    const state: WeighState = {
      boxes: {
        mixed: { text: '1 lb 4.7 oz', unit: 'g' },
        casting: { text: '18.73', unit: 'oz' },
        room: { text: '72 F', unit: 'C' },
        mold: { text: '98.6', unit: 'F' },
      },
    };
    const { mixedG, castingG, roomC, moldC } = weighNow(state, FACTS, CORE).draft;
    // 1 lb = 453.59237 g, 1 oz = 1/16 lb, exact.
    expect(mixedG).toBeCloseTo(453.59237 * (1 + 4.7 / 16), 9);
    expect(castingG).toBeCloseTo((18.73 * 453.59237) / 16, 9);
    expect(roomC).toBeCloseTo((72 - 32) / 1.8, 9);
    expect(moldC).toBeCloseTo(37, 9);
  });

  it('does not take a text that has two meanings or none: it is named, and nothing is guessed', () => {
    const { read, draft } = weighNow(typed({ mixed: '1,250', casting: 'five' }), FACTS, CORE);
    expect(read.unread).toEqual(['mixed', 'casting']);
    expect([draft.mixedG, draft.castingG]).toEqual([undefined, undefined]);
  });

  it('has A and B of the bench; the plan only where the mix does not gainsay it', () => {
    const weighed = { ...FACTS, bench: { ...FACTS.bench, aG: 380, bG: 210 } };
    expect(weighNow(typed({}), weighed, CORE).read.parts).toEqual({ aG: 380, bG: 210, from: 'bench' });
    expect(weighNow(typed({}), FACTS, CORE).read.parts).toEqual({ aG: 379, bG: 209, from: 'plan' });
    // A scale of 1 g steps: three readings are 2 x 0.408 x 1.732 = 1.41 g off at most.
    expect(weighNow(typed({ mixed: '589' }), FACTS, CORE).read.parts?.from).toBe('plan');
    const other = weighNow(typed({ mixed: '580' }), FACTS, CORE);
    expect(other.read.parts).toBeUndefined();
    expect(other.draft.note).toBeUndefined();
    expect(other.asks).toEqual([]);
  });

  it('has what is missing in cm3, of a share only where the cavity is known', () => {
    const short = (text: string, unit: string, facts = FACTS): number | undefined =>
      weighNow(typed({}, { filled: 'short', missing: { text, unit } }), facts, CORE).draft.voidCm3;
    expect(short('121', 'cm3')).toBe(121);
    expect(short('2.7', '%')).toBeCloseTo(120.906, 9);
    expect(short('2.7 %', 'cm3')).toBeCloseTo(120.906, 9);
    expect(short('2.7', '%', { ...FACTS, planned: undefined })).toBeUndefined();
    const full = typed({}, { filled: 'full', missing: { text: '121', unit: 'cm3' } });
    expect(weighNow(full, FACTS, CORE).draft.voidCm3).toBeUndefined();
  });
});

describe('the balance', () => {
  const said = (texts: Partial<Record<WeighBox, string>>, facts = FACTS) => {
    const { balance, stepG } = weighNow(typed(texts), facts, CORE);
    return { status: balance?.status, ...balanceWords(balance!, stepG) };
  };
  it('is struck as in the mock: 587 g mixed, 585 g found, 2 g missing, fine', () => {
    // 3 % of 587 is 17.61; four readings of 1 g steps 2 x 0.408 x 2 = 1.63.
    expect(said(FOUR)).toMatchObject({
      status: 'fine',
      sum: '587 g mixed, 585 g found, 2 g missing.',
      range: expect.stringMatching(/^Up to 19 g may be missing: .*common practice, no source/) as string,
    });
  });
  it('with one weight not there says within what it must lie', () => {
    expect(said({ mixed: '587', residue: '25', trim: '29' })).toEqual({
      status: 'unknown',
      sum: '587 g mixed, 54 g found; the casting is not weighed.',
      range: 'The others leave 515 g to 533 g for it.',
    });
    expect(said({ residue: '25', trim: '29', casting: '531' }).sum).toBe(
      '585 g found; the mix is not weighed.',
    );
  });
  it('tells more than went in, and more missing than gas takes', () => {
    expect(said({ ...FOUR, casting: '560' })).toMatchObject({
      status: 'look',
      sum: '587 g mixed, 614 g found: 27 g more than went in.',
    });
    expect(said({ ...FOUR, casting: '480' })).toMatchObject({
      status: 'look',
      sum: '587 g mixed, 534 g found, 53 g missing.',
    });
  });
  it('takes A and B of the bench for a mix that nobody weighed, and never the plan', () => {
    const { mixed: _mixed, ...three } = FOUR;
    expect(said(three, { ...FACTS, bench: { ...FACTS.bench, aG: 379, bG: 208 } }).sum).toContain(
      '587 g mixed, 585 g found',
    );
    expect(said(three).sum).not.toContain('588');
  });
});

it('a row that is in the book and never weighed back here reads back as itself', () => {
  for (const row of SAMPLE_BOOK) {
    const facts: WeighFacts = {
      ...FACTS,
      piece: row.piece,
      no: row.no,
      known: row,
      planned: undefined,
      bench: { day: '2026-11-30' },
    };
    const { draft } = weighNow(stateOfRow(row), facts, CORE);
    const { id: _id, ...rest } = row;
    expect(draft).toEqual({ ...rest, mold: 'm', casting: 'c13' });
  }
});
