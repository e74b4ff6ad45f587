import { execFile } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { promisify } from 'node:util';
import type { Page } from '@playwright/test';
import { readShop } from '../../src/job/shop';
import { valueOf } from '../support/outcome';
import { twoBalls } from './solids';
import { box, expect, gramsOf, hasBrowser, newPiece, pourTroll, test, toStep, volumeCm3 } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');

const trouble = (page: Page) => page.locator('.trouble');

async function backedUp(page: Page): Promise<ReturnType<typeof shopIn>> {
  const coming = page.waitForEvent('download');
  await page.getByRole('contentinfo').getByRole('button', { name: 'Back up now' }).click();
  return shopIn(readFileSync(await (await coming).path(), 'utf8'));
}
const shopIn = (text: string) => valueOf(readShop(text, 'backup.json'));

test('the thread that measures is taken away at its work time and again, and each next answer is right', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const Real = globalThis.Worker;
    // Ended behind the back of the page, as a browser does it: after so many words of a measure.
    Object.assign(globalThis, { endAfter: -1 });
    globalThis.Worker = class extends Real {
      override postMessage(message: { request?: { kind: string } }, transfer: unknown = []): void {
        super.postMessage(message, transfer as Transferable[]);
        const all = globalThis as unknown as { endAfter: number };
        if (message.request?.kind !== 'size' || all.endAfter < 0) return;
        let left = all.endAfter;
        all.endAfter = -1;
        if (left === 0) return super.terminate();
        this.addEventListener('message', () => {
          if (--left === 0) super.terminate();
        });
      }
    };
  });
  await newPiece(page);
  const buffer = twoBalls(2000);
  await page.getByLabel('Choose a scan').setInputFiles({ name: 'balls.stl', mimeType: 'model/stl', buffer });
  await page.getByRole('radio', { name: '+z' }).check();
  await page.getByLabel('Taped height').fill('100 mm');
  const whole = await volumeCm3(page);
  const fault = page.getByRole('main').getByText('ended by itself');
  for (let turn = 0; turn < 3; turn++) {
    await page.evaluate((after) => Object.assign(globalThis, { endAfter: after }), turn % 4);
    const tall = 200 + 10 * turn;
    await page.getByLabel('Taped height').fill(`${tall} mm`);
    await expect(fault).toBeVisible();
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(fault).toBeHidden();
    // The volume goes with the third power of the height.
    expect(await volumeCm3(page)).toBeCloseTo(whole * (tall / 100) ** 3, -2);
  }
});

test('where the browser keeps nothing it is said, a piece is worked out all the same, and saved as a file', async ({
  page,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('storage is off', 'SecurityError');
    };
  });
  await page.goto('./');
  await expect(trouble(page)).toContainText('the browser does not let this page store anything');
  await pourTroll(page);
  const grams = await gramsOf(page, 'A');
  await expect(page.getByText('Kept by this page alone')).toBeVisible();
  await expect(page.getByText('All is kept.')).toHaveCount(0);
  const shop = await backedUp(page);
  const [piece] = Object.values(shop.pieces);
  expect(piece?.sculpt.fields.tape?.text).toBe('290.85');
  expect(Object.keys(shop.scans)).toEqual([piece!.sculpt.scan]);
  await page.getByRole('link', { name: 'Back to the Shelf' }).click();
  await page.getByRole('link', { name: piece!.name, exact: true }).click();
  await toStep(page, 'Batch');
  expect(await gramsOf(page, 'A')).toBe(grams);
  // Neither is it gone after a look at the other shop.
  await page.getByRole('link', { name: 'Back to the Shelf' }).click();
  await page.getByRole('button', { name: 'Try the sample shop' }).click();
  await page.getByRole('button', { name: 'Leave the sample shop' }).click();
  await expect(page.getByRole('link', { name: piece!.name, exact: true })).toBeVisible();
  await expect(trouble(page)).toContainText('the browser does not let this page store anything');
});

test('a store that is deleted under the page is told of, and a backup has what stands on the ticket', async ({
  page,
}) => {
  await pourTroll(page);
  await page.evaluate(
    () => new Promise((over) => (indexedDB.deleteDatabase('risewright').onsuccess = () => over(true))),
  );
  await expect(trouble(page)).toContainText('was shut from outside');
  await box(page, 'Pack factor').fill('1.45');
  await expect(page.getByText('The last change is not kept.').first()).toBeVisible();
  expect(await gramsOf(page, 'A')).toBeGreaterThan(0);
  const shop = await backedUp(page);
  const [piece] = Object.values(shop.pieces);
  expect(Object.values(piece!.castings)[0]!.fields.pack?.text).toBe('1.45');
  expect(Object.keys(shop.scans)).toEqual([piece!.sculpt.scan]);
  // Going to the Shelf would lose it: that is asked about first.
  page.once('dialog', (dialog) => void dialog.dismiss());
  await page.getByRole('link', { name: 'Back to the Shelf' }).click();
  await expect(box(page, 'Pack factor')).toHaveValue('1.45');
});

test('a store that another tab holds in an earlier version is waited for in words, and done without when told to', async ({
  page,
  context,
}) => {
  const other = await context.newPage();
  await other.goto('./version.json');
  await other.evaluate(
    () =>
      new Promise((over) => {
        // As the first version laid it out, by a page that does not give way.
        const asked = indexedDB.open('risewright', 10);
        asked.onupgradeneeded = () => {
          for (const name of ['pieces', 'bin', 'scans'])
            asked.result.createObjectStore(name, { keyPath: 'id' });
          for (const name of ['shop', 'local']) asked.result.createObjectStore(name, { keyPath: 'key' });
        };
        asked.onsuccess = () => over(Object.assign(globalThis, { held: asked.result }) !== undefined);
      }),
  );
  await page.goto('./');
  await expect(trouble(page)).toContainText('another tab of this page holds it open');
  await page.getByRole('button', { name: 'Work without keeping' }).click();
  await page.getByRole('button', { name: 'New piece', exact: true }).click();
  await expect(page.getByText('Kept by this page alone')).toBeVisible();
  page.once('dialog', (dialog) => void dialog.accept());
  // Behind the request of the page before, which the browser has not given up yet, it is not told why.
  await page.reload();
  await expect(trouble(page)).toContainText('The browser has not opened what is kept here');
  await other.evaluate(() => (globalThis as unknown as { held: IDBDatabase }).held.close());
  await expect(trouble(page)).toHaveCount(0);
  // It is there now, and the piece of before, which the page alone kept, is told of as missing.
  await expect(page.getByRole('main')).toContainText('This piece is not on the Shelf');
});

test('a sheet that cannot be printed is told of, and saved as a file instead', async ({ page }) => {
  await pourTroll(page);
  await page.evaluate(() => Object.assign(globalThis, { open: () => null }));
  await page.getByRole('button', { name: 'Print the pour sheet' }).click();
  await expect(page.getByRole('main')).toContainText('did not let a window be opened to print from');
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save it as a file' }).click();
  const download = await coming;
  expect(download.suggestedFilename()).toMatch(/pour-sheet.*\.html$/);
  expect(readFileSync(await download.path(), 'utf8')).toContain('Pour sheet');
});

test('killed three times while it saves, the browser finds every record as it was before or after', async () => {
  const { stdout } = await promisify(execFile)(process.execPath, [
    'scripts/kills.mjs',
    '--times',
    '3',
    '--seed',
    '7',
  ]);
  expect(stdout).toContain('3 kills, ');
});
