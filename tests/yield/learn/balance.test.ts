import { describe, expect, it } from 'vitest';
import { SAMPLE_BOOK } from '../../../src/job/sampleBook';
import { massBalance } from '../../../src/yield/learn/balance';
import { expectClose } from '../../support/close';
import { problemOf, valueOf } from '../../support/outcome';

const row = (no: number): (typeof SAMPLE_BOOK)[number] => SAMPLE_BOOK[no - 1]!;

describe('weigh-back', () => {
  it('513 g mixed, 511 g found, 2 g missing: fine', () => {
    expect(valueOf(massBalance(row(1)))).toMatchObject({
      status: 'fine',
      mixedG: 513,
      foundG: 511,
      missingG: 2,
      notWeighed: [],
    });
  });

  it('of the twelve past pours ten close, the ninth waits for its trim, the twelfth found more than was mixed', () => {
    const statuses = SAMPLE_BOOK.map((pour) => valueOf(massBalance(pour)).status);
    expect(
      statuses
        .map((status, i) => (status === 'fine' ? '' : `${i + 1} ${status}`))
        .join(' ')
        .trim(),
    ).toMatch(/^9 unknown +12 look$/);
    expect(valueOf(massBalance(row(12)))).toMatchObject({ off: 'over', missingG: -14 });
  });

  it('the trim that was not weighed lies between 0 and what the others leave; the truth was 19 g', () => {
    const { wouldBeG, notWeighed } = valueOf(massBalance(row(9)));
    expect(notWeighed).toEqual(['trimG']);
    expect(wouldBeG).toEqual({ part: 'trimG', low: 0, high: 26 });
    expect(wouldBeG!.low <= 19 && 19 <= wouldBeG!.high).toBe(true);
  });

  it('live: one weight after the other', () => {
    expect(valueOf(massBalance({ mixedG: 500 }))).toEqual({
      status: 'unknown',
      notWeighed: ['residueG', 'castingG', 'trimG'],
      foundG: 0,
      mixedG: 500,
      missingG: 500,
      missingShare: 1,
    });
    const two = valueOf(massBalance({ mixedG: 500, residueG: 20 }));
    expect(two.wouldBeG).toBeUndefined();
    const three = valueOf(massBalance({ mixedG: 500, residueG: 20, trimG: 10 }));
    expect(three.wouldBeG).toEqual({ part: 'castingG', low: 455, high: 470 });
    expect(valueOf(massBalance({ mixedG: 500, residueG: 20, trimG: 10, castingG: 600 })).off).toBe('over');
    expect(valueOf(massBalance({ mixedG: 500, castingG: 600 }))).toMatchObject({
      status: 'look',
      off: 'over',
    });
  });

  it('what was mixed, when only that is missing: what was found, and up to 3 % more', () => {
    const { wouldBeG } = valueOf(massBalance({ residueG: 20, trimG: 10, castingG: 455 }));
    expect(wouldBeG).toMatchObject({ part: 'mixedG', low: 485 });
    expectClose(wouldBeG!.high, 500, 1e-12);
    expect(valueOf(massBalance({ residueG: 20, castingG: 455 }))).toEqual({
      status: 'unknown',
      notWeighed: ['trimG', 'mixedG'],
      foundG: 475,
    });
  });

  it.each([
    [515, 'fine'],
    [517, 'fine'],
    [518, 'look'],
    [500, 'fine'],
    [498, 'look'],
  ])('%d g mixed against 500 g found with a scale of 1 g: %s', (mixedG, status) => {
    // Four readings: 2 x 4^0.5 / 6^0.5 = 1.63 g of slack beyond 0 and 3 %.
    const weights = { mixedG, residueG: 20, castingG: 470, trimG: 10 };
    expect(valueOf(massBalance(weights)).status).toBe(status);
  });

  it('two readings of a scale of 1 g leave 2 x 2^0.5 / 6^0.5 = 1.15 g of slack, three 1.41 g', () => {
    const off = (more: object): unknown => valueOf(massBalance({ mixedG: 500, ...more })).off;
    expect(off({ castingG: 501.1 })).toBeUndefined();
    expect(off({ castingG: 501.2 })).toBe('over');
    expect(off({ castingG: 481.4, residueG: 20 })).toBeUndefined();
    expect(off({ castingG: 481.5, residueG: 20 })).toBe('over');
  });

  it('refuses a weight that is none', () => {
    expect(problemOf(massBalance({ mixedG: -3 })).values.input).toBe('mixedG');
    expect(problemOf(massBalance({ trimG: Number.NaN })).values.input).toBe('trimG');
  });
});
