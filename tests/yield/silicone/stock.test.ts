import { describe, expect, it } from 'vitest';
import { needBeyondStock } from '../../../src/yield';
import type { BeyondStock, SiliconeStock } from '../../../src/yield';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';

const ratio = { base: 10, catalyst: 1, by: 'mass' as const };
const beyond = (mixedKg: number, ...stock: SiliconeStock[]): BeyondStock =>
  valueOf(needBeyondStock({ mixedKg, ratio, stock }));

describe('what the shelf already holds', () => {
  it('6 kg of base and 0.6 kg of catalyst make 6.6 kg: of 8 kg, 1.4 kg are to buy', () => {
    expect(beyond(8, { baseKg: 6, catalystKg: 0.6 })).toEqual({
      needKg: 1.4,
      usableKg: 6.6,
      scarcer: 'neither',
      leftBaseKg: 0,
      leftCatalystKg: 0,
    });
  });

  it('base without catalyst makes nothing: the scarcer part rules', () => {
    expect(beyond(5, { baseKg: 6 })).toMatchObject({
      needKg: 5,
      usableKg: 0,
      scarcer: 'catalyst',
      leftBaseKg: 6,
    });
    expect(beyond(5, { baseKg: 6, catalystKg: 0.2 })).toMatchObject({ needKg: 2.8, scarcer: 'catalyst' });
    expect(beyond(5, { baseKg: 1, catalystKg: 0.6 })).toMatchObject({ needKg: 3.9, scarcer: 'base' });
  });

  it('enough on the shelf is nothing to buy, and what stays is told', () => {
    expect(beyond(2.2, { baseKg: 6, catalystKg: 0.6 })).toMatchObject({
      needKg: 0,
      leftBaseKg: 4,
      leftCatalystKg: 0.4,
    });
  });

  it('lots are added up, an empty shelf is no stock', () => {
    expect(beyond(8, { baseKg: 4 }, { baseKg: 2, catalystKg: 0.1 }, { catalystKg: 0.5 }).needKg).toBe(1.4);
    expect(beyond(8).needKg).toBe(8);
  });

  it('what was used and what is left is what was there, and more stock never means more to buy (seed 2601)', () => {
    const random = lcg(2601);
    for (let round = 0; round < 500; round += 1) {
      const [mixedKg, baseKg, catalystKg] = [
        between(random, 0, 20),
        between(random, 0, 20),
        between(random, 0, 2),
      ];
      const { needKg, leftBaseKg, leftCatalystKg } = beyond(mixedKg, { baseKg, catalystKg });
      const used = baseKg - leftBaseKg + catalystKg - leftCatalystKg;
      expect(Math.abs(used + needKg - mixedKg), `seed 2601, round ${round}`).toBeLessThan(1e-8);
      expect(beyond(mixedKg, { baseKg: baseKg + 1, catalystKg }).needKg).toBeLessThanOrEqual(needKg);
    }
  });

  it('negative or nameless amounts are refused', () => {
    const bad = (stock: SiliconeStock, mixedKg = 1): unknown =>
      problemOf(needBeyondStock({ mixedKg, ratio, stock: [stock] })).values.input;
    expect(bad({ baseKg: -1 })).toBe('stockKg');
    expect(bad({ catalystKg: NaN })).toBe('stockKg');
    expect(bad({}, NaN)).toBe('needKg');
    const zero = { base: 10, catalyst: 0, by: 'mass' as const };
    expect(problemOf(needBeyondStock({ mixedKg: 1, ratio: zero, stock: [] })).values.input).toBe('ratioPart');
    expectClose(beyond(1).usableKg + 1, 1, 1e-12);
  });
});
