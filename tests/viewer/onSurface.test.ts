import { describe, expect, it } from 'vitest';
import { coarseIndex } from '../../src/viewer/coarseIndex';
import type { Drawable } from '../../src/viewer/drawable';
import { isHidden } from '../../src/viewer/isHidden';
import { levelEnds } from '../../src/viewer/levelEnds';
import { nearestNormal } from '../../src/viewer/nearestNormal';
import { roundPicture } from './round';

/** Two balls side by side in one picture. */
function twins(): Drawable {
  const ball = roundPicture(10);
  const moved = (x: number): Float32Array => ball.positions.map((c, i) => (i % 3 === 0 ? c + x : c));
  const count = ball.positions.length / 3;
  return {
    ...ball,
    positions: Float32Array.from([...moved(-15), ...moved(15)]),
    normals: Float32Array.from([...ball.normals, ...ball.normals]),
    index: Uint32Array.from([...ball.index, ...ball.index.map((v) => v + count)]),
    halfUnits: [25, 10, 10],
  };
}

describe('the level to which air stays', () => {
  it('is a ring round the summit of its own pocket: 6 above the middle of a ball of 10 it has a radius of 8', () => {
    const ends = levelEnds(twins(), { top: [15, 0, 10], up: [0, 0, 1], at: 6 });
    expect(ends.length).toBeGreaterThan(6 * 40);
    for (let i = 0; i < ends.length; i += 3) {
      expect(ends[i + 2]).toBeCloseTo(6, 4);
      // Of the other ball nothing; chords of a faceted ball lie a little inside.
      expect(Math.hypot(ends[i]! - 15, ends[i + 1]!)).toBeLessThan(8.001);
      expect(Math.hypot(ends[i]! - 15, ends[i + 1]!)).toBeGreaterThan(7.9);
    }
  });

  it('its pieces close: every end is the end of another piece too', () => {
    const ends = levelEnds(twins(), { top: [-15, 0, 10], up: [0, 0.6, 0.8], at: 5 });
    const met = new Map<string, number>();
    for (let i = 0; i < ends.length; i += 3) {
      const key = [...ends.slice(i, i + 3)].map((c) => c.toFixed(3)).join();
      met.set(key, (met.get(key) ?? 0) + 1);
    }
    expect(met.size).toBeGreaterThan(20);
    expect(new Set(met.values())).toEqual(new Set([2]));
  });

  it('is not drawn above all of the surface, nor where it ran out over a rim', () => {
    expect(levelEnds(twins(), { top: [15, 0, 10], up: [0, 0, 1], at: 11 })).toHaveLength(0);
    expect(levelEnds(roundPicture(10), { top: [0, 0, 10], up: [0, 0, 1], at: -5 })).toHaveLength(0);
  });
});

describe('whether the piece hides a place', () => {
  const ball = roundPicture(10);
  const front = { at: [0, 10, 0], normal: [0, 1, 0] } as const;
  it.each([
    ['from the front', [0, 1, 0], false],
    ['from behind', [0, -1, 0], true],
    ['from above its front', [0, 0.1, 0.995], false],
    ['from below and behind', [0, -0.3, -0.954], true],
  ] as const)('%s', (_, toEye, hidden) => {
    expect(isHidden(ball, { ...front, toEye }, undefined)).toBe(hidden);
  });

  it('another part hides it too, until a cut takes that away', () => {
    const place = { at: [-5, 0, 0], normal: [1, 0, 0], toEye: [1, 0, 0] } as const;
    expect(isHidden(twins(), place, undefined)).toBe(true);
    expect(isHidden(twins(), place, { axis: 'x', at: 0 })).toBe(false);
    expect(isHidden(twins(), place, { axis: 'x', at: 30 })).toBe(true);
  });
});

it('a place off the surface faces as its nearest corner does', () => {
  const [x, y, z] = nearestNormal(roundPicture(10), [0, 0, 14]);
  expect([x, y, z]).toEqual([0, 0, 1]);
});

describe('coarse while it turns', () => {
  const ball = roundPicture(50, 150);
  const coarse = coarseIndex(ball.positions, ball.index);
  it('a small part of the triangles, none of them shrunk to nothing, on vertices that are there', () => {
    expect(coarse.length / 3).toBeLessThan(0.3 * ball.triangles);
    expect(coarse.length / 3).toBeGreaterThan(1000);
    for (let t = 0; t < coarse.length; t += 3)
      expect(new Set(coarse.slice(t, t + 3)).size, `triangle ${t / 3}`).toBe(3);
    expect(Math.max(...coarse)).toBeLessThan(ball.positions.length / 3);
  });
  it('as large as before, within a cell', () => {
    const far = [0, 1, 2].map((k) => Math.max(...Array.from(coarse, (v) => ball.positions[3 * v + k]!)));
    for (const c of far) expect(c).toBeGreaterThan(50 - 100 / 32);
  });
});
