import { describe, expect, it } from 'vitest';
import { gramsText } from '../../src/units';
import { bad, type Problem } from '../../src/problem';
import { sayOnPage } from '../../src/app/words/sayOnPage';
import { oneTwoFive } from '../../src/viewer/oneTwoFive';

describe('grams as the scale shows them', () => {
  it.each([
    [379, 1, '379'],
    [12.5, 0.05, '12.50'],
    [1234.5, 0.1, '1\u202f234.5'],
    [21000, 10, '21\u202f000'],
  ])('%f g in steps of %f is %s', (massG, stepG, text) => expect(gramsText(massG, stepG)).toBe(text));
});

describe('the length of a scale bar', () => {
  it.each([
    [120, 100],
    [99.9, 50],
    [20, 20],
    [0.019, 0.01],
    [1, 1],
    [4999, 2000],
  ])('at most %f is %f', (limit, length) => expect(oneTwoFive(limit)).toBe(length));

  it('is 1, 2 or 5 times a power of ten, and more than 40 % of what is allowed', () => {
    for (let limit = 0.003; limit < 5000; limit *= 1.07) {
      const length = oneTwoFive(limit);
      expect(length).toBeLessThanOrEqual(limit);
      expect(length).toBeGreaterThan(0.399 * limit);
      expect(['1', '2', '5']).toContain(length.toExponential()[0]);
    }
  });
});

describe('a sentence on the page', () => {
  const problems: Problem[] = [
    bad('SCALE_UNKNOWN', { tallUnits: 1, wideUnits: 1, deepUnits: 1 }).problem,
    bad('FLOOR_FOUND', { areaCm2: 100, topMm: 3, topUnits: 3 }).problem,
    bad('NOT_CLOSED', {
      doubtShare: 1,
      doubtCm3: 1,
      volumeCm3: 1,
      longestLoopMm: 9,
      longestLoopShare: 0.5,
      floorUnits: 3,
    }).problem,
    bad('UNSUPPORTED_FORMAT', { format: 'txt', known: 'stl, obj' }).problem,
    bad('MIN_FILL_UNKNOWN', { freeRiseKgM3: 96 }).problem,
    bad('STANDS_ON_POINT', { contactCm2: 0.65, rimUp: '+y' }).problem,
    bad('JACKET_NOT_FREE').problem,
    bad('PULL_THROUGH_BOARD', { pieces: 1 }).problem,
    bad('PULL_THROUGH_BOARD', { pieces: 2 }).problem,
    bad('BLOCK_SHUT').problem,
    bad('COATS_BY_AREA', { voxelMm: 1 }).problem,
    bad('SELF_INTERSECT', { part: 'check', fieldCm3: 2, differenceCm3: 1 }).problem,
  ];

  it.each(problems)('$code tells of no option of a command', (problem) => {
    const { text, hint } = sayOnPage(problem);
    expect(`${text} ${hint}`).not.toMatch(/(^|[ (])--[a-z]/);
  });
});
