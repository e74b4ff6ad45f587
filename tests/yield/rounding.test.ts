import { describe, expect, it } from 'vitest';
import { roundParts } from '../../src/yield/rounding';
import type { RoundedParts } from '../../src/yield/rounding';
import { between, lcg } from '../support/lcg';
import { valueOf } from '../support/outcome';

const parts = (mixedG: number, a: number, b: number, stepG: number): RoundedParts =>
  valueOf(roundParts({ mixedG, ratio: { a, b, by: 'mass' }, stepG }));
const grams = ({ partAG, partBG, totalG }: RoundedParts): number[] => [partAG, partBG, totalG];

describe('whole steps of the scale', () => {
  it('one step more is taken where it keeps the ratio: 110 + 60 is 0.8 % off, 105 + 60 is 3.8 % (by hand)', () => {
    expect(grams(parts(166.8, 100, 55, 5))).toEqual([110, 60, 170]);
  });

  it.each([
    [965.612, 0.01, [330.34, 635.27, 965.61]],
    [965.612, 1, [330, 636, 966]],
  ])(
    'T1: %d g in steps of %d g stay the nearest total, as the ratio is within 0.5 %%',
    (mixedG, stepG, told) => {
      expect(grams(parts(mixedG, 52, 100, stepG))).toEqual(told);
    },
  );

  it('never more than 5 % is added: 35 g would be 2:5 to the gram, but 32 g are wanted and 30 are nearest', () => {
    expect(grams(parts(32, 40, 100, 5))).toEqual([10, 20, 30]);
  });

  it('more to mix never means less on the scale, in total or in a part (seed 610, each sweep of 2 000)', () => {
    const random = lcg(610);
    for (let round = 0; round < 40; round += 1) {
      const [a, stepG] = [between(random, 15, 300), [0.1, 0.5, 1, 2, 5, 10][round % 6] ?? 1];
      let before = parts(20 * stepG, a, 100, stepG);
      for (let sweep = 1; sweep <= 2000; sweep += 1) {
        const now = parts(stepG * (20 + 0.1 * sweep), a, 100, stepG);
        const message = `seed 610, round ${round}, A ${a}:100, step ${stepG}, sweep ${sweep}`;
        if (
          now.steps.total < before.steps.total ||
          now.steps.a < before.steps.a ||
          now.steps.b < before.steps.b
        )
          expect.fail(message);
        before = now;
      }
    }
  });

  it('never less than half a step below what is wanted, nor above both two steps and 5 % (seed 611)', () => {
    const random = lcg(611);
    let raised = 0;
    for (let round = 0; round < 2000; round += 1) {
      const [mixedG, a, stepG] = [
        between(random, 60, 3000),
        between(random, 20, 200),
        between(random, 0.1, 5),
      ];
      const { totalG, steps } = parts(mixedG, a, 100, stepG);
      const message = `seed 611, round ${round}`;
      expect(totalG, message).toBeGreaterThanOrEqual(mixedG - stepG * (0.5 + 1e-9));
      const more = totalG - mixedG;
      if (more > 0.5 * stepG * (1 + 1e-9)) {
        raised += 1;
        expect(more, message).toBeLessThanOrEqual(2.5 * stepG);
        expect(more, message).toBeLessThanOrEqual(0.05 * mixedG);
      }
      expect(steps.a + steps.b, message).toBe(steps.total);
    }
    expect(raised).toBeGreaterThan(50);
  });
});
