import { describe, expect, it } from 'vitest';
import { filledVolume } from '../../src/plan';
import { problemOf, valueOf } from '../support/outcome';

const OUTER = { value: 1000, low: 990, high: 1010, from: 'scanned' } as const;

describe('what the foam fills of a cavity that something stands in', () => {
  it('is all of it where nothing does, to the last digit', () => {
    expect(valueOf(filledVolume(OUTER, {})).volumeCm3).toBe(OUTER);
    expect(valueOf(filledVolume(OUTER, { coreCm3: 0 })).volumeCm3).toBe(OUTER);
  });

  it('is less by the core and the armature, with ranges that add as squares (JCGM 100:2008, 5.1.2)', () => {
    const { volumeCm3 } = valueOf(filledVolume(OUTER, { coreCm3: 400, armatureCm3: 6 }));
    expect(volumeCm3.value).toBeCloseTo(594, 9);
    // 1.96 standard deviations of 1.5 % each, beside the 10 of the scan.
    const half = Math.hypot(10, 400 * 1.96 * 0.015, 6 * 1.96 * 0.015);
    expect(volumeCm3.high - volumeCm3.value).toBeCloseTo(half, 9);
    expect(volumeCm3.value - volumeCm3.low).toBeCloseTo(half, 9);
    expect(volumeCm3.from).toBe('scanned');
  });

  it('is refused where the core fills the mold', () => {
    expect(problemOf(filledVolume(OUTER, { coreCm3: 1000 })).code).toBe('CORE_FILLS_MOLD');
  });
});
