import { describe, expect, it } from 'vitest';
import { measureLevels } from '../../../src/geometry';
import { valueOf } from '../../support/outcome';
import { joined, moved, turned } from '../../support/meshTools';
import { box } from '../../support/shapes';
import { expectClose } from '../../support/close';
import { fieldOf, levelsOf } from './levelsOf';
import { boxTruth, fullBall } from './truths';

const BOX = turned(box([50, 40, 30]), [1, 0.2, 0.1, 0.4]);

describe('a field that stands is asked again', () => {
  it('for the same levels: the same numbers to the last bit', () => {
    const field = fieldOf(BOX, [8, -6]);
    const first = valueOf(measureLevels(field, [8, -6]));
    expect(valueOf(measureLevels(field, [8, -6]))).toEqual(first);
    expect(levelsOf(BOX, [8, -6])).toEqual(first);
  });

  it('for other levels within its reach: what a fresh one of the same grid says, and the truth', () => {
    const field = fieldOf(BOX, [8]);
    const truth = boxTruth([50, 40, 30]);
    for (const level of [8, 5.5, 2, 0, -3, -8]) {
      const [again] = valueOf(measureLevels(field, [level]));
      // The grid is laid by the largest level outward, so a fresh field that is told of both has the same.
      expect(again, `level ${level}`).toEqual(valueOf(measureLevels(fieldOf(BOX, [8, level]), [level]))[0]);
      expectClose(again!.volumeMm3, truth(level), 1e-3, `level ${level}`);
    }
  });

  it('with overlaps too', () => {
    const pair = joined(fullBall(16, 24), moved(fullBall(16, 24), [18, 1, 2]));
    const field = fieldOf(pair, [6, -6]);
    for (const level of [6, 1, -5])
      expect(valueOf(measureLevels(field, [level]))).toEqual(
        valueOf(measureLevels(fieldOf(pair, [6, -6]), [level])),
      );
  });

  it('several levels at once or one by one: the same within their doubt', () => {
    const field = fieldOf(BOX, [8, -6]);
    const together = valueOf(measureLevels(field, [8, 3, -6]));
    [8, 3, -6].forEach((level, i) => {
      const alone = valueOf(measureLevels(field, [level]))[0]!;
      const allowed = alone.doubtMm3 + together[i]!.doubtMm3 + 1e-4 * alone.volumeMm3;
      expect(Math.abs(alone.volumeMm3 - together[i]!.volumeMm3)).toBeLessThan(allowed);
    });
  });

  it('beyond its reach that is a slip of ours', () => {
    const field = fieldOf(BOX, [4]);
    for (const level of [4.5, -4.5])
      expect(() => measureLevels(field, [level])).toThrow('measureLevels: expected levels');
  });
});
