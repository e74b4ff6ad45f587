import { test, expect, type Page } from '@playwright/test';
import { boundsOf, shadowOutlines, VIEW_AXES, VIEW_NAMES, type TriangleMesh } from '../../src/geometry';
import type { CardDot } from '../../src/plan/placeCard';
import { placeCard, type PlaceCardMeta } from '../../src/sheet';
import { between, lcg } from '../support/lcg';
import { HAND, TROLL } from '../support/moldSamples';
import { box } from '../support/shapes';
import { hasBrowser } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');

const TEXTS = [
  'Opening 30 mm',
  'Vent 2 mm',
  'Air pocket 0.8 cm\u00b3, before the vent',
  'Foam 4.2 mm thick, free first',
  'A place with so many words that it takes several lines, andonethatislongerthananycolumniswide',
];

/** Dots anywhere in the bounds, seed 6, some without a normal. */
function cardHtml(mesh: TriangleMesh, count: number, meta: Partial<PlaceCardMeta>): string {
  const random = lcg(6);
  const { min, max } = boundsOf(mesh);
  const three = (from: (k: number) => number): [number, number, number] => [from(0), from(1), from(2)];
  const dots = Array.from({ length: count }, (_, i): CardDot => {
    const atMm = three((k) => between(random, min[k]!, max[k]!));
    const normal = three(() => between(random, -1, 1));
    const kind = i === 0 ? 'opening' : 'vent';
    return { n: i + 1, kind, atMm, text: TEXTS[i % TEXTS.length]!, ...(i % 7 === 3 ? {} : { normal }) };
  });
  const views = VIEW_NAMES.map((name) => ({ name, outlines: shadowOutlines(mesh, VIEW_AXES[name]) }));
  const card = { boundsMm: boundsOf(mesh), views, upWhenPoured: [0.3, 0.2, 1] as const, dots };
  return placeCard(card, { version: '0.0.0-test', ...meta });
}

const TITLE = 'A sculpt with a title so long that it has no room on any card of any size whatever <b>x</b>';
const CARDS: [string, string][] = [
  ['hand, 6 dots', cardHtml(HAND, 6, {})],
  ['troll, 24 dots, long title', cardHtml(TROLL, 24, { title: TITLE, jobCode: TITLE })],
  ['eel, 60 dots, mm only', cardHtml(box([520, 90, 60]), 60, { show: 'metric' })],
  ['puppet hand, 24 dots, inches only', cardHtml(box([60, 25, 58]), 24, { show: 'us' })],
  ['giant, 45 dots', cardHtml(box([1900, 1700, 2600]), 45, {})],
];

const pagesOf = async (page: Page, format: 'A4' | 'Letter'): Promise<number> => {
  const pdf = await page.pdf({ format });
  return (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;
};

/** Pixels of a millimeter, by the definition of the CSS inch. */
const PX_MM = 96 / 25.4;

for (const [name, html] of CARDS) {
  test(`the place card prints page by page on A4 and on Letter, true to size, and nothing is cut off: ${name}`, async ({
    page,
  }) => {
    await page.setContent(html);
    await page.emulateMedia({ media: 'print' });
    const articles = page.locator('article');
    const count = await articles.count();
    expect(await pagesOf(page, 'A4')).toBe(count);
    expect(await pagesOf(page, 'Letter')).toBe(count);
    const sizes = await articles.evaluateAll((all) =>
      all.map((one) => ({
        over: one.scrollHeight - one.clientHeight,
        wide: one.scrollWidth - one.clientWidth,
        width: one.getBoundingClientRect().width,
        height: one.getBoundingClientRect().height,
      })),
    );
    for (const { over, wide, width, height } of sizes) {
      expect(over).toBeLessThanOrEqual(0);
      expect(wide).toBeLessThanOrEqual(0);
      expect(width / PX_MM).toBeCloseTo(190, 1);
      expect(height / PX_MM).toBeCloseTo(259, 1);
    }
    // No cell runs into the next one, and the last row ends above the foot.
    const cells = await page
      .locator('td')
      .evaluateAll((all) => all.map((td) => td.scrollWidth - td.clientWidth));
    expect(Math.max(...cells)).toBeLessThanOrEqual(0);
    // 12 pt are 16 px, in the drawing too, whose unit is a millimeter.
    const text = await page.locator('td, th, p, footer span, svg text').evaluateAll((all) =>
      all.map((one) => {
        const size = parseFloat(getComputedStyle(one).fontSize);
        return one instanceof SVGTextElement ? (size * 96) / 25.4 : size;
      }),
    );
    for (const px of text) expect(px).toBeGreaterThan(15.99);
    const bar = await page
      .locator('.bars path')
      .evaluateAll((all) => all.map((one) => (one as SVGPathElement).getBoundingClientRect().width));
    // The stroke of 0.3 mm may count.
    expect(Math.abs(bar[0]! / PX_MM - 100)).toBeLessThan(0.35);
    expect(Math.abs(bar[1]! / PX_MM - 101.6)).toBeLessThan(0.35);
  });
}
