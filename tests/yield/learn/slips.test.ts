import { describe, expect, it } from 'vitest';
import { SAMPLE_BOOK } from '../../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../../src/job/sampleShop';
import { findSlips } from '../../../src/yield/learn/slips';
import type { ExpectedPour } from '../../../src/yield/learn/slips';
import type { MassRatio } from '../../../src/yield';
import { expectClose } from '../../support/close';

const row = (no: number): (typeof SAMPLE_BOOK)[number] => SAMPLE_BOOK[no - 1]!;
const ratioOf = (foam: string): MassRatio =>
  SAMPLE_SHOP.foams.find(({ name }) => name === foam)!.ratio as MassRatio;
const known = (no: number): ExpectedPour => ({ ratio: ratioOf(row(no).foam) });

describe('slips', () => {
  it('of the twelve past pours only the twelfth has one: its casting is the mass that was poured', () => {
    const slips = SAMPLE_BOOK.flatMap((pour) =>
      findSlips(pour, known(pour.no)).map((slip) => [pour.no, slip]),
    );
    expect(slips).toEqual([
      [
        12,
        {
          code: 'casting-over',
          field: 'castingG',
          typed: 230,
          instead: 216,
          heldBack: ['castingG'],
          isPoured: true,
        },
      ],
    ]);
    expect(findSlips({ ...row(12), castingG: 214 }, known(12))).toEqual([]);
  });

  it('the fifth in ounces, as it was written: 8.71', () => {
    const [slip, ...more] = findSlips({ ...row(5), mixedG: 8.71 }, known(5));
    expect(more).toEqual([]);
    expect(slip).toMatchObject({ code: 'ounces', field: 'mixedG', typed: 8.71, heldBack: ['mixedG'] });
    expectClose(slip!.instead!, 8.71 * 28.349523125, 1e-12);
  });

  it('a whole row in ounces is seen against the plan', () => {
    const inOz = { aG: 2.4, bG: 6.31, mixedG: 8.71, castingG: 7.65 };
    const codes = findSlips(inOz, { mixedG: 245, castingG: 216, ratio: ratioOf('Sample Foam Firm') });
    expect(codes.map(({ code, field }) => `${code} ${field}`)).toEqual([
      'ounces mixedG',
      'ounces aG',
      'ounces bG',
      'ounces castingG',
    ]);
    expect(findSlips({ mixedG: 0.54 }, { mixedG: 247 })[0]!.code).toBe('pounds');
  });

  it('the eighth in Fahrenheit: 98.6 is 37 C; a warm mold in C is none', () => {
    const [slip] = findSlips({ ...row(8), moldC: 98.6 }, known(8));
    expect(slip).toMatchObject({ code: 'fahrenheit', field: 'moldC', typed: 98.6, heldBack: ['moldC'] });
    expectClose(slip!.instead!, 37, 1e-12);
    expect(findSlips({ moldC: 55, roomC: 38 })).toEqual([]);
    expect(findSlips({ roomC: 72 })[0]).toMatchObject({ code: 'fahrenheit', field: 'roomC' });
    expect(findSlips({ moldC: 300 })).toEqual([]);
  });

  it('A and B the other way round; near 1:1 nobody can tell', () => {
    const [slip] = findSlips({ ...row(5), aG: 179, bG: 68 }, known(5));
    expect(slip).toMatchObject({ code: 'sides-swapped', typed: 179, instead: 68, heldBack: ['aG', 'bG'] });
    expect(findSlips({ aG: 179, bG: 170 }, { ratio: { a: 95, b: 100, by: 'mass' } })).toEqual([]);
  });

  it('a sum that is none', () => {
    expect(findSlips({ ...row(2), bG: 149 }, known(2))[0]).toMatchObject({
      code: 'sum-off',
      typed: 551,
      instead: 506,
    });
  });

  it('a casting over by its own weight in rounding is let be, and one that cannot be weighed against anything', () => {
    expect(findSlips({ mixedG: 500, residueG: 20, trimG: 10, castingG: 471 })).toEqual([]);
    expect(findSlips({ castingG: 471 })).toEqual([]);
    expect(findSlips({ mixedG: 500, castingG: 600 })[0]).toMatchObject({ instead: 500, isPoured: false });
  });
});
