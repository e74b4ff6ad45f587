import { describe, expect, it } from 'vitest';
import { sectionsOut } from '../../../src/geometry/features/demoldSections';
import { slitDepthMm, slitLine } from '../../../src/geometry/features/slitLine';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { mapPoints, moved, turned } from '../../support/meshTools';
import { turnedVector } from '../../support/polygons';
import { flaredHead, revolve, type OutlinePoint, type Vec3 } from '../../support/shapes';

const DOWN: Vec3 = [0, 0, -1];
const along = (a: readonly number[], b: readonly number[]): number =>
  a[0]! * b[0]! + a[1]! * b[1]! + a[2]! * b[2]!;

const bulb = revolve(
  [
    [0, 0],
    [30, 0],
    [15, 20],
    [40, 60],
    [0, 100],
  ],
  512,
);

describe('how deep and how long a slit is', () => {
  const found = sectionsOut(bulb, { way: DOWN });

  it('as deep as the casting is still too narrow: where the radius is 40 over the ratio', () => {
    // Above the neck the radius grows by 25 over 40 mm: 40 / 1.6 = 25 is reached 36 mm in, to a step of the planes.
    const depth = slitDepthMm(found, 1.6);
    expect(depth).toBeLessThanOrEqual(36);
    expect(depth).toBeGreaterThan(36 - 1.1);
    expect(slitDepthMm(found, 3)).toBe(0);
  });

  it('from the mouth over the neck to the bulb: 25 + sqrt(25^2 + 40^2) along the surface', () => {
    const slit = slitLine(found, { until: { alongMm: 60 } })!;
    expectClose(slit.lengthMm, 25 + Math.hypot(25, 40), 5e-3, 'length');
    expect(slit.fromMm[2]).toBeCloseTo(0.01, 6);
    expect(slit.toMm[2]).toBeCloseTo(60, 1);
    expectClose(Math.hypot(slit.fromMm[0], slit.fromMm[1]), 30, 1e-3, 'at the mouth');
    // A chord between planes 1 mm apart cuts the ridge by up to (0.625 + 1) / 4 mm.
    expectClose(Math.hypot(slit.toMm[0], slit.toMm[1]), 40, 0.41 / 40, 'at the bulb');
    expect(slit.isTied).toBe(true);
    expect(slit.tried).toHaveLength(36);
  });

  it('a slit of 30 mm ends 30 mm along the surface: 25 to the neck and 5 past it', () => {
    const slit = slitLine(found, { until: { lengthMm: 30 } })!;
    expectClose(slit.lengthMm, 30, 1e-9, 'length');
    expect(Math.abs(slit.toMm[2] - (20 + (5 * 40) / Math.hypot(25, 40)))).toBeLessThan(0.2);
  });
});

/** A bust: smooth at the back, a nose 14 mm long on the side of +x, and furrows over the other two thirds. */
const rings: OutlinePoint[] = flaredHead.flatMap(([r, z], i): OutlinePoint[] => {
  const next = flaredHead[i + 1];
  if (next === undefined) return [[r, z]];
  return [0, 0.25, 0.5, 0.75].map((s) => [r + s * (next[0] - r), z + s * (next[1] - z)]);
});
const bust = mapPoints(revolve([[0, 5], ...rings], 240), ([x, y, z]) => {
  const [r, angle] = [Math.hypot(x, y), Math.atan2(y, x)];
  if (r < 1 || z < 10) return [x, y, z];
  const nose = 14 * Math.exp(-((r * angle) ** 2 + (z - 115) ** 2) / (2 * 8 ** 2));
  const furrows = Math.abs(angle) < (2 * Math.PI) / 3 ? 1.2 * Math.sin(24 * angle) * Math.sin(z / 3) : 0;
  const grown = (r + nose + furrows) / r;
  return [x * grown, y * grown, z];
});

describe('which side to slit', () => {
  const found = sectionsOut(bust, { way: DOWN });
  const until = { alongMm: slitDepthMm(found, 1.03) };

  it('the smooth back of a bust, not its nose', () => {
    expect(until.alongMm).toBeGreaterThan(110);
    const slit = slitLine(found, { until })!;
    expect(along(slit.side, [-1, 0, 0])).toBeGreaterThan(Math.cos(Math.PI / 3));
    expect(slit.isClear).toBe(true);
    const worst = slit.tried.reduce((a, b) => (b.harmMm > a.harmMm ? b : a));
    expect(along(worst.side, [1, 0, 0])).toBeGreaterThan(Math.cos((15 * Math.PI) / 180));
    expect(slit.harmMm).toBeLessThan(worst.harmMm / 1.5);
  });

  it('keeps off a thin place at the back, and says so when there is no side left', () => {
    const thin = { atMm: [-34, 0, 65] as const, radiusMm: 40 };
    const slit = slitLine(found, { until, keepOff: [thin] })!;
    expect(slit.isClear).toBe(true);
    for (const point of slit.line)
      expect(Math.hypot(...point.map((c, k) => c - thin.atMm[k]!))).toBeGreaterThanOrEqual(40);
    expect(slitLine(found, { until, keepOff: [{ atMm: [0, 0, 65], radiusMm: 90 }] })!.isClear).toBe(false);
  });

  it('turned and moved, the same side, seed 8', () => {
    const random = lcg(8);
    const turn = [0, 1, 2, 3].map(() => between(random, -1, 1)) as [number, number, number, number];
    const way = turnedVector(DOWN, turn);
    const slit = slitLine(sectionsOut(moved(turned(bust, turn), [80, -200, 30]), { way }), { until })!;
    expect(along(slit.side, turnedVector([-1, 0, 0], turn))).toBeGreaterThan(Math.cos(Math.PI / 3));
    expect(Math.abs(along(slit.side, way))).toBeLessThan(1e-12);
  });

  it('beside two legs the line runs down the outside of one', () => {
    const leg = revolve(
      [
        [0, 0],
        [15, 0],
        [20, 80],
        [0, 80],
      ],
      128,
    );
    const [left, right] = [moved(leg, [-30, 0, 0]), moved(leg, [30, 0, 0])];
    const legs = {
      positions: Float64Array.of(...left.positions, ...right.positions),
      triangles: Int32Array.of(
        ...left.triangles,
        ...right.triangles.map((v) => v + left.positions.length / 3),
      ),
    };
    const slit = slitLine(sectionsOut(legs, { way: DOWN }), { until: { alongMm: 60 } })!;
    expect(Math.abs(slit.side[0])).toBeGreaterThan(0.9);
    expect(Math.abs(slit.fromMm[0])).toBeGreaterThan(40);
  });
});
