import type { Page } from '@playwright/test';
import { axeFindings } from './axe';
import {
  box,
  expect,
  gramsOf,
  hasBrowser,
  newPiece,
  openTroll,
  soFar,
  tape,
  test,
  useLightFoam,
  useSilicone,
} from './ticket';

test.skip(!hasBrowser, 'no chromium was found');
test.slow();

/** A phone, and a desk. */
const READ_AT = [1280, 390];

/** 640 is the desk at 200 %, 320 what WCAG 2.2 asks for at 1.4.10. */
const FLOWS_AT = [1280, 640, 390, 320];

/** Nothing against WCAG 2.2 AA in light and in forced colors, nothing over the edge, every target 44 px, and nothing that moves. */
async function expectSound(page: Page, screen: string, { forced = true } = {}): Promise<void> {
  await page
    .locator('main details')
    .evaluateAll((all) => all.forEach((each) => each.setAttribute('open', '')));
  for (const width of READ_AT) {
    await page.setViewportSize({ width, height: 900 });
    for (const forcedColors of forced ? (['none', 'active'] as const) : (['none'] as const)) {
      await page.emulateMedia({ forcedColors });
      expect(await axeFindings(page), `${screen} at ${width} px, forced colors ${forcedColors}`).toEqual([]);
    }
  }
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ forcedColors: 'active', colorScheme });
    expect(await faint(page), `${screen} in forced colors, ${colorScheme}`).toEqual([]);
  }
  await page.emulateMedia({ forcedColors: 'none', colorScheme: 'light' });
  for (const width of FLOWS_AT) {
    await page.setViewportSize({ width, height: 900 });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over, `${screen} at ${width} px`).toBeLessThanOrEqual(0);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('a, button, summary, select, input, label:has(input)')]
        .filter((e) => !e.matches('.skip, .sr, label input'))
        .map((e) => ({ what: e.outerHTML.slice(0, 80), height: e.getBoundingClientRect().height }))
        .filter(({ height }) => height > 0 && height < 43.9),
    );
    expect(small, `${screen} at ${width} px`).toEqual([]);
  }
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const moves = await page.evaluate(() => [
    ...document.getAnimations().map((each) => String(each.playState)),
    ...[...document.querySelectorAll('*')].flatMap((e) => {
      const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(e);
      const still = animationName === 'none' && /^0s(, 0s)*$/.test(transitionDuration);
      return still && scrollBehavior !== 'smooth' ? [] : [e.outerHTML.slice(0, 80)];
    }),
  ]);
  expect(moves, screen).toEqual([]);
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  await page.setViewportSize({ width: 1280, height: 900 });
}

/** Words that stand out from what is behind them by less than 4.5 to 1 (WCAG 2.2, 1.4.3), in the colors that are drawn. */
function faint(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const channels = (color: string): number[] => (color.match(/[\d.]+/g) ?? []).map(Number);
    const isSeen = (color: string): boolean => (channels(color)[3] ?? 1) > 0 && channels(color).length > 2;
    // Relative luminance and contrast as WCAG 2.2 defines them.
    const lightOf = (color: string): number => {
      const [r, g, b] = channels(color).map((c) =>
        c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4,
      );
      return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
    };
    const behind = (e: Element | null): string => {
      for (let at = e; at !== null; at = at.parentElement) {
        const { backgroundColor } = getComputedStyle(at);
        if (isSeen(backgroundColor)) return backgroundColor;
      }
      return getComputedStyle(document.documentElement).colorScheme === 'dark'
        ? 'rgb(0, 0, 0)'
        : 'rgb(255, 255, 255)';
    };
    const hasWords = (e: Element): boolean =>
      [...e.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent!.trim() !== '');
    return [...document.querySelectorAll('body *')]
      .filter((e) => hasWords(e) && e.checkVisibility() && !e.matches(':disabled, .sr, option'))
      .filter((e) => {
        const { color, fill } = getComputedStyle(e);
        const [one, other] = [lightOf(e instanceof SVGElement ? fill : color), lightOf(behind(e))];
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05) < 4.5;
      })
      .map(
        (e) =>
          `${e.outerHTML.slice(0, 100)} ${getComputedStyle(e).color} ${getComputedStyle(e).fill} on ${behind(e)}`,
      );
  });
}

/** Something in every question of Batch, so that every table is there. */
async function tellAll(page: Page): Promise<void> {
  for (const [label, text] of [
    ['Room', '18 C'],
    ['A and B, as they are mixed', '22 C'],
    ['Mold, measured inside', '24 C'],
    ['Height above the sea', '500'],
    ['Mixing cup, up to its rim', '1 L'],
    ['Shadow of the cavity across the parting', '450'],
    ['Plug or lid in the opening, its area; 0: none', '20'],
    ['Thickness of the rubber', '25 mm'],
    ['Air around it', '45 C'],
    ['Share of color 1', '1.5'],
    ['B in the cup, as read', '207'],
  ] as const)
    await box(page, label).fill(text);
  await gramsOf(page, 'A');
}

test('the Shelf, with nothing on it and with pieces, and a ticket of which nothing is known', async ({
  page,
}) => {
  await page.goto('./');
  await expect(page.getByRole('button', { name: 'New piece', exact: true })).toBeVisible();
  await expectSound(page, 'the empty Shelf');
  await newPiece(page);
  await expectSound(page, 'Measure before a scan');
  await page.goto('./?shop=sample');
  await expect(page.locator('.piece')).toHaveCount(4);
  await expect(page.locator('.piece svg')).toHaveCount(4, { timeout: 120_000 });
  await expectSound(page, 'the Shelf with pieces');
});

test('Measure, Mold and Batch, with all of it told and unfolded', async ({ page }) => {
  await openTroll(page);
  await tape(page, '290.85');
  // With a question about a number.
  await box(page, 'Plane above the lowest point').fill('1,250');
  await expect(soFar(page)).toContainText('silicone');
  await expect(page.getByRole('group', { name: 'Picture of the scan' }).locator('canvas')).toBeVisible();
  await expectSound(page, 'Measure');
  await useSilicone(page);
  for (const [type, forced] of [
    ['Poured block', false],
    ['Poured skin', true],
  ] as const) {
    await page.getByRole('radio', { name: type }).check();
    await expect(soFar(page)).not.toContainText('…');
    await expectSound(page, `Mold, ${type}`, { forced });
  }
  await useLightFoam(page, { times: true });
  await tellAll(page);
  await page.locator('figure.chart').first().scrollIntoViewIfNeeded();
  await expect(page.locator('figure.chart svg').first()).toBeVisible();
  await expectSound(page, 'Batch');
});
