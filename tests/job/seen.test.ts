import { describe, expect, it } from 'vitest';
import { merge } from '../../src/job/merge';
import type { Piece } from '../../src/job/piece';
import {
  castingKey,
  sculptKey,
  seenCasting,
  seenSculpt,
  withSeenCasting,
  withSeenSculpt,
} from '../../src/job/seen';

const PIECE: Piece = {
  id: 'p',
  name: 'Quay Troll head',
  code: 'TROLL',
  begunOn: '2026-01-01',
  sculpt: { fields: { tape: { text: '290.85', unit: 'mm' } }, choices: { keep: 'below' }, scan: 's' },
  molds: { m: { no: 1, fields: {}, choices: {} }, n: { no: 2, fields: {}, choices: {} } },
  castings: {
    c: { no: 1, mold: 'm', fields: { pack: { text: '1.25' } }, choices: {} },
    d: { no: 2, mold: 'n', fields: {}, choices: {} },
  },
  hand: { mold: 'm', casting: 'c' },
};
const seen = withSeenCasting(
  withSeenSculpt(PIECE, {
    on: sculptKey(PIECE, '1'),
    size: {
      extentsMm: [263, 230, 290.85],
      volumeCm3: { value: 4426, low: 4372, high: 4480, from: 'taped' },
    },
  }),
  'c',
  {
    on: castingKey(PIECE, 'c', '1'),
    day: '2026-01-02',
    packFactor: 1.25,
    partAG: 379,
    partBG: 209,
    totalG: 588,
    stepG: 1,
  },
);

describe('what was kept and is not as it should be was not seen', () => {
  const sculpt = (more: object): ReturnType<typeof seenSculpt> =>
    seenSculpt(withSeenSculpt(PIECE, { on: sculptKey(PIECE, '1'), ...more }), '1');
  const triangle = [0, 0, 5, 0, 5, 9];
  const outline = { view: 'front', wide: 5, tall: 9, lines: [triangle] };
  const size = { extentsMm: [3, 4, 5], volumeCm3: { value: 60, low: 59, high: 61, from: 'scanned' } };

  it('an outline and a size come back as they were', () => {
    expect(sculpt({ outline, size })).toMatchObject({ outline, size });
    expect(sculpt({ outline: { ...outline, view: 'top' } })).toHaveProperty('outline');
  });

  it.each([
    ['from below', { ...outline, view: 'bottom' }],
    ['of no width', { ...outline, wide: 0 }],
    ['without lines', { ...outline, lines: 5 }],
    ['a line of two points', { ...outline, lines: [triangle.slice(0, 4)] }],
    ['half a point', { ...outline, lines: [[...triangle, 1]] }],
    ['a point that is no number', { ...outline, lines: [[0, 0, 5, 0, 5, 'top']] }],
  ])('an outline %s', (_, broken) => expect(sculpt({ outline: broken })).not.toHaveProperty('outline'));

  it.each([
    ['of two sides', { ...size, extentsMm: [3, 4] }],
    ['flat', { ...size, extentsMm: [3, 4, 0] }],
    ['of no volume', { ...size, volumeCm3: { ...size.volumeCm3, value: 0 } }],
    ['without its low end', { ...size, volumeCm3: { ...size.volumeCm3, low: null } }],
    ['of hearsay', { ...size, volumeCm3: { ...size.volumeCm3, from: 'hearsay' } }],
  ])('a size %s', (_, broken) => expect(sculpt({ size: broken })).not.toHaveProperty('size'));

  it('grams without a day or of nothing; a casting that is not there', () => {
    const grams = { day: '2026-01-02', packFactor: 1.25, partAG: 379, partBG: 209, totalG: 588, stepG: 1 };
    const casting = (more: object): unknown =>
      seenCasting(
        withSeenCasting(PIECE, 'c', { on: castingKey(PIECE, 'c', '1'), ...grams, ...more }),
        'c',
        '1',
      );
    expect(casting({})).toMatchObject(grams);
    expect(casting({ day: 5 })).toBeUndefined();
    expect(casting({ partAG: 0 })).toBeUndefined();
    expect(withSeenCasting(PIECE, 'gone', { on: '', ...grams })).toBe(PIECE);
    expect(() => castingKey(PIECE, 'gone', '1')).toThrow('expected a casting of p, got gone');
  });
});

describe('a number on the Shelf', () => {
  it('is there for what was said when it was worked out', () => {
    expect(seenSculpt(seen, '1')?.size?.volumeCm3.value).toBe(4426);
    expect(seenCasting(seen, 'c', '1')?.partAG).toBe(379);
  });

  it.each<[string, (piece: Piece) => Piece, 'no size' | 'a size']>([
    [
      'the tape',
      (p) => ({ ...p, sculpt: { ...p.sculpt, fields: { tape: { text: '291', unit: 'mm' } } } }),
      'no size',
    ],
    ['a box that was cleared', (p) => ({ ...p, sculpt: { ...p.sculpt, fields: {} } }), 'no size'],
    ['the way it is cut', (p) => ({ ...p, sculpt: { ...p.sculpt, choices: {} } }), 'no size'],
    ['the scan', (p) => ({ ...p, sculpt: { ...p.sculpt, scan: 'other' } }), 'no size'],
    [
      'something about its mold',
      (p) => ({ ...p, molds: { ...p.molds, m: { ...p.molds.m!, choices: { molding: { type: 'skin' } } } } }),
      'a size',
    ],
    [
      'the pack',
      (p) => ({
        ...p,
        castings: { ...p.castings, c: { ...p.castings.c!, fields: { pack: { text: '1.3' } } } },
      }),
      'a size',
    ],
    [
      'the mold it is cast in',
      (p) => ({
        ...p,
        molds: { ...p.molds, n: { ...p.molds.n!, fields: { boxWall: { text: '3' } } } },
        castings: { ...p.castings, c: { ...p.castings.c!, mold: 'n' } },
      }),
      'a size',
    ],
  ])('goes when %s is changed', (_, change, size) => {
    const changed = change(seen);
    expect(seenCasting(changed, 'c', '1')).toBeUndefined();
    expect(seenSculpt(changed, '1') === undefined ? 'no size' : 'a size').toBe(size);
  });

  it('stays when the piece is renamed, and when another casting is changed', () => {
    const changed: Piece = {
      ...seen,
      name: 'Another',
      castings: { ...seen.castings, d: { ...seen.castings.d!, fields: { pack: { text: '2' } } } },
    };
    expect(seenSculpt(changed, '1')?.size).toBeDefined();
    expect(seenCasting(changed, 'c', '1')).toBeDefined();
  });

  it('is not taken from another version of the program', () => {
    expect(seenSculpt(seen, '2')).toBeUndefined();
    expect(seenCasting(seen, 'c', '2')).toBeUndefined();
  });

  it.each<[string, object]>([
    ['a volume in words', { size: { extentsMm: [1, 1, 1], volumeCm3: 'much' } }],
    [
      'no third extent',
      { size: { extentsMm: [1, 1], volumeCm3: { value: 1, low: 1, high: 1, from: 'taped' } } },
    ],
    [
      'a source nobody knows',
      { size: { extentsMm: [1, 1, 1], volumeCm3: { value: 1, low: 1, high: 1, from: 'guessed' } } },
    ],
    [
      'a volume of nothing',
      { size: { extentsMm: [1, 1, 1], volumeCm3: { value: 0, low: 0, high: 0, from: 'taped' } } },
    ],
  ])('that a file has as %s was not seen', (_, size) => {
    const on = sculptKey(PIECE, '1');
    const piece = { ...PIECE, sculpt: { ...PIECE.sculpt, seen: [{ on, ...size }] } } as Piece;
    expect(seenSculpt(piece, '1')).toEqual({ on });
  });

  it.each([0, -5, Number.NaN, '379', null])('of %s grams was not seen', (partAG) => {
    const casting = { ...PIECE.castings.c!, seen: [{ ...withCasting(), partAG }] };
    expect(seenCasting({ ...PIECE, castings: { ...PIECE.castings, c: casting } }, 'c', '1')).toBeUndefined();
  });
});

const withCasting = (): object => (seen.castings.c as unknown as { seen: [object] }).seen[0];

it('an outline with half a point is no outline', () => {
  const on = sculptKey(PIECE, '1');
  const outline = { view: 'front', wide: 10, tall: 10, lines: [[0, 0, 1, 1, 2]] };
  const piece = { ...PIECE, sculpt: { ...PIECE.sculpt, seen: [{ on, outline }] } } as Piece;
  expect(seenSculpt(piece, '1')).toEqual({ on });
});

it('of two tabs is that of one of them, never half of each', () => {
  const other = (wide: number, on: string): Piece =>
    withSeenSculpt(PIECE, {
      on,
      size: {
        extentsMm: [wide, 230, 290],
        volumeCm3: { value: 10 * wide, low: 1, high: 9999, from: 'taped' },
      },
    });
  const base = other(100, 'base');
  // Mine is as wide as before, theirs is not: merged by their keys, my name would stand over their width.
  const mine = withSeenSculpt(base, {
    on: 'mine',
    size: { extentsMm: [100, 230, 290], volumeCm3: { value: 900, low: 1, high: 9999, from: 'taped' } },
  });
  const merged = merge({ base, mine, theirs: other(120, 'theirs') });
  expect(merged.sculpt).toEqual(mine.sculpt);
});
