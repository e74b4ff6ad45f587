import { describe, expect, it } from 'vitest';
import { attitudeScore, type LevelFill, type OpeningPlan } from '../../src/plan';
import { airOfTiltCm3, attitudeRows, bestUpOf } from '../../src/words/openingAttitudes';

type Up = LevelFill['up'];

const fill = (up: Up, trapped: number, flatCm2: number, holdCm3 = 1000): LevelFill => ({
  up,
  tiltDegrees: 0,
  traps: [],
  pinholes: { count: 0, volumeCm3: 0 },
  trappedCm3: { value: trapped, low: trapped, high: trapped, from: 'scanned' },
  vents: [],
  leftCm3: 0,
  flat: { areaCm2: flatCm2 },
  holdCm3,
  ventsMissed: 0,
  ventsUnder: [],
  apart: { count: 0, volumeCm3: 0 },
});

/** Only what the rows look at. */
const planOf = (filling: LevelFill, best?: LevelFill[], liquidCm3?: number): OpeningPlan =>
  ({ filling, ...(best === undefined ? {} : { best }), opening: { liquidCm3 } }) as OpeningPlan;

const [Z, X, Y]: [Up, Up, Up] = [
  [0, 0, 1],
  [1, 0, 0],
  [0, 1, 0],
];

describe('ways up beside each other', () => {
  it('a level ceiling counts as a millimeter of air: 40 cm2 lose against 3 cm3, and win against 5', () => {
    const level = fill(Z, 0, 40);
    expect(bestUpOf(planOf(level, [fill(X, 3, 0)]))).toEqual(X);
    expect(bestUpOf(planOf(level, [fill(X, 5, 0)]))).toEqual(Z);
    expect(attitudeScore(level)).toBeCloseTo(4, 12);
  });

  it('one that does not hold the liquid loses, whatever air it keeps', () => {
    const rows = attitudeRows(planOf(fill(Z, 9, 0), [fill(X, 0, 0, 100)], 500))!;
    expect(rows.map(({ isBest }) => isBest)).toEqual([true, false]);
  });

  it('nothing where no others were looked for', () => {
    expect(attitudeRows(planOf(fill(Z, 9, 0)))).toBeUndefined();
  });

  it('a tilt that trades a level ceiling for pockets is told by the least air it shuts in', () => {
    const rows = (best: LevelFill[]): number | undefined =>
      airOfTiltCm3(attitudeRows(planOf(fill(Z, 0, 39.5), best))!);
    expect(rows([fill(X, 7.2, 0), fill(Y, 9, 2)])).toBe(7.2);
    // One of them keeps no more air: then a tilt does help.
    expect(rows([fill(X, 7.2, 0), fill(Y, 0, 2)])).toBeUndefined();
    expect(rows([fill(X, 7.2, 50)])).toBeUndefined();
    expect(rows([])).toBeUndefined();
    // 39.5 cm2 of ceiling are 3.95 cm3 of air: here the tilt is better.
    expect(rows([fill(X, 3, 0)])).toBeUndefined();
  });
});
