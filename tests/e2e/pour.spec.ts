import type { Page } from '@playwright/test';
import { ask, box, expect, gramsOf, hasBrowser, numberIn, pourTroll, soFar, test } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');
test.slow();

/** A cell of the packs, once the pour is current. */
async function packCell(page: Page, pack: string, row: string): Promise<string> {
  const section = ask(page, 'How hard do we pack it?');
  await expect(section).toHaveAttribute('aria-busy', 'false');
  return section
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: row }) })
    .locator(`[data-pack="${pack}"]`)
    .innerText();
}

test('packs stand side by side, and the radio of one makes its grams those of the batch', async ({
  page,
}) => {
  await pourTroll(page);
  const a = numberIn(await packCell(page, '1.45', 'A grams'));
  expect(a).toBeGreaterThan(numberIn(await packCell(page, '1.15', 'A grams')));
  await expect(page.getByRole('radio', { name: 'Pack 1.30' })).toBeChecked();
  await page.getByRole('radio', { name: 'Pack 1.45' }).check();
  await expect(box(page, 'Pack factor')).toHaveValue('1.45');
  await expect.poll(() => gramsOf(page, 'A')).toBe(a);
  expect(await packCell(page, '1.45', 'Chance of a short fill')).toContain('1 in');
});

test('a height above the sea changes the grams, and says what was corrected and what was not', async ({
  page,
}) => {
  await pourTroll(page);
  const before = await gramsOf(page, 'A');
  await box(page, 'Height above the sea').fill('1500 m');
  await expect.poll(() => gramsOf(page, 'A')).toBeLessThan(before * 0.9);
  const day = ask(page, 'What is the day like?');
  await expect(day).toContainText('Corrected for the air pressure. Not for the warmth of A and B');
  await page.getByRole('radio', { name: 'cup test of today' }).check();
  await expect(day).toContainText('a cup test of the same day and room already holds it');
  await expect.poll(() => gramsOf(page, 'A')).toBe(before);
});

test('a cup of one liter splits the batch: each cup has A and B, and the sums hold', async ({ page }) => {
  await pourTroll(page);
  await box(page, 'Mixing cup, up to its rim').fill('1 L');
  const cups = ask(page, 'Can one person pour it in time?');
  await expect(cups.getByRole('row', { name: /^Cup 2/ })).toBeVisible();
  const rows = await cups.locator('.cups tbody tr').allInnerTexts();
  const cells = rows.map((row) => row.split('\t').slice(1).map(numberIn));
  const [all, each] = [cells.at(-1)!, cells.slice(0, -1)];
  expect(each.reduce((sum, [a]) => sum + a!, 0)).toBe(all[0]);
  expect(each.reduce((sum, [, b]) => sum + b!, 0)).toBe(all[1]);
  expect(all[0]! + all[1]!).toBe(all[2]);
  // The large figures are those to weigh next: of one cup.
  expect(await gramsOf(page, 'A')).toBe(each[0]![0]);
  await expect(soFar(page)).toContainText(`in ${each.length} cups`);
});

test('B as it lies in the cup gives the A that goes with it, at once', async ({ page }) => {
  await pourTroll(page);
  await page.getByLabel('B in the cup, as read').fill('207');
  // 100:55 by weight.
  await expect(page.locator('[data-part="A-live"]')).toHaveText(`${Math.round((207 * 100) / 55)}g`);
  await page.getByLabel('B in the cup, as read').fill('1,250');
  await expect(page.locator('[data-part="A-live"]')).toHaveCount(0);
  await expect(ask(page, 'How much A goes onto the B in the cup?')).toContainText('The scale cannot be read');
});

test('what one question cannot have is told there with its field, and the grams stay', async ({ page }) => {
  await pourTroll(page);
  const before = await gramsOf(page, 'A');
  await box(page, 'Thickness of the rubber').fill('20 mm');
  await box(page, 'Air around it').fill('25 C');
  const warm = ask(page, 'How long must the mold warm?');
  await expect(warm.getByText(/the rubber never gets to 31 °C/)).toBeVisible();
  await warm.getByRole('link', { name: 'The air to warm it in' }).click();
  await expect(box(page, 'Air around it')).toBeFocused();
  expect(await gramsOf(page, 'A')).toBe(before);
  await box(page, 'Air around it').fill('45 C');
  await expect(warm).toContainText('until it is warm through');
});

test('the pour sheet opens in a window of its own with the grams of the page', async ({ page }) => {
  await pourTroll(page);
  const a = await gramsOf(page, 'A');
  const opened = page.waitForEvent('popup');
  await page.getByRole('button', { name: 'Print the pour sheet' }).click();
  const sheet = await opened;
  await expect(sheet.locator('body')).toContainText('Before you start');
  await expect(sheet.locator('body')).toContainText(String(a));
});

test('from the first keystroke in a height on no frame shows a figure of the day before', async ({
  page,
}) => {
  await pourTroll(page);
  const before = String(await gramsOf(page, 'A'));
  await page.evaluate(() => {
    const frames: string[] = [];
    Object.assign(globalThis, { frames });
    const look = (): void => {
      const shown = document.querySelectorAll('.sofar, .grams .w, .packs .pick.rank');
      frames.push([...shown].map((e) => e.textContent).join('|'));
      requestAnimationFrame(look);
    };
    document.addEventListener('input', () => requestAnimationFrame(look), { once: true });
  });
  await box(page, 'Height above the sea').fill('1500 m');
  await expect.poll(() => gramsOf(page, 'A')).not.toBe(Number(before));
  const frames = await page.evaluate(async () => {
    // The frame that is on its way counts too.
    for (let i = 0; i < 2; i++) await new Promise((drawn) => requestAnimationFrame(drawn));
    return (globalThis as unknown as { frames: string[] }).frames;
  });
  expect(frames.length).toBeGreaterThan(1);
  for (const frame of frames) expect(frame.split(/[^\d.]+/)).not.toContain(before);
});
