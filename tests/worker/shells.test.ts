import { describe, expect, it } from 'vitest';
import { cutFacesWish, shellsWish } from '../../src/worker/shells';
import type { CutFacesAsk } from '../../src/worker/protocol';
import { expectClose } from '../support/close';
import { benchOf } from '../support/moldBench';
import { BALL } from '../support/moldSamples';
import { valueOf } from '../support/outcome';
import { box } from '../support/shapes';

/** A ball of radius 50 with its middle at 50, free; the skin 10, the jacket 5 mm. */
const bench = benchOf(BALL);
const ask = {
  type: 'skin',
  settings: { base: 'closed', skinMm: 10, jacketMm: 5, pull: '+x' },
} as const;
const cut = (plane: CutFacesAsk['plane']) => valueOf(cutFacesWish({ bench }, { ...ask, plane }, {}));

/** Area of an outline in a level plane, above 0 where it runs counter-clockwise from above. */
const shoelace = (p: Float64Array): number => {
  let twice = 0;
  for (let i = 0; i < p.length; i += 3) {
    const j = (i + 3) % p.length;
    twice += p[i]! * p[j + 1]! - p[j]! * p[i + 1]!;
  }
  return twice / 2;
};

describe('faces of a cut through a ball in its skin and jacket', () => {
  it.each([
    ['x', 0],
    ['y', 0],
    ['z', 50],
  ] as const)('across %s through its middle: skin 10 mm and jacket 5 mm thick all round', (axis, atMm) => {
    const { plane, faces } = cut({ axis, atMm });
    expect(plane).toEqual({ axis, atMm });
    expect(faces.map(({ part }) => part)).toEqual(['sculpt', 'skin', 'jacket']);
    for (const [n, radius] of [50, 60, 65].entries()) {
      const [outline, ...more] = faces[n]!.outlines;
      expect(more).toEqual([]);
      for (let p = 0; p < outline!.length; p += 3) {
        const from = [outline![p]!, outline![p + 1]!, outline![p + 2]! - 50];
        expect(Math.abs(Math.hypot(...from) - radius)).toBeLessThan(0.1);
        expect(outline![p + 'xyz'.indexOf(axis)]).toBeCloseTo(atMm, 6);
      }
    }
  });

  it('runs counter-clockwise seen from the tip of the axis', () => {
    for (const { outlines } of cut({ axis: 'z', atMm: 50 }).faces)
      expect(shoelace(outlines[0]!)).toBeGreaterThan(0.98 * Math.PI * 50 ** 2);
  });

  it('has nothing of the sculpt where only the skin is cut, and nothing at all beyond the jacket', () => {
    const over = cut({ axis: 'z', atMm: 107 }).faces;
    expect(over.map(({ outlines }) => outlines.length)).toEqual([0, 1, 1]);
    expect(cut({ axis: 'z', atMm: 120 }).faces.every(({ outlines }) => outlines.length === 0)).toBe(true);
  });
});

describe('outer faces for the page', () => {
  it('are copies: what is handed over leaves the bench its own', () => {
    const first = valueOf(shellsWish({ bench }, ask, {}));
    const [skin] = first.parts;
    const count = skin!.surface.positions.length;
    structuredClone(skin!.surface, {
      transfer: [skin!.surface.positions.buffer, skin!.surface.normals.buffer, skin!.surface.index.buffer],
    });
    expect(skin!.surface.positions.length).toBe(0);
    const again = valueOf(shellsWish({ bench }, ask, {}));
    expect(again.parts[0]!.surface.positions.length).toBe(count);
    expect(Math.max(...again.parts[0]!.surface.index)).toBe(count / 3 - 1);
  });

  it('follow the settings', () => {
    const tops = [10, 14].map((skinMm) => {
      const { parts } = valueOf(shellsWish({ bench }, { ...ask, settings: { ...ask.settings, skinMm } }, {}));
      return parts[0]!.surface.positions.reduce((top, c, i) => (i % 3 === 2 ? Math.max(top, c) : top), 0);
    });
    expect(tops[0]).toBeGreaterThan(109.7);
    expect(tops[0]).toBeLessThan(110.1);
    expect(tops[1]).toBeGreaterThan(113.7);
    expect(tops[1]).toBeLessThan(114.1);
  });

  it('are not begun when the answer is no longer wanted, and stop on the way', () => {
    const stopped = { ok: false, problem: { code: 'STOPPED' } };
    expect(shellsWish({ bench }, ask, { shouldStop: () => true })).toMatchObject(stopped);
    let looks = 0;
    const other = { ...ask, settings: { ...ask.settings, skinMm: 12 } };
    expect(shellsWish({ bench }, other, { shouldStop: () => ++looks > 2 })).toMatchObject(stopped);
    expect(valueOf(shellsWish({ bench }, other, {})).parts).toHaveLength(2);
  });

  it('refuse what the mold refuses', () => {
    const settings = { ...ask.settings, parts: '1' };
    expect(shellsWish({ bench }, { type: 'skin', settings }, {})).toMatchObject({
      problem: { code: 'JACKET_NOT_FREE' },
    });
    expect(shellsWish({ bench }, { type: 'block', settings: { skinMm: 5 } }, {})).toMatchObject({
      problem: { code: 'MOLD_PARAMETER_FOREIGN' },
    });
  });
});

describe('a poured block of a box', () => {
  it('is cut to the rectangle around it', () => {
    const { faces } = valueOf(
      cutFacesWish(
        { bench: benchOf(box([60, 40, 50])) },
        { type: 'block', settings: { wallMm: 10, shape: 'straight' }, plane: { axis: 'z', atMm: 20 } },
        {},
      ),
    );
    expect(faces.map(({ part }) => part)).toEqual(['sculpt', 'block']);
    expectClose(shoelace(faces[0]!.outlines[0]!), 60 * 40, 1e-9);
    expectClose(shoelace(faces[1]!.outlines[0]!), 80 * 60, 1e-9);
  });
});
