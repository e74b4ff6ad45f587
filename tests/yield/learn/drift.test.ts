import { describe, expect, it } from 'vitest';
import { learnDrift } from '../../../src/yield';
import { expectClose } from '../../support/close';

const life = (seen: readonly number[]) => seen.map((one, n) => ({ place: n + 1, seen: one }));

describe('whether something moves along the life of a mold', () => {
  it('under six castings: cannot tell, however straight they lie', () => {
    expect(learnDrift(life([0.99, 0.98, 0.97, 0.96, 0.95]))).toEqual({ verdict: 'cannot-tell', castings: 5 });
    expect(learnDrift([]).verdict).toBe('cannot-tell');
  });

  it('scatter without a trend: still, with a range that holds nothing at all', () => {
    const drift = learnDrift(life([0.99, 0.985, 0.992, 0.987, 0.991, 0.986, 0.99]));
    expect(drift.verdict).toBe('still');
    expect(drift.slope!.low).toBeLessThan(0);
    expect(drift.slope!.high).toBeGreaterThan(0);
  });

  it('a fall beyond the scatter: moves', () => {
    const drift = learnDrift(life([0.99, 0.981, 0.972, 0.958, 0.951, 0.94]));
    expect(drift.verdict).toBe('moves');
    expect(drift.slope!.high).toBeLessThan(0);
  });

  it('castings of one place have no line: cannot tell; castings that agree to the digit do not move', () => {
    const seen = [0.99, 0.98, 0.97, 0.96, 0.95, 0.94];
    const onePlace = seen.map((one) => ({ place: 3, seen: one }));
    expect(learnDrift(onePlace)).toEqual({ verdict: 'cannot-tell', castings: 6 });
    expect(learnDrift(life(Array.from(seen, () => 0.99)))).toMatchObject({ verdict: 'still', scatter: 0 });
  });

  it('slope, range and scatter are those of least squares', () => {
    // x = 1..6: Sxx = 17.5, Sxy = 9.5; Student t of 4 degrees at 0.95: 2.131847 (a printed table has 2.132).
    const drift = learnDrift(life([1, 2, 2, 3, 3, 4]));
    const slope = 9.5 / 17.5;
    const residuals = [1, 2, 2, 3, 3, 4].map((y, n) => y - 2.5 - slope * (n + 1 - 3.5));
    const scatter = Math.sqrt(residuals.reduce((sum, one) => sum + one * one, 0) / 4);
    expectClose(drift.slope!.value, slope, 1e-12);
    expectClose(drift.scatter!, scatter, 1e-9);
    expectClose(drift.slope!.high, slope + (2.131847 * scatter) / Math.sqrt(17.5), 1e-5);
  });

  it('a casting that nobody weighed leaves its place free, and the others keep theirs', () => {
    const points = life([0.99, 0.98, 0.97, 0.96, 0.95, 0.94, 0.93]).filter(({ place }) => place !== 3);
    expectClose(learnDrift(points).slope!.value, -0.01, 1e-9);
  });
});
