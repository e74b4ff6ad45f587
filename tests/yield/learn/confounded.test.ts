import { describe, expect, it } from 'vitest';
import { findConfounded } from '../../../src/yield/learn/confounded';
import type { TriedPour } from '../../../src/yield/learn/triedPour';
import { expectClose } from '../../support/close';
import { samplePours } from './samplePours';

describe('what moved together', () => {
  const found = findConfounded(samplePours);

  it('the sample book: the warmth of the mold and the plug; which one did it cannot be told', () => {
    expect(found.verdict).toBe('cannot-tell');
    expect(found.groups.some((group) => group.includes('moldC') && group.includes('opening'))).toBe(true);
    expect(found.groups.flat()).not.toContain('packFactor');
    expect(found.changeNext).toBe('moldC');
  });

  it('good skin came only with a denser pack, a warm mold and a plug', () => {
    expect(found.goodOnlyWith).toEqual({
      leastPack: 1.25,
      coldestMoldC: 35,
      plugged: true,
      pours: [2, 3, 5, 6, 8, 10, 11, 12],
    });
  });

  it('the pack alone is not enough: pour 7 against 5, the same pack, cold and open against warm and plugged', () => {
    expect(found.samePack).toEqual([
      { good: 5, bad: 7, packFactor: 1.3, differ: ['moldC', 'opening', 'roomC'] },
    ]);
  });

  const made = (rows: [pack: number, moldC: number, opening: 'open' | 'plug'][]): TriedPour[] =>
    rows.map(([packFactor, moldC, opening], i) => ({ no: i + 1, packFactor, moldC, opening, roomC: 20 }));

  it('a correlation by hand: molds 20, 30, 40 under open, open, plug', () => {
    const { pairs } = findConfounded(
      made([
        [1.3, 20, 'open'],
        [1.2, 30, 'open'],
        [1.3, 40, 'plug'],
      ]),
    );
    expect(pairs).toHaveLength(1);
    // Deviations -10, 0, 10 and -1/3, -1/3, 2/3: 10 / sqrt(200 x 2/3).
    expectClose(pairs[0]!.r, 10 / Math.sqrt(400 / 3), 1e-12);
  });

  it('each by itself (a full square of four) is apart; what never moved stands still', () => {
    const square = findConfounded(
      made([
        [1.2, 20, 'open'],
        [1.2, 35, 'plug'],
        [1.3, 20, 'plug'],
        [1.3, 35, 'open'],
      ]),
    );
    expect(square).toMatchObject({ verdict: 'apart', pairs: [], groups: [], still: ['roomC'], samePack: [] });
    expect(square.changeNext).toBeUndefined();
  });

  it('two pours say nothing, none say nothing', () => {
    expect(findConfounded(made([[1.2, 20, 'open']])).verdict).toBe('too-few');
    expect(findConfounded([])).toMatchObject({ verdict: 'too-few', pairs: [], pours: 0 });
  });

  it('a correlation of 0.7 and more counts: 5/7 of 1, 2, 3, 4, 5, 6 against a mixed order does, 23/35 does not (by hand)', () => {
    // Ranks of n = 6: r = 1 - 6 sum d^2 / (n (n^2 - 1)) (Spearman). Squares of 10: 1 - 60/210 = 5/7; of 12: 1 - 72/210 = 23/35.
    const ranks = (packs: number[]): TriedPour[] =>
      packs.map((pack, i) => ({ no: i, packFactor: 1 + pack / 20, moldC: 20 + i }));
    const [pair] = findConfounded(ranks([2, 1, 5, 4, 3, 6])).pairs;
    expectClose(pair!.r, 5 / 7, 1e-9);
    expect(findConfounded(ranks([3, 1, 2, 5, 6, 4])).pairs).toEqual([]);
  });

  it('settings that hang together through a third one are one group', () => {
    const chained = findConfounded(
      [20, 25, 30, 35].map((moldC, i): TriedPour => ({
        no: i,
        moldC,
        packFactor: 1.2 + moldC / 100,
        roomC: moldC - 5,
      })),
    );
    expect(chained.pairs).toHaveLength(3);
    expect(chained.groups).toEqual([['packFactor', 'moldC', 'roomC']]);
  });

  it('a setting that only two pours share with another cannot be held against it', () => {
    const pours: TriedPour[] = [
      { no: 1, packFactor: 1.2, moldC: 20 },
      { no: 2, packFactor: 1.3, moldC: 30 },
      { no: 3, packFactor: 1.4 },
      { no: 4, moldC: 40 },
    ];
    expect(findConfounded(pours)).toMatchObject({ verdict: 'apart', pairs: [], still: ['opening', 'roomC'] });
  });

  it('what every good casting had: of one alone, what is known of it; of none, nothing', () => {
    const poor: TriedPour = { no: 1, packFactor: 1.2, moldC: 20, opening: 'open', skin: 1 };
    expect(findConfounded([poor])).not.toHaveProperty('goodOnlyWith');
    const good: TriedPour = { no: 2, skin: 3, opening: 'open' };
    expect(findConfounded([poor, good]).goodOnlyWith).toEqual({ plugged: false, pours: [2] });
    const both = findConfounded([good, { no: 3, skin: 5, opening: 'plug', packFactor: 1.3 }]).goodOnlyWith;
    expect(both).toEqual({ leastPack: 1.3, plugged: false, pours: [2, 3] });
  });

  it('packs count as the same up to 0.02 apart, of one foam only', () => {
    const good: TriedPour = { no: 1, packFactor: 1.3, skin: 4, foam: 'light' };
    const against = (packFactor: number, foam = 'light'): number =>
      findConfounded([good, { no: 2, packFactor, skin: 2, foam }]).samePack.length;
    expect([1.28, 1.32, 1.279, 1.321].map((pack) => against(pack))).toEqual([1, 1, 0, 0]);
    expect(against(1.3, 'firm')).toBe(0);
  });

  it('a temperature that nobody measured is not made up', () => {
    const unmeasured = samplePours.map((pour): TriedPour => {
      const bare = { ...pour };
      delete bare.moldC;
      return bare;
    });
    expect(findConfounded(unmeasured).still).toContain('moldC');
  });
});
