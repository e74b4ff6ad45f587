import type { Page } from '@playwright/test';
import { twoBalls } from './solids';
import {
  ask,
  expect,
  gramsOf,
  hasBrowser,
  newPiece,
  pourTroll,
  soFar,
  soFarGrams,
  tape,
  test,
  toStep,
} from './ticket';

test.skip(!hasBrowser, 'no chromium was found');

test('the focus stays where the work is when the button that was pressed is gone', async ({ page }) => {
  await newPiece(page);
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
  await toStep(page, 'Batch');
  await press('Confirm 1.30');
  await expect(page.getByLabel('Pack factor')).toBeFocused();
});

test('a file dropped anywhere is opened, and a ticket that is not kept is not left without a question', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const store = IDBObjectStore.prototype as unknown as Record<string, (...all: unknown[]) => unknown>;
    for (const way of ['add', 'put']) {
      const real = store[way]!;
      store[way] = function (this: unknown, ...all) {
        if (Object.hasOwn(globalThis, 'isFull')) throw new DOMException('no room', 'QuotaExceededError');
        return real.apply(this, all);
      };
    }
  });
  await newPiece(page);
  const leaves = (): Promise<boolean> =>
    page.evaluate(() => dispatchEvent(new Event('beforeunload', { cancelable: true })));
  expect(await leaves()).toBe(true);
  await page.evaluate(() => Object.assign(globalThis, { isFull: true }));
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
  await expect(ask(page, 'What did you scan?')).toContainText('dropped.stl');
  await expect(page.getByRole('main')).toContainText('this device has no room left');
  expect(await leaves()).toBe(false);
  // Nothing is lost while the page is open, and all is kept once there is room.
  await page.evaluate(() => Reflect.deleteProperty(globalThis, 'isFull'));
  await page.getByRole('button', { name: 'Keep it now' }).click();
  await expect(page.getByText('All is kept.')).toBeVisible();
  await expect(page.getByRole('main')).not.toContainText('no room left');
  expect(await leaves()).toBe(true);
  await page.reload();
  await expect(ask(page, 'What did you scan?')).toContainText('dropped.stl');
});

test('A and B stay beside each other at 320 px, however many digits they have', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 900 });
  await pourTroll(page);
  await page.getByLabel('Step of the scale').fill('1 oz');
  for (const text of ['290.85', '2100']) {
    await tape(page, text);
    await soFarGrams(page);
    await expectBeside(page);
    await gramsOf(page, 'A');
    await expectBeside(page);
  }
});

/** The grams of A and B on one line of the head, and none of them over an edge. */
async function expectBeside(page: Page): Promise<void> {
  const boxes = await soFar(page)
    .locator('.nb')
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
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
}

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

for (const [step, label, texts] of [
  ['Measure', 'Taped height', ['300', '1,250', '290.85']],
  ['Batch', 'Pack factor', ['1.4', '1.5']],
] as const) {
  test(`the box stays where it is while answers come and go: ${label}`, async ({ page }) => {
    await pourTroll(page);
    await toStep(page, step);
    const at = page.getByLabel(label);
    await at.focus();
    const topOf = async (): Promise<number> => Math.round((await at.boundingBox())!.y);
    const top = await topOf();
    for (const text of texts) {
      await at.fill(text);
      expect(await topOf(), 'at once').toBe(top);
      await expect(soFar(page)).not.toContainText('working out');
      await expect(page.locator('section.q[aria-busy="true"]')).toHaveCount(0);
      expect(await topOf(), 'with the answer').toBe(top);
    }
  });
}
