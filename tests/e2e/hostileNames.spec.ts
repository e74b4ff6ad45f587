import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { HOSTILE_NAMES } from '../support/hostileNames';
import { row, title, toShelf } from './shelfPage';
import { box, expect, gramsOf, hasBrowser, newPiece, tape, test, trollScan, useLightFoam } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');

const EVIL = HOSTILE_NAMES.join(' ');
const [IMAGE, SCRIPT, STYLE] = HOSTILE_NAMES as [string, string, string];

/** A shop in which everything that has a name is called so. */
const SHOP = {
  ...SAMPLE_SHOP,
  name: EVIL,
  foams: SAMPLE_SHOP.foams.map((card, n) => ({ ...card, name: `${IMAGE} ${n}` })),
  silicones: SAMPLE_SHOP.silicones.map((card, n) => ({ ...card, name: `${SCRIPT} ${n}` })),
  stock: SAMPLE_SHOP.stock.map((lot) => ({ ...lot, lot: STYLE })),
  book: SAMPLE_ROWS.map((one) => ({ ...one, note: EVIL, ...('lot' in one ? { lot: STYLE } : {}) })),
  pieces: {
    p: {
      id: 'p',
      name: EVIL,
      code: IMAGE,
      begunOn: '2026-11-30',
      sculpt: { fields: {}, choices: {} },
      molds: { m: { fields: {}, choices: {}, no: 1 } },
      castings: { c: { fields: {}, choices: {}, no: 1, mold: 'm' } },
      hand: { mold: 'm', casting: 'c' },
    },
  },
};

/** Nothing of a name has become a part of the page; what the policy refuses would be told in the console, which is watched. */
async function expectOnlyText(page: Page): Promise<void> {
  expect(await page.evaluate(() => 'ran' in globalThis)).toBe(false);
  const made = ':is([onerror], [onload], [onmouseover], img[src="x"], iframe, a[href^="javascript"], base)';
  await expect(page.locator(`:is(body, head) ${made}`)).toHaveCount(0);
  await expect(page.locator('body script')).toHaveCount(0);
}

test('whatever things are called, on Shelf, Book, ticket and sheet a name is text', async ({
  page,
  context,
}) => {
  await page.goto('./');
  const name = `${IMAGE.replaceAll('/', '-')}.json`;
  const file = { name, mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(SHOP)) };
  await page.getByLabel('Bring in a backup').first().setInputFiles(file);
  await expect(page.getByText(`Brought in from ${name}`)).toBeVisible();
  await expect(row(page, EVIL)).toBeVisible();
  await expect(page.getByRole('main')).toContainText(`${IMAGE} 0`);
  await expect(page.getByRole('main')).toContainText(`${SCRIPT} 0`);
  await expectOnlyText(page);

  await page.getByRole('link', { name: 'Open the Book' }).click();
  await expect(title(page)).toHaveText('Book');
  await expect(page.getByRole('main')).toContainText(EVIL);
  await expectOnlyText(page);

  await page.goto('./');
  await newPiece(page);
  const scan = { name: `${IMAGE}.stl`, mimeType: 'model/stl', buffer: readFileSync(trollScan) };
  await page.getByLabel(/Choose (a|another) scan/).setInputFiles(scan);
  await page.getByRole('radio', { name: '+y' }).check();
  await tape(page, '290.85');
  await useLightFoam(page);
  await box(page, 'Name on the card').fill(SCRIPT);
  const grams = await gramsOf(page, 'A');
  await expectOnlyText(page);

  await context.addInitScript(() => Object.assign(globalThis, { print: () => undefined }));
  const opened = page.waitForEvent('popup');
  await page.getByRole('button', { name: 'Print the pour sheet' }).click();
  const sheet = await opened;
  await expect(sheet.locator('.mix b').first()).toHaveText(new RegExp(`^${grams}`));
  await expect(sheet.locator('header')).toContainText(SCRIPT);
  await expect(sheet.locator('h1')).toContainText(IMAGE);
  await expectOnlyText(sheet);

  await toShelf(page);
  await expect(page.getByRole('heading', { level: 2, name: IMAGE, exact: true })).toBeVisible();
  await expectOnlyText(page);
});
