import { describe, expect, it } from 'vitest';
import { largestSection, sectionsAlong } from '../../../src/geometry/measure/sectionsAlong';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { joined, moved } from '../../support/meshTools';
import { mushroom, polygonArea, polygonPerimeter } from '../../support/polygons';
import {
  box,
  flaredHead,
  icosphere,
  revolve,
  revolvedVolume,
  type OutlinePoint,
  type Vec3,
} from '../../support/shapes';

/** Sums of doubles: nothing else is left where the figure of the polygon itself is known. */
const EXACT = 1e-11;

describe('sections along an axis', () => {
  const sides = 64;
  const head: readonly OutlinePoint[] = [[0, 5], ...flaredHead];
  const solid = revolve(head, sides);
  /** Radius at a height, along the straight flanks of the outline. */
  const radiusAt = (z: number): number => {
    const k = flaredHead.findIndex(([, top]) => top >= z);
    const [[r0, z0], [r1, z1]] = [flaredHead[k - 1]!, flaredHead[k]!];
    return r0 + ((z - z0) / (z1 - z0)) * (r1 - r0);
  };

  it('every layer of a turned head is the polygon at its height', () => {
    const along = sectionsAlong(solid, { direction: [0, 0, 2], count: 50 });
    expectClose(along.heightsMm[0]!, 5 + 203 / 100, EXACT, 'middle of the first layer');
    along.heightsMm.forEach((z, i) => {
      expectClose(along.areasMm2[i]!, polygonArea(radiusAt(z), sides), EXACT, `area at ${z}`);
      expectClose(along.perimetersMm[i]!, polygonPerimeter(radiusAt(z), sides), EXACT, `perimeter at ${z}`);
    });
  });

  it('areas times the step are the volume, along any direction, seed 3', () => {
    const random = lcg(3);
    for (let i = 0; i < 5; i++) {
      const direction = [0, 1, 2].map(() => between(random, -1, 1)) as unknown as Vec3;
      const { areasMm2, stepMm } = sectionsAlong(solid, { direction, count: 400 });
      // Midpoint rule at 1/400 of the length: measured 6.2e-6 at the most along forty directions.
      expectClose(
        stepMm * areasMm2.reduce((a, b) => a + b),
        revolvedVolume(head, sides),
        1e-5,
        direction.join(' '),
      );
    }
  });

  it('shells that overlap count once here too', () => {
    const both = joined(box([10, 20, 30]), box([10, 20, 30], [6, 5, 0]));
    for (const area of sectionsAlong(both, { direction: [0, 0, 1], count: 7 }).areasMm2)
      expectClose(area, 340, EXACT);
  });

  it.each<[string, readonly OutlinePoint[], number, number, number, number]>([
    ['head, where its radius is 62', head, polygonArea(62, sides), 135, 2e-4, 0.02],
    ['mushroom, in its cap', mushroom, polygonArea(30, sides), 45, EXACT, 5],
  ])('largest section of a %s', (_, outline, area, z, relative, withinMm) => {
    const largest = largestSection(revolve(outline, sides), [0, 0, 1]);
    expectClose(largest.areaMm2, area, relative);
    expect(largest.areaMm2).toBeLessThanOrEqual(area * (1 + EXACT));
    expect(Math.abs(largest.heightMm - z)).toBeLessThanOrEqual(withinMm);
  });

  it('largest section of a ball of radius 50 anywhere: pi r2, at the height of its center', () => {
    const at: Vec3 = [400, -200, 70];
    const direction: Vec3 = [0.6, 0, 0.8];
    const largest = largestSection(moved(icosphere(50, 5), at), direction);
    // 20 480 facets: 5.4e-4 short of the ball in volume, so two thirds of that in section.
    expectClose(largest.areaMm2, Math.PI * 2500, 4e-4);
    expect(Math.abs(largest.heightMm - (0.6 * at[0] + 0.8 * at[2]))).toBeLessThanOrEqual(0.5);
  });

  it('nothing has no section', () => {
    const none = { positions: new Float64Array(0), triangles: new Int32Array(0) };
    expect([...sectionsAlong(none, { direction: [0, 0, 1], count: 3 }).areasMm2]).toEqual([0, 0, 0]);
    expect(largestSection(none, [0, 0, 1]).areaMm2).toBe(0);
  });
});
