import type { Locator, Page } from '@playwright/test';
import { APART_MS, button, expectRight, title, toBench } from './benchPage';
import { ask, box, expect, gramsOf, hasBrowser, numberIn, test } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');
test.slow();
test.use({ viewport: { width: 390, height: 844 } });

const weight = (page: Page, name: string): Locator =>
  page.getByRole('textbox', { name: new RegExp(`^${name} `) });

/** The pour day of the troll in the sample shop, on a phone: what was weighed there is what the next pour is planned with. */
test('from the ticket to the clock, back onto the scale, into the Book and on to the next pour', async ({
  page,
}) => {
  await page.goto('./?shop=sample');
  await expect(page.getByRole('heading', { name: 'Lamp Eel' })).toBeVisible();
  await page.goto('./?shop=sample&piece=1-troll&at=batch');
  const a = await gramsOf(page, 'A');
  const b = await gramsOf(page, 'B');
  const code = await page.locator('.head .code').innerText();
  await toBench(page);
  await expect(page.locator('[data-part="A"]')).toHaveText(`${a}g`);
  await expect(page.locator('[data-part="B"]')).toHaveText(`${b}g`);
  for (const read of await page.getByRole('checkbox', { name: /read/ }).all()) await read.check();

  const pressedAt = Date.now();
  await button(page, 'I am mixing').click();
  await expect(title(page)).toHaveText('Mixing');
  await page.waitForTimeout(APART_MS);
  await page.reload();
  await expectRight(page, pressedAt);
  // On another screen it is told, and by it there is a way back.
  await page.goto('./?shop=sample&piece=1-troll&at=batch');
  await expect(page.getByText(/^The clock of TROLL-13 runs: 0:\d\d\./)).toBeVisible();
  await page.getByRole('link', { name: 'Back to the bench' }).click();
  await expectRight(page, pressedAt);
  await button(page, 'Poured').click();
  await page.waitForTimeout(APART_MS);
  await page.locator('[data-primary]').click();
  await expect(title(page)).toHaveText('Wait until');
  await page.waitForTimeout(APART_MS);
  await button(page, 'It is open').click();
  await page.waitForTimeout(APART_MS);
  await page.getByRole('button', { name: /^Yes/ }).click();
  await expect(page.getByRole('heading', { name: 'Weigh-back' })).toBeVisible();

  await weight(page, 'Mixed').fill(String(a + b));
  await weight(page, 'Left in the cup').fill('26');
  await weight(page, 'Trimmed off').fill('30');
  await weight(page, 'Casting').fill(String(a + b - 26 - 30 - 4));
  await expect(page.locator('.balance')).toContainText(
    `${a + b} g mixed, ${a + b - 4} g found, 4 g missing.`,
  );
  await page.getByRole('radio', { name: 'Filled' }).check();
  await page.getByRole('radio', { name: '3' }).check();
  await button(page, 'Write it in the Book').click();

  await expect(title(page)).toHaveText('Book');
  await expect(page.getByText(`${code} is written in the Book.`, { exact: true })).toBeVisible();
  const next = ask(page, 'What do we change next?');
  await expect(next.getByRole('button', { name: 'Plan this pour' })).toBeVisible();
  await expect(ask(page, 'What did we pour?')).toContainText(String(a + b));
  await button(page, 'Plan this pour').click();
  await expect(title(page)).toHaveText('Batch');
  const after = await page.locator('.head .code').innerText();
  expect(numberIn(after)).toBe(numberIn(code) + 1);
  expect(await gramsOf(page, 'A')).toBeGreaterThan(0);
  await expect(box(page, 'Pack factor')).not.toHaveValue('');
  await toBench(page);
  await expect(button(page, 'I am mixing')).toBeVisible();
});
