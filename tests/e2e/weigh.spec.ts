import { readFileSync } from 'node:fs';
import { crc32, deflateSync } from 'node:zlib';
import type { Locator, Page } from '@playwright/test';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { call } from '../support/cliCall';
import { axeFindings } from './axe';
import { expect, hasBrowser, numberIn, test } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');
test.use({ viewport: { width: 390, height: 844 } });

const box = (page: Page, name: string): Locator =>
  page.getByRole('textbox', { name: new RegExp(`^${name} `) });

/** A picture of 1600 by 2400 pixels, red at the left and white at the right (PNG, third edition). */
function png(): Buffer {
  const [width, height] = [1600, 2400];
  const row = Buffer.alloc(1 + 3 * width, 255);
  row[0] = 0;
  for (let x = 0; x < width / 2; x++) row.set([200, 20, 20], 1 + 3 * x);
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 2, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(Buffer.concat(Array<Buffer>(height).fill(row)))),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

/** The troll of the sample shop, on the scale without a clock. */
async function toWeighBack(page: Page): Promise<void> {
  await page.goto('./?shop=sample');
  await expect(page.getByRole('heading', { name: 'Lamp Eel' })).toBeVisible();
  await page.goto('./?shop=sample&piece=1-troll&at=bench');
  await page.getByRole('button', { name: 'Weigh back without the clock' }).click();
  await expect(page.getByRole('heading', { name: 'Weigh-back' })).toBeVisible();
  await expect(page.locator('.goesin')).toContainText('as planned, not weighed');
}

interface Backup {
  book: { photo?: string; moldC?: number }[];
  photos?: Record<string, { type: string; data: string }>;
  stock: { lot?: string }[];
}

/** What can be pressed or typed into and is lower than 64 px. */
const smallTargets = (page: Page): Promise<string[]> =>
  page
    .locator('.weigh')
    .locator(
      'button, select, input:not([type=file]):not([type=checkbox]):not([type=radio]), .big label, .tick',
    )
    .evaluateAll((all) =>
      all.filter((one) => one.getBoundingClientRect().height < 64).map((one) => one.outerHTML.slice(0, 80)),
    );

/** The file that "Back up now" on the Shelf writes. */
async function backup(page: Page): Promise<{ text: string; json: Backup }> {
  await page.goto('./?shop=sample');
  const coming = page.waitForEvent('download');
  await page
    .getByRole('region', { name: 'What if this device is lost?' })
    .getByRole('button', { name: 'Back up now' })
    .click();
  const text = readFileSync(await (await coming).path(), 'utf8');
  return { text, json: JSON.parse(text) as Backup };
}

test('weighed back: balance, a slip asked in place, a photo, and a row in the Book; a reload loses nothing', async ({
  page,
}) => {
  await toWeighBack(page);
  const [a, b] = (await page.locator('.goesin .nb').allInnerTexts()).map(numberIn) as [number, number];
  const mixed = a + b;
  await box(page, 'Mixed').fill(String(mixed));
  await box(page, 'Left in the cup').fill('25');
  await box(page, 'Trimmed off').fill('29');
  await box(page, 'Casting').fill(String(mixed - 25));
  await expect(page.locator('.balance')).toContainText(`${mixed + 29} g found: 29 g more than went in.`);
  const slip = page.locator('.slip');
  await expect(slip).toContainText(
    `at most ${mixed - 54} g were left for the casting. ${mixed - 25} g is just what was poured.`,
  );
  await slip.getByRole('button', { name: `${mixed - 54} g, as it was weighed with the trim on` }).click();
  await expect(slip).toHaveCount(0);
  // Of an ounce scale, in steps of a hundredth.
  const ounces = ((mixed - 56) / 28.349523125).toFixed(2);
  await box(page, 'Casting').fill(`${ounces} oz`);
  await expect(page.locator('.balance')).toContainText(
    `${mixed} g mixed, ${mixed - 2} g found, 2 g missing.`,
  );
  await expect(page.locator('.balance')).toContainText('Fine');
  await box(page, 'Mold').fill('98.6');
  await page.getByRole('button', { name: '98.6 °F, which is 37 °C' }).click();
  await page.getByRole('button', { name: /^Did not take it ?: Room$/ }).click();
  await page.getByRole('radio', { name: 'Filled' }).check();
  await page.getByRole('radio', { name: '3' }).check();
  await expect(page.getByText('closed, with pinholes you would fill before paint.')).toBeVisible();
  await page.getByRole('checkbox', { name: 'Right side' }).check();

  await page.getByLabel('Add a photo').setInputFiles({
    name: 'notes.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from('no picture'),
  });
  await expect(page.getByText('notes.txt cannot be opened as a picture here.')).toBeVisible();
  await page.getByLabel('Add a photo').setInputFiles({ name: 'c.png', mimeType: 'image/png', buffer: png() });
  const photo = page.getByRole('img', { name: 'Photo of TROLL-13' });
  await expect(photo).toBeVisible();
  await expect
    .poll(() => photo.evaluate((img: HTMLImageElement) => [img.naturalWidth, img.naturalHeight]))
    .toEqual([853, 1280]);

  await page.reload();
  await expect(box(page, 'Casting')).toHaveValue(`${ounces} oz`);
  await expect(box(page, 'Mixed')).toHaveValue(String(mixed));
  await expect(page.getByRole('radio', { name: 'Filled' })).toBeChecked();
  await expect(page.getByRole('button', { name: /^Did not take it ?: Room$/ })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await expect(photo).toBeVisible();
  await page.getByRole('radio', { name: 'L-07' }).check();
  await page.getByRole('checkbox', { name: `Take ${a} g of A and ${b} g of B off lot L-07` }).check();
  expect(await axeFindings(page)).toEqual([]);
  expect(await smallTargets(page)).toEqual([]);
  await page.setViewportSize({ width: 320, height: 700 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  await page.getByRole('button', { name: 'Write it in the Book' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Book' })).toBeVisible();

  const { json, text } = await backup(page);
  expect(json.book).toHaveLength(SAMPLE_ROWS.length + 1);
  const row = json.book.at(-1)!;
  expect(row).toMatchObject({
    kind: 'pour',
    piece: '1-troll',
    no: 13,
    foam: 'Sample Foam Light',
    lot: 'L-07',
    aG: a,
    bG: b,
    mixedG: mixed,
    residueG: 25,
    trimG: 29,
    filled: 'full',
    skin: 3,
    note: 'voids: right side; A and B as planned, not weighed',
  });
  expect(row.moldC).toBeCloseTo(37, 9);
  expect(row).not.toHaveProperty('roomC');
  expect(json.stock.find(({ lot }) => lot === 'L-07')).toMatchObject({
    aKg: (2000 - a) / 1000,
    bKg: (1100 - b) / 1000,
  });
  const { type, data } = json.photos![row.photo!]!;
  const bytes = Buffer.from(data, 'base64');
  expect(type).toBe('image/jpeg');
  expect([...bytes.subarray(0, 3)]).toEqual([0xff, 0xd8, 0xff]);
  expect(bytes.length).toBeLessThan(300_000);
  expect(bytes.includes('Exif')).toBe(false);
  const listed = call(['book', 'list', '--book', 'b.json', '--json'], { files: { 'b.json': text } });
  expect(listed.exit).toBe(0);
});

test('one figure alone is written, taken out again with the stock, and written twice is one row', async ({
  page,
}) => {
  await toWeighBack(page);
  const write = page.getByRole('button', { name: 'Write it in the Book' });
  await box(page, 'Left in the cup').fill('25');
  await page.getByRole('radio', { name: 'L-07' }).check();
  await page.getByRole('checkbox', { name: /off lot L-07/ }).check();
  await write.click();
  const undo = page.getByRole('button', { name: /^Undo, .*TROLL-13 / });
  await expect(undo).toContainText('TROLL-13 is written in the Book.');
  await undo.click();
  await expect(undo).toHaveCount(0);
  const before = (await backup(page)).json;
  expect(before.book).toHaveLength(SAMPLE_ROWS.length);
  expect(before.stock).toEqual(SAMPLE_SHOP.stock);

  for (const left of ['25', '26']) {
    await page.goto('./?shop=sample&piece=1-troll&at=bench');
    await box(page, 'Left in the cup').fill(left);
    await write.click();
    await expect(undo).toContainText(
      left === '25' ? 'is written in the Book' : 'took the place of its row in the Book',
    );
  }
  const { json } = await backup(page);
  expect(json.book).toHaveLength(SAMPLE_ROWS.length + 1);
  expect(json.book.at(-1)).toMatchObject({ no: 13, residueG: 26 });
  expect(json.stock).toEqual(SAMPLE_SHOP.stock);
});
