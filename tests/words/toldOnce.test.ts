import { describe, expect, it } from 'vitest';
import { preparePour } from '../../src/plan';
import { finding, type Problem } from '../../src/problem';
import { mixedRange } from '../../src/words/mixedRange';
import { sayWhy } from '../../src/words/quantityWords';
import { toldOnce } from '../../src/words/toldOnce';
import { readQuantity } from '../../src/units';
import { FULL_POUR } from '../support/fullPour';
import { valueOf } from '../support/outcome';

const told = (...findings: Problem[]): string[] =>
  toldOnce(findings).map(({ code, status }) => `${code} ${status}`);

describe('a check and a finding that tell one thing', () => {
  it('that are alike are told by the finding', () => {
    expect(told(finding('CUP_TEST_TODAY', 'unknown'), finding('NO_CUP_TEST', 'unknown'))).toEqual([
      'NO_CUP_TEST unknown',
    ]);
  });

  it('of which one is worse are told by the worse one, whichever it is', () => {
    expect(told(finding('NO_CUP_TEST', 'unknown'), finding('CUP_TEST_TODAY', 'look'))).toEqual([
      'CUP_TEST_TODAY look',
    ]);
    expect(told(finding('PACK_RANGE', 'fine'), finding('PACK_UNUSUAL', 'look'))).toEqual([
      'PACK_UNUSUAL look',
    ]);
  });

  it('leave others alone', () => {
    const both = told(finding('MOLD_DAMP', 'unknown'), finding('NO_CUP_TEST', 'unknown'));
    expect(both).toEqual(['MOLD_DAMP unknown', 'NO_CUP_TEST unknown']);
  });
});

describe('what goes into all cups', () => {
  it('is within its range, and every cup more keeps one residue more', () => {
    const one = valueOf(preparePour({ ...FULL_POUR, cups: {} }));
    const several = valueOf(preparePour({ ...FULL_POUR, cups: { cupCm3: 300 } }));
    const more = several.cups.cups.length - one.cups.cups.length;
    expect(more).toBeGreaterThan(0);
    const grams = (text: string): number => Number(text.replaceAll(/\u202f/g, ''));
    const [low, high] = [grams(mixedRange(one).low), grams(mixedRange(one).high)];
    expect(low <= one.batch.mixedRangeG[0] && one.batch.mixedRangeG[1] <= high).toBe(true);
    expect(Math.abs(grams(mixedRange(several).low) - low - more * one.batch.inputs.residueG)).toBeLessThan(
      1.01,
    );
  });
});

describe('a unit that nobody knows', () => {
  it.each([
    ['12 furlongs', 'length', 'Use mm, cm, in.'],
    ['30 grad', 'temperature', 'Use °C, °F.'],
    ['40 blinks', 'plain', 'Type the number alone.'],
  ] as const)('%s: the hint names units of a %s', (text, kind, hint) => {
    const read = readQuantity(text, kind, {});
    if (read.kind !== 'error') throw new Error(`expected an error, got ${read.kind}`);
    expect(sayWhy(read.why).hint).toBe(hint);
  });
});
