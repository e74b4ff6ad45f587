import { describe, expect, it } from 'vitest';
import { cardOf, dot, EEL, HEAD, htmlOf, manyDots, PUPPET_HAND, rowsIn } from '../support/placeCardOf';
import { textOf } from '../support/sheetOf';

describe('the table', () => {
  it('says for each dot how far up from the base and in from two sides, in mm and sixteenths of an inch', () => {
    const html = htmlOf(
      cardOf(HEAD, [
        dot(2, [99.6, 130, 254], [0, 1, 0], { text: 'Air pocket 0.8 cm\u00b3, before the vent' }),
        dot(1, [-125, -92, 0], [-1, 0, 0], { kind: 'opening', text: 'Opening 30 mm' }),
      ]),
    );
    // 254 mm are 10 in; 25.4 mm 1 in; 38 mm are 23.94 sixteenths: 1 1/2 in.
    expect(rowsIn(html)).toEqual([
      ['1', 'Opening 30 mm', '0 (0)', 'left 0 (0)', 'back 38 (1 1/2)', 'side, far'],
      ['2', 'Air pocket 0.8 cm\u00b3, before the vent', '254 (10)', 'front 0 (0)', 'right 25 (1)', 'front'],
    ]);
    const one = cardOf(HEAD, [dot(1, [0, 130, 127], [0, 1, 0])]);
    expect(rowsIn(htmlOf(one, { show: 'metric' }))[0]).toEqual([
      '1',
      'Vent 2 mm',
      '127',
      'front 0',
      'right 125',
      'front',
    ]);
    expect(rowsIn(htmlOf(one, { show: 'us' }))[0]).toEqual([
      '1',
      'Vent 2 mm',
      '5',
      'front 0',
      'right 4 15/16',
      'front',
    ]);
  });

  it('a long table goes on: each number once in all, every page with a head and a foot', () => {
    const html = htmlOf(cardOf(HEAD, manyDots(HEAD, 60, 11)), { title: 'Quay Troll', jobCode: 'TROLL-13' });
    const pages = html.split('<article>').slice(1);
    expect(pages.length).toBeGreaterThan(1);
    expect(rowsIn(html).map(([n]) => Number(n))).toEqual(Array.from({ length: 60 }, (_, i) => i + 1));
    pages.forEach((page, i) => {
      const text = textOf(page);
      for (const part of ['Quay Troll', 'TROLL-13', `page ${i + 1} of ${pages.length}`, 'Up from base'])
        expect(text).toContain(part);
    });
    expect(html.match(/<svg class="drawing"/g)).toHaveLength(1);
  });

  it('few dots stay on one page, and none at all is said', () => {
    for (const mesh of [EEL, PUPPET_HAND])
      expect(htmlOf(cardOf(mesh, manyDots(mesh, 6, 2))).split('<article>')).toHaveLength(2);
    expect(textOf(htmlOf(cardOf(HEAD, [])))).toContain('No places to mark.');
  });

  it('vents before the mold is closed, nobody over an opening, the data sheet first', () => {
    const text = textOf(htmlOf(cardOf(HEAD, [])));
    expect(text).toContain('Pierce or drill the vents before the mold is closed');
    expect(text).toContain('Never stand or lean over an opening');
    expect(text).toContain('data sheets and local rules come before this page');
  });
});

describe('the page as a file', () => {
  it('no script, nothing from elsewhere, text only as text', () => {
    const nasty = `<script>alert(1)</script>"&'`;
    const html = htmlOf(cardOf(HEAD, [dot(1, [0, 130, 10], [0, 1, 0], { text: nasty })]), {
      title: nasty,
      jobCode: nasty,
      date: nasty,
      version: nasty,
    });
    expect(html).not.toMatch(/<(script|img|image|use|link|iframe|object|embed|a|base|form|foreignObject)\b/i);
    expect(html.match(/<[^>]+>/g)!.join('')).not.toMatch(/\bsrc=|\bhref=|\son\w+=|url\(|https?:/i);
    expect(textOf(html).split(nasty)).toHaveLength(7);
  });

  it('same card and meta, same bytes; dots in another order too; no clock is read', () => {
    const dots = manyDots(HEAD, 20, 5);
    expect(htmlOf(cardOf(HEAD, dots))).toBe(htmlOf(cardOf(HEAD, [...dots].reverse())));
    expect(textOf(htmlOf(cardOf(HEAD, dots)))).not.toMatch(/\b20\d\d-|undefined|NaN|Infinity/);
    expect(textOf(htmlOf(cardOf(HEAD, dots), { date: '2026-11-29' }))).toContain('Date 2026-11-29');
  });

  it('a card that no plan makes is refused', () => {
    const one = dot(1, [0, 0, 0]);
    expect(() => htmlOf(cardOf(HEAD, [one, one]))).toThrow('each number once, got 1 1');
    expect(() => htmlOf(cardOf(HEAD, [dot(1, [Number.NaN, 0, 0])]))).toThrow('expected finite');
    expect(() => htmlOf(cardOf(HEAD, [], { views: [] }))).toThrow('a view or more');
    expect(() => htmlOf(cardOf(HEAD, [], { upWhenPoured: [0, 0, 0] }))).toThrow('a direction up');
  });
});
