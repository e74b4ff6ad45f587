import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, gramsOf, hasBrowser, numberIn, openTroll, test, trollScan } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');
test.slow();

const part = (page: Page) => page.locator('#mold');
const ask = (page: Page, name: string) => part(page).getByRole('region', { name });
const SILICONE = 'How much silicone do we mix and buy?';

/** The big figure of silicone, kg, once it is current. */
async function siliconeKg(page: Page): Promise<number> {
  const section = ask(page, SILICONE);
  await expect(section.locator('.fig small')).toHaveText('kg', { timeout: 60_000 });
  await expect(section).toHaveAttribute('aria-busy', 'false', { timeout: 60_000 });
  return numberIn(await section.locator('.fig').innerText());
}

/** A cell of the types table. */
const cell = async (page: Page, type: string, row: string): Promise<string> =>
  part(page)
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: row }) })
    .locator(`[data-type="${type}"]`)
    .innerText();

async function moldTroll(page: Page): Promise<number> {
  await openTroll(page);
  await page.getByLabel('Taped height').fill('290 mm');
  return siliconeKg(page);
}

/** Everything that is folded away in Mold. */
const unfold = (page: Page): Promise<void> =>
  part(page)
    .locator('details')
    .evaluateAll((all) => all.forEach((each) => each.setAttribute('open', '')));

test('the sample troll is dropped and taped, and molds of every type stand side by side', async ({
  page,
}) => {
  await page.goto('./');
  await expect(part(page)).toContainText('Measure comes first');
  await page.getByLabel('Choose a scan').setInputFiles(trollScan);
  await page.getByRole('radio', { name: '+y', exact: true }).check();
  await expect(part(page)).toContainText('the scan has no size yet');
  await page.getByLabel('Taped height').fill('290 mm');
  const blockKg = await siliconeKg(page);
  const [skinKg, pouredKg] = [
    numberIn(await cell(page, 'skin', 'Silicone, kg')),
    numberIn(await cell(page, 'blanket', 'Silicone, kg')),
  ];
  expect(blockKg).toBe(numberIn(await cell(page, 'block', 'Silicone, kg')));
  expect(skinKg).toBeLessThan(pouredKg);
  expect(pouredKg).toBeLessThan(blockKg);
  await expect(page.getByRole('link', { name: /Mold/ })).toContainText('needs a look');

  // Skin of 6 mm as the sum by hand is wont to have it: surface times thickness is within a fifth of what grows.
  await page.getByRole('radio', { name: 'Brushed skin' }).check();
  const before = await siliconeKg(page);
  await page.getByLabel('Skin thickness', { exact: true }).fill('8');
  await expect(ask(page, SILICONE)).toContainText('Working out the silicone');
  await expect(part(page).locator('[data-type="skin"]').first()).toHaveText('…');
  await expect.poll(() => siliconeKg(page)).toBeGreaterThan(before);
  expect(await cell(page, 'skin', 'Wall or skin')).toMatch(/^8, in \d coats$/);
  const base = numberIn(await ask(page, SILICONE).locator('[data-part="base"]').innerText());
  const catalyst = numberIn(await ask(page, SILICONE).locator('[data-part="catalyst"]').innerText());
  await expect(ask(page, SILICONE)).toContainText(
    `${(base + catalyst).toLocaleString('en').replace(',', '\u202f')} g together`,
  );
});

test('from the first keystroke on no frame shows silicone of the thickness before', async ({ page }) => {
  await moldTroll(page);
  await page.getByRole('radio', { name: 'Brushed skin' }).check();
  const before = (await siliconeKg(page)).toFixed(2);
  await page.evaluate(() => {
    const frames: string[] = [];
    Object.assign(globalThis, { frames });
    const text = (query: string): string => document.querySelector(query)?.textContent ?? '';
    const look = (): void => {
      const figures = [...document.querySelectorAll('#mold .fig, #mold [data-type="skin"]')];
      frames.push([text('.sofar'), text('#mold .pick.rank'), ...figures.map((e) => e.textContent)].join('|'));
      requestAnimationFrame(look);
    };
    document.addEventListener('input', () => requestAnimationFrame(look), { once: true });
  });
  await page.getByLabel('Skin thickness', { exact: true }).fill('9');
  await expect(ask(page, SILICONE)).toContainText('Working out the silicone');
  await siliconeKg(page);
  const frames = await page.evaluate(() => (globalThis as unknown as { frames: string[] }).frames);
  expect(frames.length).toBeGreaterThan(1);
  for (const frame of frames) expect(frame.split(/[^\d.]+/)).not.toContain(before);
});

test('a box that cannot be read stops the mold, is named with a link, and leaves the grams alone', async ({
  page,
}) => {
  await moldTroll(page);
  await page.getByRole('button', { name: 'Use Sample Foam Light' }).click();
  const grams = await gramsOf(page, 'A');
  await page.getByLabel('Wall around the sculpt', { exact: true }).fill('1,250');
  const type = ask(page, 'Which kind of mold?');
  await expect(type.getByText('The comma can be a decimal sign')).toBeVisible();
  await expect(type).toContainText('Poured block: no figures');
  await type.getByRole('link', { name: 'The wall around the sculpt' }).click();
  await expect(page.getByLabel('Wall around the sculpt', { exact: true })).toBeFocused();
  expect(await gramsOf(page, 'A')).toBe(grams);
  await page.getByLabel('Wall around the sculpt', { exact: true }).fill('500');
  await expect(type.getByText(/Give a number from 3 to 100 mm/)).toBeVisible();
  await page.getByLabel('Wall around the sculpt', { exact: true }).fill('15');
  expect(await siliconeKg(page)).toBeGreaterThan(0);
});

test('card, stock and kits say what to buy; latex gloves on addition cure say stop', async ({ page }) => {
  await moldTroll(page);
  await page.getByRole('button', { name: 'Use Sample Silicone 25' }).click();
  const silicone = ask(page, SILICONE);
  await expect(silicone).toContainText('To buy: ');
  await siliconeKg(page);
  await page.getByRole('button', { name: 'Use the stock of the sample shop' }).click();
  await expect(silicone).toContainText('The stock makes 6.6 kg');
  await expect(silicone.getByText('Its catalyst is an organotin compound')).toBeVisible();

  await page.getByLabel('Cure', { exact: true }).selectOption('addition');
  await page.getByLabel('Gloves').selectOption('latex');
  const bear = ask(page, 'Do the materials bear each other?');
  await expect(bear.getByText('Stop', { exact: true }).first()).toBeVisible();
  await expect(page.getByRole('link', { name: /Mold/ })).toContainText('needs a look');
});

test('Batch pours for the cavity once shrink is said, and for the sculpt when the switch says so', async ({
  page,
}) => {
  await moldTroll(page);
  await page.getByRole('button', { name: 'Use Sample Foam Light' }).click();
  const before = await gramsOf(page, 'A');
  await page.getByLabel('Linear shrink, measured').fill('1 %');
  const weigh = page.getByRole('region', { name: 'What do we weigh?' });
  await expect(weigh).toContainText('the cavity when the foam is poured');
  // 1 % in length is 3 % in volume; what stays in cup and vents does not shrink.
  await expect.poll(() => gramsOf(page, 'A')).toBeLessThan(before * 0.98);
  await weigh.getByRole('radio', { name: 'the sculpt, as measured' }).check();
  await expect.poll(() => gramsOf(page, 'A')).toBe(before);
});

test('working out the molds can be cancelled and taken up again', async ({ page }) => {
  await moldTroll(page);
  await page.getByRole('radio', { name: 'Brushed skin' }).check();
  await siliconeKg(page);
  // Pressed by the page itself in the frame it appears in: where the test is slow and the work quick, the button is gone before a pointer gets there.
  await page.evaluate(() => {
    const press = new MutationObserver(() => {
      const cancel = [...document.querySelectorAll('button')].find((b) => b.textContent === 'Cancel');
      if (cancel === undefined) return;
      press.disconnect();
      cancel.click();
    });
    press.observe(document.body, { childList: true, subtree: true });
  });
  await page.getByLabel('Skin thickness', { exact: true }).fill('30');
  await expect(page.getByText('Cancelled. The scan and all that was typed are still here.')).toBeVisible();
  await expect(page.getByLabel('Skin thickness', { exact: true })).toHaveValue('30');
  await page.getByRole('button', { name: 'Measure again' }).click();
  expect(await siliconeKg(page)).toBeGreaterThan(2);
});

for (const width of [1280, 390]) {
  test(`axe finds nothing in Mold against WCAG 2.2 AA at ${width} px, all unfolded`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await moldTroll(page);
    for (const type of ['Poured block', 'Poured skin']) {
      await page.getByRole('radio', { name: type }).check();
      await siliconeKg(page);
      await unfold(page);
      const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
      const { violations } = await new AxeBuilder({ page }).include('#mold').withTags(tags).analyze();
      const told = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
      expect(told, type).toEqual([]);
    }
  });
}

test('nothing of Mold runs over the edge and every target is 44 px, from 1280 down to 320 px', async ({
  page,
}) => {
  await moldTroll(page);
  await page.getByRole('button', { name: 'Use Sample Silicone 25' }).click();
  await page.getByRole('radio', { name: 'Poured skin' }).check();
  await siliconeKg(page);
  await unfold(page);
  for (const width of [1280, 640, 390, 320]) {
    await page.setViewportSize({ width, height: 900 });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over, `at ${width} px`).toBeLessThanOrEqual(0);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('#mold :is(a, button, summary, select, input, label:has(input))')]
        .filter((e) => !e.matches('.sr, label input'))
        .map((e) => ({ what: e.outerHTML.slice(0, 80), height: e.getBoundingClientRect().height }))
        .filter(({ height }) => height > 0 && height < 43.9),
    );
    expect(small, `at ${width} px`).toEqual([]);
  }
});

test('a mold by keyboard alone: the type by arrows, the skin by typing', async ({ page }) => {
  await moldTroll(page);
  await page.getByRole('radio', { name: 'Poured block' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: 'Brushed skin' })).toBeChecked();
  await expect(page.getByRole('radio', { name: 'Brushed skin' })).toBeFocused();
  for (let press = 0; press < 12; press++) {
    await page.keyboard.press('Tab');
    const box = page.getByLabel('Skin thickness', { exact: true });
    if (await box.evaluate((e) => e === document.activeElement)) break;
  }
  await page.keyboard.type('0.4 in');
  await expect(page.getByText('10.2 mm (0.40 in)')).toBeVisible();
  expect(await siliconeKg(page)).toBeGreaterThan(1);
});
