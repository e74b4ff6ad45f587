import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../src/geometry';
import type { Vector } from '../../src/plan/placeCard';
import {
  cardOf,
  dot,
  drawnIn,
  EEL,
  GIANT,
  HEAD,
  htmlOf,
  manyDots,
  PUPPET_HAND,
  rowsIn,
  type Drawn,
} from '../support/placeCardOf';
import { textOf } from '../support/sheetOf';

describe('outlines to one stated scale', () => {
  it.each([
    ['an eel 520 mm wide', EEL, 5],
    ['a puppet hand of 60 mm', PUPPET_HAND, 1],
    ['a head of 250 x 260 x 300 mm', HEAD, 5],
    ['a giant of 2.6 m', GIANT, 50],
  ] as const)('%s: every length on paper times the scale is that of the piece', (_, mesh, scale) => {
    const html = htmlOf(cardOf(mesh, []));
    const drawn = drawnIn(html);
    expect(drawn.scale).toBe(scale);
    expect(textOf(html)).toContain(`Scale 1:${scale}`);
    const { min, max } = boundsOf(mesh);
    const [wide, deep, tall] = [0, 1, 2].map((k) => max[k]! - min[k]!) as [number, number, number];
    const sizes = { front: [wide, tall], side: [deep, tall], top: [wide, deep] };
    expect(drawn.outlines.map(({ view }) => view).sort()).toEqual(['front', 'side', 'top']);
    for (const { view, xs, ys } of drawn.outlines) {
      const [across, up] = sizes[view as 'front'] as [number, number];
      // Points are printed to 0.01 mm.
      expect(Math.abs(Math.max(...xs) - Math.min(...xs) - across / scale), view).toBeLessThanOrEqual(0.0101);
      expect(Math.abs(Math.max(...ys) - Math.min(...ys) - up / scale), view).toBeLessThanOrEqual(0.0101);
    }
  });

  it('the bars to check the printer by are 100 mm and 4 in long', () => {
    const svg = /<svg class="bars"[^>]*>(.*?)<\/svg>/s.exec(htmlOf(cardOf(HEAD, [])))!;
    expect(svg[0]).toMatch(/width="150mm" height="11mm" viewBox="-0.5 0 150 11"/);
    expect([...svg[1]!.matchAll(/M0 \d+H([\d.]+)/g)].map(([, mm]) => Number(mm))).toEqual([100, 101.6]);
    expect(textOf(svg[0])).toMatch(/This bar is 100 mm .*This bar is 4 in/);
  });

  it('no mirror: a mark on its own right stands left in front and top view, one on its face right in the side view', () => {
    // Middle of the views, from their outlines; a dot well off the middle on +x, and one on +y.
    const html = htmlOf(
      cardOf(HEAD, [
        dot(1, [100, 130, 200], [0, 1, 0]),
        dot(2, [100, 0, 300], [0, 0, 1]),
        dot(3, [125, 120, 50], [1, 0, 0]),
      ]),
    );
    const { leaders, outlines, rings, scale } = drawnIn(html);
    const middle = (view: string): number => {
      const { xs } = outlines.find((one) => one.view === view)!;
      return (Math.max(...xs) + Math.min(...xs)) / 2;
    };
    const leaderOf = (n: number): Drawn['leaders'][number] => {
      const ring = rings.find((one) => one.n === n)!;
      return leaders.find(({ toX, toY }) => toX === ring.x && toY === ring.y)!;
    };
    expect(rings.map(({ n, view }) => [n, view]).sort()).toEqual([
      [1, 'front'],
      [2, 'top'],
      [3, 'side'],
    ]);
    expect(leaderOf(1).x - middle('front')).toBeCloseTo(-100 / scale, 1);
    expect(leaderOf(2).x - middle('top')).toBeCloseTo(-100 / scale, 1);
    expect(leaderOf(3).x - middle('side')).toBeCloseTo(120 / scale, 1);
    const base = Math.max(...outlines.find(({ view }) => view === 'front')!.ys);
    expect(base - leaderOf(1).y).toBeCloseTo(200 / scale, 1);
    const text = textOf(html);
    expect(text).toMatch(/back Side front .*up when poured/);
    expect(text).toMatch(/right Front left .*up when poured/);
    expect(text).toMatch(/right Top left/);
    expect(text).toContain('from the front, its right is at your left');
  });

  it('the arrow points where the mold points up: end on towards you from above, away where it is poured upside down', () => {
    const text = (up: Vector): string => textOf(htmlOf(cardOf(HEAD, [], { upWhenPoured: up })));
    expect(text([0, 0, 3])).toMatch(/Top left up is toward you/);
    expect(text([0, 0, -1])).toMatch(/Top left up is away from you/);
    expect(text([0, 1, 0])).toMatch(/Front left up is toward you/);
    expect(text([1, 0, 0])).toMatch(/Side front up is toward you/);
    // Poured with its own right up, it points left on the front view: from tail to tip x falls.
    const html = htmlOf(cardOf(HEAD, [], { upWhenPoured: [1, 0, 0] }));
    const front = html.slice(html.indexOf('<g data-view="front">'));
    const [x, y, tipX, tipY] = /<path class="arrow" d="M([\d.-]+) ([\d.-]+)L([\d.-]+) ([\d.-]+)M/
      .exec(front)!
      .slice(1)
      .map(Number) as [number, number, number, number];
    expect(tipX).toBeLessThan(x);
    expect(tipY).toBe(y);
  });
});

describe('dots and rings', () => {
  it.each([
    ['an eel', EEL],
    ['a puppet hand', PUPPET_HAND],
    ['a head', HEAD],
  ])(
    '%s with 5, 24 and 40 dots: each ring once, on the page, outside of every outline, on no other ring',
    (_, mesh) => {
      for (const count of [5, 24, 40]) {
        const { rings, outlines, width, height, left, leaders } = drawnIn(
          htmlOf(cardOf(mesh, manyDots(mesh, count, 7))),
        );
        expect(new Set(rings.map(({ n }) => n)).size).toBe(rings.length);
        expect(leaders).toHaveLength(rings.length);
        for (const { n, text, x, y, r } of rings) {
          expect(text).toBe(n);
          expect(x - r).toBeGreaterThanOrEqual(left);
          expect(x + r).toBeLessThanOrEqual(left + width);
          expect(y - r).toBeGreaterThanOrEqual(0);
          expect(y + r).toBeLessThanOrEqual(height);
          for (const { xs, ys } of outlines) {
            const offX = Math.max(Math.min(...xs) - x, x - Math.max(...xs), 0);
            const offY = Math.max(Math.min(...ys) - y, y - Math.max(...ys), 0);
            expect(Math.hypot(offX, offY)).toBeGreaterThan(r);
          }
          for (const other of rings)
            if (other.n !== n)
              expect(Math.hypot(x - other.x, y - other.y), `${n} and ${other.n}`).toBeGreaterThan(
                r + other.r,
              );
        }
        // Rings that do not fit are said to be missing, row by row.
        const html = htmlOf(cardOf(mesh, manyDots(mesh, count, 7)));
        const undrawn = rowsIn(html).filter((row) => row[5] === 'not drawn').length;
        expect(rings.length + undrawn).toBe(count);
        if (count <= 24) expect(undrawn).toBe(0);
      }
    },
  );

  it('few leaders on a head cross none of the others', () => {
    const { leaders } = drawnIn(htmlOf(cardOf(HEAD, manyDots(HEAD, 12, 3))));
    const side = (a: Drawn['leaders'][number], x: number, y: number): number =>
      Math.sign((a.toX - a.x) * (y - a.y) - (a.toY - a.y) * (x - a.x));
    leaders.forEach((a, i) =>
      leaders.slice(i + 1).forEach((b) => {
        const crosses =
          side(a, b.x, b.y) * side(a, b.toX, b.toY) < 0 && side(b, a.x, a.y) * side(b, a.toX, a.toY) < 0;
        expect(crosses).toBe(false);
      }),
    );
  });

  it('what is behind is dashed and said to be on the far side; without a normal the side is not known', () => {
    const html = htmlOf(
      cardOf(HEAD, [
        dot(1, [0, 130, 150], [0, 1, 0], { kind: 'opening', text: 'Opening 30 mm' }),
        dot(2, [0, -130, 150], [0, -1, 0]),
        dot(3, [-125, 0, 150], [-1, 0, 0]),
        dot(4, [0, 0, 0], [0, 0, -1]),
        dot(5, [0, 0, 150]),
        dot(6, [0, -100, 290], [0, -0.8, 0.6]),
      ]),
    );
    expect(rowsIn(html).map((row) => row[5])).toEqual([
      'front',
      'front, far',
      'side, far',
      'top, far',
      'front, side not known',
      'top',
    ]);
    expect(
      drawnIn(html)
        .rings.sort((a, b) => a.n - b.n)
        .map(({ className }) => className),
    ).toEqual([
      'ring near opening',
      'ring far vent',
      'ring far vent',
      'ring far vent',
      'ring unknown vent',
      'ring near vent',
    ]);
    expect(textOf(html)).toContain('on the far side');
    expect(textOf(htmlOf(cardOf(HEAD, [dot(1, [0, 130, 9], [0, 1, 0])])))).not.toContain('far side');
  });
});
