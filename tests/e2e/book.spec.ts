import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { axeFindings } from './axe';
import { title } from './shelfPage';
import { ask, box, expect, gramsOf, hasBrowser, test } from './ticket';

test.skip(!hasBrowser, 'no chromium');

const poured = (page: Page): Locator => ask(page, 'What did we pour?');
const taught = (page: Page): Locator => ask(page, 'What have the pours taught us?');
const next = (page: Page): Locator => ask(page, 'What do we change next?');
const lots = (page: Page): Locator => ask(page, 'How do the lots behave?');
const press = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();

/** The sample shop fills itself when it is first shown. */
async function sampleShelf(page: Page): Promise<void> {
  await page.goto('./?shop=sample');
  await expect(page.getByRole('heading', { name: 'Lamp Eel', exact: true })).toBeVisible();
}

async function sampleBook(page: Page): Promise<void> {
  await sampleShelf(page);
  await page.getByRole('link', { name: 'Open the Book' }).click();
  await expect(title(page)).toHaveText('Book');
  await expect(title(page)).toBeFocused();
  await expect(taught(page)).toContainText('Learned from 12 pours');
}

async function savedBook(page: Page): Promise<{ name: string; text: string }> {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: /^Save as CSV ?: the Book$/ }).click();
  const download = await coming;
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}

/** Nothing runs over, nothing that is pressed is too small. */
async function fits(page: Page): Promise<void> {
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(wide).toBeLessThanOrEqual(0);
  const small = await page
    .getByRole('main')
    .locator('button, summary, select, .btn, a.act, input:not(.sr)')
    .evaluateAll((all) =>
      all
        .filter((one) => one.checkVisibility() && !one.matches('[type=radio], [type=checkbox]'))
        .filter((one) => one.getBoundingClientRect().height < 43.5)
        .map((one) => one.textContent),
    );
  expect(small).toEqual([]);
}

test('the Book of the sample shop says what the pours taught, and asks about the one that cannot be', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 900 });
  await sampleBook(page);
  await expect(poured(page)).toContainText('12 pours, 1 to ask about');
  await expect(poured(page)).toContainText('a casting of 230 g is heavier than can be');
  await expect(taught(page)).toContainText('a straight line through 12 pours');
  await expect(taught(page)).toContainText('from 2 cups and 1 short pour: above its card');
  await expect(taught(page).getByRole('img', { name: /Grams left in the cup/ })).toBeVisible();
  await expect(next(page)).toContainText('they moved together, so the log cannot say which one did it');
  await expect(next(page)).toContainText('pour 7 and pour 5 were both packed 1.30, and only 5 came out good');
  await expect(next(page)).toContainText('From pours 4, 5, 6, 7, 8 and 12.');
  await expect(lots(page)).toContainText('3 cup tests');
  expect(await axeFindings(page)).toEqual([]);
  await fits(page);

  await press(page, 'It was 214 g');
  await expect(poured(page)).toContainText('12 pours, nothing to ask about');
  await expect(poured(page).getByRole('row', { name: /^12 / })).toContainText('214');
  await page.reload();
  await expect(poured(page)).toContainText('nothing to ask about');
});

test('the list goes out and comes in again, and nothing is doubled; another shop’s list is mapped', async ({
  page,
}) => {
  await sampleBook(page);
  const { name, text } = await savedBook(page);
  expect(name).toBe('book.csv');
  expect(text.split('\r\n').filter((line) => line !== '')).toHaveLength(18);
  const choose = page.getByLabel('Bring in a list');
  await choose.setInputFiles({ name: 'book.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
  await expect(page.getByText('0 rows to write, 17 rows in the Book already, word for word.')).toBeVisible();
  await expect(page.getByRole('button', { name: /^Write .* in the Book$/ })).toHaveCount(0);
  await press(page, 'Leave the list');

  const theirs = 'Piece,Total,Left\nTROLL,18.5,0.9\nTROLL,heavy,0.9\n';
  await choose.setInputFiles({ name: 'theirs.csv', mimeType: 'text/csv', buffer: Buffer.from(theirs) });
  await box(page, 'Column Total is').selectOption('Mixed');
  await box(page, 'Unit of column Total').selectOption('oz');
  await box(page, 'Column Left is').selectOption('Residue');
  await box(page, 'Unit of column Left').selectOption('oz');
  await expect(page.getByText('Mixed 524.466 g')).toBeVisible();
  await expect(page.getByText('Row 3, column 2 (Total)')).toBeVisible();
  await press(page, 'Write 1 row in the Book, leave out 1');
  await expect(poured(page)).toContainText('13 pours');
});

test('a pour is left out, put back, deleted, and taken back', async ({ page }) => {
  await sampleBook(page);
  await page.getByText('Leave a pour out, change or delete one').click();
  await box(page, 'Which pour').selectOption({ label: '6: HAND-6' });
  await press(page, 'Leave pour 6 out');
  await expect(taught(page)).toContainText('Learned from 11 pours');
  await expect(poured(page).getByRole('row', { name: /^6 / })).toContainText('left out');
  await press(page, 'Put pour 6 back');
  await expect(taught(page)).toContainText('Learned from 12 pours');
  await page.getByRole('button', { name: /^Delete ?: Pour 6$/ }).click();
  await expect(poured(page)).toContainText('11 pours');
  await page.getByRole('button', { name: /^Undo, / }).click();
  await expect(poured(page)).toContainText('12 pours');
});

test('a cup test and a water fill are worked out as they are typed, and written down', async ({ page }) => {
  await sampleBook(page);
  await press(page, 'Write down a cup test');
  const cup = page.getByRole('form', { name: 'A cup test' });
  await expect(cup.getByRole('button', { name: 'Write the cup test in the Book' })).toHaveCount(0);
  await cup.getByLabel('Foam', { exact: true }).selectOption('Sample Foam Light');
  await cup.getByLabel('Lot, as on the label').fill('L-07');
  await cup.getByLabel('Room', { exact: true }).fill('22');
  await cup.getByLabel('Water that fills the cup to its rim', { exact: true }).fill('500');
  await cup.getByLabel('Foam of cup 1, trimmed flush', { exact: true }).fill('52');
  await expect(cup.locator('.ans')).toContainText('103.8 kg/m³');
  await cup.getByRole('button', { name: 'Another cup' }).click();
  await cup.getByLabel('Foam of cup 2, trimmed flush', { exact: true }).fill('54');
  await expect(cup.locator('.ans')).toContainText('cup test (n = 2)');
  await cup.getByRole('button', { name: 'Write the cup test in the Book' }).click();
  await expect(lots(page)).toContainText('4 cup tests');
  await expect(lots(page)).not.toContainText('Cup-test it before it is poured');

  await press(page, 'Write down a water fill');
  const fill = page.getByRole('form', { name: 'A water fill' });
  await expect(fill).toContainText('A plaster jacket is never filled with water');
  await expect(fill).toContainText('Dry the mold fully, then weigh it dry');
  await fill.getByLabel('Piece', { exact: true }).selectOption('Lamp Eel');
  await fill.getByLabel('Water that fills the mold to its rim', { exact: true }).fill('0.95');
  await fill.getByLabel('Temperature of the water', { exact: true }).fill('68 F');
  await expect(fill.locator('.ans')).toContainText('952 cm³');
  await fill.getByRole('button', { name: 'Write the water fill in the Book' }).click();
  await expect(lots(page).getByRole('row', { name: /^Lamp Eel/ })).toContainText('950 g');
});

test('on a phone: the last four pours, and a pour that is planned lands on Batch with its pack; ten more stop after five', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await sampleShelf(page);
  await page.goto('./?piece=1-troll&at=book&shop=sample');
  await expect(next(page)).toContainText('29 °C instead of 35 °C, pack still 1.25');
  await press(page, 'All pieces');
  await expect(taught(page)).toContainText('Learned from 12 pours');
  await expect(poured(page).locator('tbody tr:visible')).toHaveCount(4);
  await press(page, 'Show 8 earlier pours');
  await expect(poured(page).locator('tbody tr:visible')).toHaveCount(12);
  await press(page, 'This piece alone');
  await expect(next(page)).toContainText('pack still 1.25');
  expect(await axeFindings(page)).toEqual([]);
  await fits(page);
  await page.setViewportSize({ width: 320, height: 700 });
  await fits(page);

  await press(page, 'Plan this pour');
  await expect(title(page)).toHaveText('Batch');
  await expect(box(page, 'Pack factor')).toHaveValue('1.25');
  await expect(box(page, 'Temperature wanted')).toHaveValue('29');
  await gramsOf(page, 'A');
  await page.getByRole('link', { name: /^Book/ }).click();
  await box(page, 'Castings that are wanted').fill('10');
  await box(page, 'Molds there are').fill('2');
  const run = ask(page, 'Can we make 10 more?');
  await expect(run).toContainText('the plan of TROLL-14 as it stands, pack 1.25');
  await expect(run).toContainText('No: 5 of 11');
  await expect(run).toContainText(/lasts for 5 of 11 castings: [AB] runs out after casting 5/);
  await expect(run).toContainText('2 kits of 2 kg');
});

test('an empty book says what the first weigh-back will bring', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 700 });
  await page.goto('./?at=book');
  await expect(poured(page)).toContainText('No pour yet');
  await expect(poured(page)).toContainText('The first weigh-back replaces one guess');
  await expect(page.getByRole('button', { name: 'Save as CSV' })).toHaveCount(0);
  await fits(page);
  expect(await axeFindings(page)).toEqual([]);
});
