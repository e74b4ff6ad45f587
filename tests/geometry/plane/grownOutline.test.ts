import { describe, expect, it } from 'vitest';
import { distanceAt } from '../../../src/geometry/plane/growRegion';
import { grownOutline } from '../../../src/geometry/plane/grownOutline';
import { expectClose } from '../../support/close';
import { disc, rectangle, region } from './outlineShapes';

describe('outlines to look at', () => {
  /** Area inside and length, by the shoelace formula: outlines run around what they hold. */
  const figures = (outlines: readonly Float64Array[]): { area: number; length: number } => {
    const sum = { area: 0, length: 0 };
    for (const p of outlines)
      for (let i = 0; i < p.length; i += 2) {
        const j = (i + 2) % p.length;
        sum.area += (p[i]! * p[j + 1]! - p[j]! * p[i + 1]!) / 2;
        sum.length += Math.hypot(p[j]! - p[i]!, p[j + 1]! - p[i + 1]!);
      }
    return sum;
  };

  it('a ring has two, the hole the other way round', () => {
    const outlines = grownOutline(region(disc(50), disc(30, [0, 0], -1)), 5);
    expect(outlines).toHaveLength(2);
    const { area, length } = figures(outlines);
    expectClose(area, Math.PI * (55 ** 2 - 25 ** 2), 1e-3);
    expectClose(length, 2 * Math.PI * 80, 1e-3);
  });

  it('two discs have two until they merge; each point is as far off as asked', () => {
    const two = region(disc(20), disc(20, [60, 0]));
    expect(grownOutline(two, 5)).toHaveLength(2);
    const merged = grownOutline(two, 12);
    expect(merged).toHaveLength(1);
    const [points] = merged;
    const off = Array.from(
      points!.filter((_, i) => i % 2 === 0),
      (u, i) => Math.abs(distanceAt(two, u, points![2 * i + 1]!) - 12),
    );
    // A point is on the side of a cell that the outline crosses, and distances change by no more than the way gone: half a side.
    expect(Math.max(...off)).toBeLessThan(two.cellMm / 2);
    // Elsewhere than in the two notches only the arc bulges between corners of a cell, by side^2 / 8 / 32 mm.
    expect(off.filter((x) => x > (1.01 * two.cellMm ** 2) / 8 / 32).length).toBeLessThanOrEqual(8);
  });

  it('as fine as dust, or around a hair, it still closes', () => {
    for (const [segments, growMm] of [
      [rectangle(1e-4, 1e-4), 0.001],
      [rectangle(100, 0.01), 5],
    ] as const)
      expect(grownOutline(region(segments), growMm)).toHaveLength(1);
  });
});
