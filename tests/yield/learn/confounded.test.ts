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

  it('a temperature that nobody measured is not made up', () => {
    const unmeasured = samplePours.map((pour): TriedPour => {
      const bare = { ...pour };
      delete bare.moldC;
      return bare;
    });
    expect(findConfounded(unmeasured).still).toContain('moldC');
  });
});
