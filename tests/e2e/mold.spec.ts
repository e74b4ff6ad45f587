import type { Page } from '@playwright/test';
import {
  ask,
  box,
  expect,
  gramsOf,
  hasBrowser,
  newPiece,
  numberIn,
  openTroll,
  railLink,
  soFarGrams,
  tape,
  test,
  toStep,
  trollScan,
  useLightFoam,
  useSilicone,
} from './ticket';

test.skip(!hasBrowser, 'no chromium was found');
test.slow();

const part = (page: Page) => page.getByRole('main');
const skin = (page: Page) => box(page, 'Skin thickness');
const SILICONE = 'How much silicone do we mix and buy?';

/** The big figure of silicone on Mold, kg, once it is current. Goes there. */
async function siliconeKg(page: Page): Promise<number> {
  await toStep(page, 'Mold');
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
  await tape(page, '290 mm');
  return siliconeKg(page);
}

test('the sample troll is dropped and taped, and molds of every type stand side by side', async ({
  page,
}) => {
  await newPiece(page);
  await toStep(page, 'Mold');
  await expect(part(page)).toContainText('Measure comes first');
  await toStep(page, 'Measure');
  await page.getByLabel('Choose a scan').setInputFiles(trollScan);
  await page.getByRole('radio', { name: '+y', exact: true }).check();
  await toStep(page, 'Mold');
  await expect(part(page)).toContainText('the scan has no size yet');
  await tape(page, '290 mm');
  const blockKg = await siliconeKg(page);
  const [skinKg, pouredKg] = [
    numberIn(await cell(page, 'skin', 'Silicone, kg')),
    numberIn(await cell(page, 'blanket', 'Silicone, kg')),
  ];
  expect(blockKg).toBe(numberIn(await cell(page, 'block', 'Silicone, kg')));
  expect(skinKg).toBeLessThan(pouredKg);
  expect(pouredKg).toBeLessThan(blockKg);
  await expect(railLink(page, 'Mold')).toContainText('needs a look');

  // Skin of 6 mm as the sum by hand is wont to have it: surface times thickness is within a fifth of what grows.
  await page.getByRole('radio', { name: 'Brushed skin' }).check();
  const before = await siliconeKg(page);
  await skin(page).fill('8');
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
      const figures = [...document.querySelectorAll('main .fig, main [data-type="skin"]')];
      frames.push([text('.sofar'), text('main .pick.rank'), ...figures.map((e) => e.textContent)].join('|'));
      requestAnimationFrame(look);
    };
    document.addEventListener('input', () => requestAnimationFrame(look), { once: true });
  });
  await skin(page).fill('9');
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
  await useLightFoam(page);
  const grams = await gramsOf(page, 'A');
  await toStep(page, 'Mold');
  await box(page, 'Wall around the sculpt').fill('1,250');
  const type = ask(page, 'Which kind of mold?');
  await expect(type.getByText('The comma can be a decimal sign')).toBeVisible();
  await expect(type).toContainText('Poured block: no figures');
  await type.getByRole('link', { name: 'The wall around the sculpt' }).click();
  await expect(box(page, 'Wall around the sculpt')).toBeFocused();
  expect((await soFarGrams(page)).a).toBe(grams);
  expect(await gramsOf(page, 'A')).toBe(grams);
  await toStep(page, 'Mold');
  await box(page, 'Wall around the sculpt').fill('500');
  await expect(type.getByText(/Give a number from 3 to 100 mm/)).toBeVisible();
  await box(page, 'Wall around the sculpt').fill('15');
  expect(await siliconeKg(page)).toBeGreaterThan(0);
});

test('card, stock and kits say what to buy; latex gloves on addition cure say stop', async ({ page }) => {
  await moldTroll(page);
  await useSilicone(page);
  const silicone = ask(page, SILICONE);
  await expect(silicone).toContainText('To buy: ');
  await siliconeKg(page);
  await box(page, 'Base in stock').fill('6 kg');
  await box(page, 'Catalyst in stock').fill('0.6 kg');
  await expect(silicone).toContainText('The stock makes 6.6 kg');
  await expect(silicone.getByText('Its catalyst is an organotin compound')).toBeVisible();

  await box(page, 'Cure').selectOption('addition');
  await page.getByLabel('Gloves').selectOption('latex');
  const bear = ask(page, 'Do the materials bear each other?');
  await expect(bear.getByText('Stop', { exact: true }).first()).toBeVisible();
  await expect(railLink(page, 'Mold')).toContainText('needs a look');
});

test('Batch pours for the cavity once shrink is said, and for the sculpt when the switch says so', async ({
  page,
}) => {
  await moldTroll(page);
  await useLightFoam(page);
  const before = await gramsOf(page, 'A');
  await toStep(page, 'Mold');
  await page.getByLabel('Linear shrink, measured').fill('1 %');
  // 1 % in length is 3 % in volume; what stays in cup and vents does not shrink.
  await expect.poll(async () => (await soFarGrams(page)).a).toBeLessThan(before * 0.98);
  await toStep(page, 'Batch');
  const weigh = ask(page, 'What do we weigh?');
  await expect(weigh).toContainText('the cavity when the foam is poured');
  expect(await gramsOf(page, 'A')).toBeLessThan(before * 0.98);
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
  await skin(page).fill('30');
  await expect(page.getByText('Cancelled. The scan and all that was typed are still here.')).toBeVisible();
  await expect(skin(page)).toHaveValue('30');
  await page.getByRole('button', { name: 'Measure again' }).click();
  expect(await siliconeKg(page)).toBeGreaterThan(2);
});

test('a mold by keyboard alone: the type by arrows, the skin by typing', async ({ page }) => {
  await moldTroll(page);
  await page.getByRole('radio', { name: 'Poured block' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: 'Brushed skin' })).toBeChecked();
  await expect(page.getByRole('radio', { name: 'Brushed skin' })).toBeFocused();
  for (let press = 0; press < 12; press++) {
    await page.keyboard.press('Tab');
    const box = skin(page);
    if (await box.evaluate((e) => e === document.activeElement)) break;
  }
  await page.keyboard.type('0.4 in');
  await expect(page.getByText('10.2 mm (0.40 in)')).toBeVisible();
  expect(await siliconeKg(page)).toBeGreaterThan(1);
});
