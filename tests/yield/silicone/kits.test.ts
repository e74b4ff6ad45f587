import { describe, expect, it } from 'vitest';
import { cheapestKits } from '../../../src/yield';
import type { KitPurchase, SiliconeKit } from '../../../src/yield';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';

const PRICED: SiliconeKit[] = [
  { massKg: 1.1, price: 38 },
  { massKg: 5.5, price: 160 },
  { massKg: 22, price: 560 },
];
const buy = (kits: SiliconeKit[], needKg: number): KitPurchase => valueOf(cheapestKits(kits, needKg));
const told = ({ kits }: Pick<KitPurchase, 'kits'>): string =>
  kits.map(({ count, massKg }) => `${count}x${massKg}`).join(' + ');

/** Every purchase that could matter, tried one by one: the oracle. `unit` is what all masses are multiples of. */
function byHand(
  kits: { mass: number; price: number }[],
  need: number,
): { mass: number; price: number; count: number }[] {
  const covers: { mass: number; price: number; count: number }[] = [];
  const go = (index: number, sum: { mass: number; price: number; count: number }): void => {
    if (sum.mass >= need) covers.push(sum);
    if (index === kits.length || sum.mass >= need) return;
    const kit = kits[index]!;
    go(index + 1, sum);
    for (let n = 1; sum.mass + (n - 1) * kit.mass < need; n += 1)
      go(index + 1, {
        mass: sum.mass + n * kit.mass,
        price: sum.price + n * kit.price,
        count: sum.count + n,
      });
  };
  go(0, { mass: 0, price: 0, count: 0 });
  return covers;
}

describe('the cheapest kits', () => {
  // Worked by hand for invented prices.
  it.each([
    [3.2, '3x1.1', 114],
    [4.6, '1x5.5', 160],
    [7.4, '1x5.5 + 2x1.1', 236],
    [17, '3x5.5 + 1x1.1', 518],
    [20, '1x22', 560],
  ])('%d kg: %s for %d', (needKg, bought, price) => {
    const purchase = buy(PRICED, needKg);
    expect(told(purchase)).toBe(bought);
    expectClose(purchase.price!, price, 1e-12);
    expect(purchase.least).toBe('price');
  });

  it('tells the next cheaper waste: 20 kg in one 22 kg kit leave 2 kg, 3 x 5.5 and 4 x 1.1 leave 0.9 kg for 632', () => {
    const { nextCheaperWaste, surplusKg } = buy(PRICED, 20);
    expectClose(surplusKg, 2, 1e-9);
    expect(told(nextCheaperWaste!)).toBe('3x5.5 + 4x1.1');
    expectClose(nextCheaperWaste!.price!, 632, 1e-12);
    expectClose(nextCheaperWaste!.surplusKg, 0.9, 1e-9);
    expect(buy(PRICED, 3.2).nextCheaperWaste).toBeUndefined();
  });

  it('nothing to buy is nothing bought', () => {
    expect(buy(PRICED, 0)).toMatchObject({ kits: [], kitCount: 0, totalKg: 0, surplusKg: 0, price: 0 });
  });

  it('equal prices: the one that leaves less over', () => {
    const kits = [
      { massKg: 3, price: 30 },
      { massKg: 2, price: 15 },
      { massKg: 5, price: 30 },
    ];
    expect(told(buy(kits, 4))).toBe('2x2');
    expect(told(buy(kits, 3))).toBe('1x3');
  });

  it('prices that differ only by binary rounding are equal: 3 x 0.1 against 0.3', () => {
    const kits = [
      { massKg: 1, price: 0.1 },
      { massKg: 3, price: 0.3 },
    ];
    expect(told(buy(kits, 3))).toBe('1x3');
  });

  it('kits given away are taken, and not without end', () => {
    expect(
      told(
        buy(
          [
            { massKg: 1, price: 0 },
            { massKg: 5, price: 10 },
          ],
          4.5,
        ),
      ),
    ).toBe('5x1');
  });
});

describe('kits against every purchase tried one by one', () => {
  it('1000 shops of 1 to 4 kits: price, surplus, count and the next cheaper waste (seed 2701)', () => {
    const random = lcg(2701);
    let withNext = 0;
    for (let round = 0; round < 1000; round += 1) {
      const kits = Array.from({ length: 1 + Math.floor(4 * random()) }, () => ({
        mass: 1 + Math.floor(60 * random()),
        price: Math.floor(12 * random()) * 5,
      }));
      const need = Math.floor(between(random, 1, 150));
      const covers = byHand(kits, need);
      const message = `seed 2701, round ${round}, need ${need}, ${JSON.stringify(kits)}`;
      const [best] = [...covers].sort((a, b) => a.price - b.price || a.mass - b.mass || a.count - b.count);
      const purchase = buy(
        kits.map(({ mass, price }) => ({ massKg: mass / 10, price })),
        need / 10,
      );
      expect(purchase.price, message).toBe(best!.price);
      expect(Math.round(10 * purchase.totalKg), message).toBe(best!.mass);
      expect(purchase.kitCount, message).toBe(best!.count);
      const leaner = covers.filter(({ mass }) => mass < best!.mass).sort((a, b) => a.price - b.price);
      expect(purchase.nextCheaperWaste?.price, message).toBe(leaner[0]?.price);
      if (leaner.length > 0) withNext += 1;
    }
    expect(withNext).toBeGreaterThan(100);
  });

  it('without prices: least over, then fewest kits (seed 2702)', () => {
    const random = lcg(2702);
    for (let round = 0; round < 500; round += 1) {
      const kits = Array.from({ length: 1 + Math.floor(3 * random()) }, () => ({
        mass: 3 + Math.floor(60 * random()),
        price: 1,
      }));
      const need = Math.floor(between(random, 1, 120));
      const [best] = byHand(kits, need).sort((a, b) => a.mass - b.mass || a.count - b.count);
      const purchase = buy(
        kits.map(({ mass }) => ({ massKg: mass / 100 })),
        need / 100,
      );
      const message = `seed 2702, round ${round}`;
      expect(Math.round(100 * purchase.totalKg), message).toBe(best!.mass);
      expect(purchase.kitCount, message).toBe(best!.count);
      expect(purchase.least).toBe('surplus');
      expect(purchase.price).toBeUndefined();
    }
  });
});

describe('never short', () => {
  it('kits in pounds are counted in pounds: 10 lb are ten kits of 1 lb, not eleven', () => {
    const lb = 0.45359237;
    const purchase = buy(
      [
        { massKg: lb, price: 10 },
        { massKg: 8 * lb, price: 70 },
      ],
      10 * lb,
    );
    expect(purchase.kitCount).toBe(3);
    expect(purchase.roundedKits).toBe(false);
    expectClose(purchase.unitKg, lb, 1e-9);
  });

  it('odd masses, down to a tenth of a gram: what is bought holds what is needed (seed 2703)', () => {
    const random = lcg(2703);
    for (let round = 0; round < 60; round += 1) {
      const kits = [between(random, 0.2, 1.5), between(random, 2, 6), between(random, 8, 25)].map(
        (massKg) => ({
          massKg,
          price: Math.ceil(40 * massKg ** 0.85),
        }),
      );
      const needKg = between(random, 0.1, 40);
      const { totalKg, surplusKg } = buy(kits, needKg);
      expect(totalKg, `seed 2703, round ${round}`).toBeGreaterThanOrEqual(needKg);
      expectClose(totalKg - needKg, surplusKg, 1e-6);
    }
  });

  it('a need a hair above a kit buys the next one; the kit itself is enough for its own mass', () => {
    expect(told(buy(PRICED, 1.1))).toBe('1x1.1');
    expect(told(buy(PRICED, 1.1001))).toBe('2x1.1');
  });

  it('needing more is never cheaper', () => {
    let before = 0;
    for (let needKg = 0.1; needKg < 60; needKg += 0.1) {
      const price = buy(PRICED, needKg).price!;
      expect(price).toBeGreaterThanOrEqual(before);
      before = price;
    }
  });

  it('half a ton is answered, in round and in odd kits: 22 kits of 22 kg and 3 of 5.5 kg hold 500.5 kg', () => {
    const purchase = buy(PRICED, 500);
    expect(told(purchase)).toBe('22x22 + 3x5.5');
    expect(purchase.price).toBe(22 * 560 + 3 * 160);
    const odd = buy(
      [
        { massKg: 1.0237, price: 38 },
        { massKg: 5.4191, price: 160 },
      ],
      500,
    );
    expect(odd.totalKg).toBeGreaterThanOrEqual(500);
    expect(odd.price!).toBeLessThanOrEqual(Math.ceil(500 / 5.4191) * 160);
  });
});

describe('kits that cannot be', () => {
  it.each([
    ['a kit of 0 kg', [{ massKg: 0, price: 1 }], 1, 'kitKg'],
    ['a kit that is not a number', [{ massKg: NaN, price: 1 }], 1, 'kitKg'],
    ['a negative kit', [{ massKg: -1, price: 1 }], 1, 'kitKg'],
    ['a negative price', [{ massKg: 1, price: -1 }], 1, 'kitPrice'],
    ['a price that is not a number', [{ massKg: 1, price: NaN }], 1, 'kitPrice'],
    ['a need that is not a number', PRICED, NaN, 'needKg'],
    ['a negative need', PRICED, -1, 'needKg'],
    ['an endless need', PRICED, Infinity, 'needKg'],
  ])('%s', (_, kits, needKg, input) => {
    const problem = problemOf(cheapestKits(kits, needKg));
    expect(problem.code).toMatch(/^INPUT_/);
    expect(problem.values.input).toBe(input);
  });

  it('no kits at all', () => {
    expect(problemOf(cheapestKits([], 1)).code).toBe('KITS_NONE');
  });

  it('a price that is missing is said, and no price is made up', () => {
    const { findings, least, price } = buy([{ massKg: 1, price: 10 }, { massKg: 5 }], 4);
    expect(findings).toMatchObject([
      { code: 'KITS_UNPRICED', status: 'unknown', values: { unpriced: 1, of: 2 } },
    ]);
    expect([least, price]).toEqual(['surplus', undefined]);
  });
});
