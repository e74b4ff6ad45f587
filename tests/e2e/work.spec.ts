import type { Page } from '@playwright/test';
import { twoBalls } from './solids';
import { expect, gramsOf, hasBrowser, pourTroll, test } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');

test('the focus stays where the work is when the button that was pressed is gone', async ({ page }) => {
  await page.goto('./');
  const press = async (name: string): Promise<void> => {
    await page.getByRole('button', { name, exact: true }).focus();
    await page.keyboard.press('Enter');
    await expect(page.getByRole('button', { name, exact: true })).toBeHidden();
  };
  await press('Quay Troll head');
  await expect(page.getByRole('heading', { name: 'What did you scan?' })).toBeFocused();
  await press('Confirm +z up');
  await expect(page.getByRole('heading', { name: 'Which way is up?' })).toBeFocused();
  await page.getByRole('radio', { name: '+y' }).check();
  await page.getByLabel('Taped height').fill('1,250');
  await press('1250 mm');
  await expect(page.getByLabel('Taped height')).toBeFocused();
  await page.getByLabel('Plane above the lowest point').fill('20');
  await press('Cut at the typed height');
  await expect(page.getByRole('heading', { name: 'Is anything in the scan' })).toBeFocused();
  await expect(page.getByLabel('Taped height of what is kept')).toHaveValue('1250 mm');
  await press('Confirm 1.30');
  await expect(page.getByLabel('Pack factor')).toBeFocused();
});

test('a file dropped anywhere is opened, and a ticket with a scan is not left without a question', async ({
  page,
}) => {
  await page.goto('./');
  const leaves = (): Promise<boolean> =>
    page.evaluate(() => dispatchEvent(new Event('beforeunload', { cancelable: true })));
  expect(await leaves()).toBe(true);
  const bytes = [...twoBalls(2000)];
  const taken = await page.evaluate((all) => {
    const data = new DataTransfer();
    data.items.add(new File([Uint8Array.from(all)], 'dropped.stl'));
    const send = (type: string): boolean =>
      !document
        .querySelector('footer')!
        .dispatchEvent(new DragEvent(type, { dataTransfer: data, bubbles: true, cancelable: true }));
    return [send('dragover'), send('drop')];
  }, bytes);
  expect(taken).toEqual([true, true]);
  await expect(page.getByRole('region', { name: 'What did you scan?' })).toContainText('dropped.stl');
  expect(await leaves()).toBe(false);
});

test('A and B stay beside each other at 320 px, however many digits they have', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 900 });
  await pourTroll(page);
  await page.getByLabel('Step of the scale').fill('1 oz');
  for (const tape of ['290.85', '2100']) {
    await page.getByLabel('Taped height').fill(tape);
    await gramsOf(page, 'A');
    const boxes = await page
      .locator('.sofar .nb')
      .evaluateAll((all) =>
        all.map((each) => ({ y: each.getBoundingClientRect().y, right: each.getBoundingClientRect().right })),
      );
    expect(boxes[0]!.y).toBe(boxes[1]!.y);
    const over = await page.evaluate(() =>
      [...document.querySelectorAll('.sofar .nb, .grams .w')]
        .filter((each) => each.scrollWidth > each.clientWidth + 1 && each.clientWidth > 0)
        .map((each) => each.textContent),
    );
    expect(over).toEqual([]);
    for (const { right } of boxes) expect(right).toBeLessThanOrEqual(320);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
  }
});

test('two fields that are refused are listed at the top of their part, each a link', async ({ page }) => {
  await pourTroll(page);
  const list = page.getByRole('group', { name: 'Fields to look at again' });
  await page.getByLabel('Pack factor').fill('much');
  await page.getByLabel('Residue in the cup', { exact: true }).fill('some');
  await expect(list).toHaveCount(0);
  await page.getByLabel('Step of the scale').focus();
  await expect(list.getByRole('link')).toHaveText(['The pack factor', 'The residue']);
  await list.getByRole('link', { name: 'The pack factor' }).click();
  await expect(page.getByLabel('Pack factor')).toBeFocused();
});

for (const [label, texts] of [
  ['Taped height', ['300', '1,250', '290.85']],
  ['Pack factor', ['1.4', '1.5']],
] as const) {
  test(`the box stays where it is while answers come and go: ${label}`, async ({ page }) => {
    await pourTroll(page);
    const box = page.getByLabel(label);
    await box.focus();
    const topOf = async (): Promise<number> => Math.round((await box.boundingBox())!.y);
    const top = await topOf();
    for (const text of texts) {
      await box.fill(text);
      expect(await topOf(), 'at once').toBe(top);
      await gramsOrNone(page);
      expect(await topOf(), 'with the answer').toBe(top);
    }
  });
}

const gramsOrNone = (page: Page): Promise<void> =>
  expect(page.getByRole('region', { name: 'What do we weigh?' })).toHaveAttribute('aria-busy', 'false');
