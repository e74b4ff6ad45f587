import { test, expect, type Page } from '@playwright/test';
import { hasBrowser } from './ticket';
import { pourOf, sheetOf } from '../support/sheetOf';

test.skip(!hasBrowser, 'no chromium was found');

const COLORS = ['a long name', 'b, another one', 'c', 'd', 'eeeeeeeeeee', 'ffffffff'].map((name) => ({
  name,
  share: 0.01,
  of: 'B' as const,
}));
const TOLD = {
  warm: { wallMm: 10, sides: 1, surroundings: 'heat gun', airTempC: 200, targetTempC: 70 } as const,
  roomC: 20,
  ingredientsC: 21,
  clamp: { projectedCm2: 400, plugCm2: 100, straps: { straps: 3 } },
  foam: { creamS: 60, openMin: 25, ncoShare: 0.28, waterShare: 0.03 },
  colors: COLORS,
  facts: { moldWater: 'not confirmed dry', plugHeld: false },
} as const;
const TITLE = 'A casting with a title so long that it has no room on any sheet of any size whatever <b>x</b>';

/** Of a mold that was poured often, with places to free: the longest lines there are. */
const KNOWN = {
  before: [101, 102, 103].map((no) => ({
    no,
    mixedG: 12345,
    pack: 1.35,
    moldC: 36.55,
    opening: 'open' as const,
    filled: 'short' as const,
    skin: 3,
  })),
  places: [21, 22, 23, 24].map((n) => ({
    kind: 'thin foam' as const,
    n,
    thicknessMm: n / 2.7,
    slenderness: 3,
    atMm: [0, 0, 0] as const,
    normal: [0, 0, 1] as const,
  })),
};

const SHEETS: [string, string][] = [
  ['nothing told', sheetOf(pourOf())],
  [
    'one cup, told',
    sheetOf(pourOf({ ...TOLD, facts: {} }), { told: TOLD, title: TITLE, lot: TITLE, ...KNOWN }),
  ],
  [
    'four cups, Stops, six colors',
    sheetOf(pourOf({ ...TOLD, cups: { cupCm3: 560 } }), { told: TOLD, title: TITLE, show: 'both', ...KNOWN }),
  ],
  [
    'many cups, pack over all',
    sheetOf(pourOf({ ...TOLD, cups: { cupCm3: 300 } }, { packFactor: { value: 2.2, from: 'given' } }), {
      told: TOLD,
      jobCode: TITLE,
      show: 'both',
      ...KNOWN,
    }),
  ],
];

const pagesOf = async (page: Page, format: 'A4' | 'Letter'): Promise<number> => {
  const pdf = await page.pdf({ format });
  return (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;
};

for (const [name, html] of SHEETS) {
  test(`the pour sheet is one page on A4 and on Letter, and nothing of it is cut off: ${name}`, async ({
    page,
  }) => {
    await page.setContent(html);
    await page.emulateMedia({ media: 'print' });
    expect(await pagesOf(page, 'A4')).toBe(1);
    expect(await pagesOf(page, 'Letter')).toBe(1);
    const box = await page.locator('article').evaluate((sheet) => ({
      over: sheet.scrollHeight - sheet.clientHeight,
      wide: sheet.scrollWidth - sheet.clientWidth,
      widthMm: (sheet.getBoundingClientRect().width * 25.4) / 96,
      heightMm: (sheet.getBoundingClientRect().height * 25.4) / 96,
    }));
    expect(box.over).toBeLessThanOrEqual(0);
    expect(box.wide).toBeLessThanOrEqual(0);
    expect(box.widthMm).toBeCloseTo(190, 1);
    expect(box.heightMm).toBeCloseTo(259, 1);
    // The grams are the largest thing on it; 28 pt are 37.33 px.
    const sizes = await page
      .locator('.mix b')
      .evaluateAll((all) => all.map((b) => getComputedStyle(b).fontSize));
    for (const size of sizes) expect(parseFloat(size)).toBeCloseTo(37.33, 1);
    const inks = await page
      .locator('article, article *')
      .evaluateAll((all) => [...new Set(all.map((one) => getComputedStyle(one).color))]);
    expect(inks).toEqual(['rgb(0, 0, 0)']);
  });
}
