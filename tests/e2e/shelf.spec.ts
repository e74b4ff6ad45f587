import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { axeFindings } from './axe';
import { row, sampleShop, title, toShelf } from './shelfPage';
import {
  ask,
  box,
  expect,
  gramsOf,
  hasBrowser,
  newPiece,
  pourTroll,
  test,
  toStep,
  trollScan,
} from './ticket';

test.skip(!hasBrowser, 'no chromium was found');

test('an empty Shelf says how to begin; a new piece is named and found on it', async ({ page }) => {
  await page.goto('./');
  await expect(page.getByText('Nothing on the Shelf yet')).toBeVisible();
  await expect(page.locator('.btn')).toHaveText(['New piece']);
  await newPiece(page);
  await page.getByText('Name it').click();
  await page.getByLabel('Name of the piece').fill('Sea Serpent');
  await page.getByLabel('Short code').fill('SERP');
  await page.getByRole('button', { name: 'Use this name' }).click();
  await expect(page.getByText('SERP-1')).toBeVisible();
  await toShelf(page);
  await expect(row(page, 'Sea Serpent')).toContainText('not worked out yet');
  await expect(row(page, 'Sea Serpent').getByText('no outline')).toBeVisible();
  await expect(page.getByRole('link', { name: 'Measure it' })).toHaveClass('btn');
  await row(page, 'Sea Serpent').getByText('Name it').click();
  await row(page, 'Sea Serpent').getByLabel('Name of the piece').fill('Sea Dragon');
  await row(page, 'Sea Serpent').getByRole('button', { name: 'Use this name' }).click();
  await expect(row(page, 'Sea Dragon')).toBeVisible();
  await page.reload();
  await row(page, 'Sea Dragon').getByRole('link', { name: 'Sea Dragon', exact: true }).click();
  await expect(title(page)).toHaveText('Measure');
});

test('a number on the Shelf is that of the ticket, and is gone once the ticket says something else', async ({
  page,
}) => {
  await pourTroll(page);
  const [a, b] = [await gramsOf(page, 'A'), await gramsOf(page, 'B')];
  await toShelf(page);
  const troll = row(page, 'quay-troll-scan');
  await expect(troll).toContainText('263 × 230 × 291 mm');
  await expect(troll).toContainText(/4.4\d\d cm³, 4.3\d\d to 4.4\d\d, taped/);
  await expect(troll.getByRole('img', { name: 'Outline of quay-troll-scan, from the front' })).toBeVisible();
  await expect(troll.getByRole('link', { name: 'Make QUAY-1 ready' })).toBeVisible();
  await troll.getByText('Castings of quay-troll-scan').click();
  await expect(troll).toContainText(`A ${a} g B ${b} g`);
  await troll.getByRole('link', { name: 'quay-troll-scan', exact: true }).click();
  await toStep(page, 'Measure');
  await box(page, 'Taped height').fill('abc');
  await expect(page.getByText('All is kept.')).toBeVisible();
  await toShelf(page);
  await expect(troll).toContainText('not worked out yet');
  await troll.getByText('Castings of quay-troll-scan').click();
  await expect(troll).toContainText('Grams not worked out as it stands.');
  await expect(troll).not.toContainText(`${a} g`);
});

test('a deleted piece is back with all it had when that is taken back, by mouse and by keys', async ({
  page,
}) => {
  await pourTroll(page);
  await toShelf(page);
  const troll = row(page, 'quay-troll-scan');
  const before = await troll.innerText();
  await troll.getByRole('button', { name: 'Delete' }).click();
  await expect(troll).toHaveCount(0);
  await expect(page.getByRole('status').filter({ hasText: 'quay-troll-scan is deleted.' })).toHaveCount(1);
  await page.getByRole('button', { name: /^Undo, \d+ s left.*quay-troll-scan is deleted\./ }).click();
  await expect(troll).toHaveText(before, { useInnerText: true });
  await troll.getByRole('button', { name: 'Delete' }).press('Enter');
  await expect(troll).toHaveCount(0);
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(troll).toHaveText(before, { useInnerText: true });
  // Let go, it is over after ten seconds, and a reload does not bring it back.
  await troll.getByRole('button', { name: 'Delete' }).click();
  await page.mouse.move(5, 5);
  await expect(page.getByRole('button', { name: /^Undo/ })).toHaveCount(0, { timeout: 15_000 });
  await page.reload();
  await expect(page.getByText('Nothing on the Shelf yet')).toBeVisible();
});

test('a scan that is dropped or chosen begins a piece of its name and is read; another file is not', async ({
  page,
}) => {
  await page.goto('./');
  await page.getByLabel('Begin with a scan').setInputFiles(trollScan);
  await expect(title(page)).toHaveText('Measure');
  await expect(ask(page, 'What did you scan?')).toContainText(basename(trollScan));
  await page.reload();
  await expect(ask(page, 'What did you scan?')).toContainText(basename(trollScan));
  await toShelf(page);
  await expect(row(page, 'quay-troll-scan')).toBeVisible();
  const drop = async (name: string, content: string): Promise<void> => {
    const data = await page.evaluateHandle(
      ([called, text]) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([text!], called!));
        return transfer;
      },
      [name, content],
    );
    await page.dispatchEvent('body', 'drop', { dataTransfer: data });
  };
  await drop('notes.txt', 'hello');
  await expect(page.getByText('notes.txt is no scan: choose an STL, OBJ, PLY or 3MF file.')).toBeVisible();
  await drop('box.obj', readFileSync('sample-meshes/box-40x30x20-quads.obj', 'utf8'));
  await expect(title(page)).toHaveText('Measure');
  await expect(ask(page, 'What did you scan?')).toContainText('box.obj');
});

test('a foam of Batch is kept as a card, changed, put back, used for the next piece, deleted and back', async ({
  page,
}) => {
  await pourTroll(page);
  const foam = ask(page, 'Which foam?');
  await foam.getByRole('button', { name: 'Keep this card in the shop' }).click();
  await expect(foam.getByText('Sample Foam Light stands here as on the card of the shop.')).toBeVisible();
  await box(page, 'Free-rise density').fill('6.5');
  await expect(foam.getByText('This is not as on the card of Sample Foam Light.')).toBeVisible();
  await foam.getByRole('button', { name: 'Put the card back' }).click();
  await expect(box(page, 'Free-rise density')).toHaveValue('6');
  await box(page, 'Free-rise density').fill('6.5');
  await foam.getByRole('button', { name: 'Keep the change' }).click();
  await expect(foam.getByText('stands here as on the card')).toBeVisible();
  await toShelf(page);
  const cards = page.getByRole('region', { name: 'Which materials do we use?' });
  await expect(cards).toContainText('104.1 kg/m³ (6.50 lb/ft³). A:B 100:55 by weight: 100 parts of A');
  await cards.getByRole('button', { name: 'Change the card of Sample Foam Light' }).click();
  await cards.getByLabel('Name on the card').fill('Our Light');
  await cards.getByLabel(/Parts of B/).fill('50');
  await cards.getByLabel('Kits it is sold in').fill('2 kg=40');
  await cards.getByRole('button', { name: 'Keep the change' }).click();
  await expect(cards.getByRole('heading', { name: 'Our Light' })).toBeVisible();
  await expect(cards).toContainText('A:B 100:50 by weight');
  await cards.getByRole('button', { name: 'Delete the card of Our Light' }).click();
  await expect(cards.getByText('No card yet')).toBeVisible();
  await page.getByRole('button', { name: /^Undo.*The card of Our Light is deleted/ }).click();
  await expect(cards.getByRole('heading', { name: 'Our Light' })).toBeVisible();
  await newPiece(page);
  await toStep(page, 'Batch');
  await page.getByRole('button', { name: 'Use Our Light' }).click();
  await expect(page.getByLabel(/Parts of B/)).toHaveValue('50');
  // Of the piece before nothing has changed.
  await toShelf(page);
  await page.getByRole('link', { name: 'quay-troll-scan', exact: true }).click();
  await toStep(page, 'Batch');
  await expect(page.getByLabel(/Parts of B/)).toHaveValue('55');
});

test('stock is counted by the part, and drawn; a lot is taken off and put back', async ({ page }) => {
  await sampleShop(page);
  const stock = page.getByRole('region', { name: 'What is left on the stock shelf?' });
  await expect(stock).toContainText('A 2 kg, B 1.1 kg');
  await expect(stock).toContainText('enough for 5 of TROLL-13');
  await stock.getByText('Change the stock of Sample Foam Light').click();
  const lot = stock.getByRole('group', { name: 'Lot of Sample Foam Light' });
  await lot.getByLabel('A, the isocyanate, left').fill('4 lb');
  await expect(stock).toContainText('A 1.814 kg, B 1.1 kg');
  await lot.getByLabel('A, the isocyanate, left').fill('1,250');
  await expect(stock.getByRole('button', { name: '1.25 kg' })).toBeVisible();
  await expect(stock).toContainText('A 1.814 kg');
  await stock.getByRole('button', { name: '1.25 kg' }).click();
  await expect(stock).toContainText('A 1.25 kg');
  await lot.getByLabel('First opened on').fill('2020-01-01');
  await expect(stock).toContainText(
    /Stop\s*Lot L-07 was opened \d+ months ago, past 12 months\. Cup-test it/,
  );
  await page.reload();
  await expect(stock).toContainText('A 1.25 kg, B 1.1 kg');
  await stock.getByText('Change the stock of Sample Foam Light').click();
  await lot.getByRole('button', { name: 'Take this lot off the shelf' }).click();
  await expect(stock.getByText('not counted yet')).toBeVisible();
  await page.getByRole('button', { name: /^Undo.*A lot of Sample Foam Light/ }).click();
  await expect(stock).toContainText('A 1.25 kg, B 1.1 kg');
});

test('scale, height and units of the shop are on every new piece, and change none that is there', async ({
  page,
}) => {
  await newPiece(page);
  await toStep(page, 'Batch');
  await page.getByLabel('Unit of the free rise').selectOption('kg/m3');
  await toShelf(page);
  const settings = page.getByRole('region', { name: 'How do we weigh, and how high up are we?' });
  await settings.getByLabel('Name of the shop').fill('Net Loft');
  await settings.getByLabel('The scale shows steps of').fill('0.5');
  await settings.getByLabel('The most it takes', { exact: true }).fill('6 kg');
  await settings.getByLabel('Height above the sea', { exact: true }).fill('1500');
  await expect(settings).toContainText('1500 m (4921 ft)');
  await page.reload();
  await expect(page.getByText('Net Loft', { exact: true })).toBeVisible();
  await expect(settings.getByLabel('The most it takes', { exact: true })).toHaveValue('6');
  await newPiece(page);
  await toStep(page, 'Batch');
  await expect(page.getByLabel('Unit of the free rise')).toHaveValue('kg/m3');
  await expect(box(page, 'Step of the scale')).toHaveValue('0.5');
  await expect(box(page, 'The most the scale takes')).toHaveValue('6');
  await expect(box(page, 'Height above the sea')).toHaveValue('1500');
  await toShelf(page);
  // A barometer takes the place of the height: one of the two.
  await settings.getByRole('radio', { name: 'barometer' }).check();
  await settings.getByLabel('Barometer on the bench').fill('955');
  await newPiece(page);
  await toStep(page, 'Batch');
  await expect(box(page, 'Height above the sea')).toHaveValue('');
  await expect(box(page, 'Barometer on the bench')).toHaveValue('955');
  await toShelf(page);
  await page.getByRole('link', { name: 'New piece', exact: true }).first().click();
  await toStep(page, 'Batch');
  await expect(box(page, 'Step of the scale')).toHaveValue('');
});

test('the sample shop is a shop apart: pieces with figures of the engine, past pours, afresh and left', async ({
  page,
}) => {
  await sampleShop(page);
  await expect(row(page, 'Quay Troll head')).toContainText('4 poured, 1 planned');
  await expect(row(page, 'Lighthouse Giant’s hand')).toContainText('896.1 cm³');
  await row(page, 'Lamp Eel').getByText('Castings of Lamp Eel').click();
  await row(page, 'Lamp Eel')
    .getByRole('button', { name: /^Plan a pour like this one.*EEL-7/ })
    .click();
  await expect(title(page)).toHaveText('Batch');
  await expect(page.getByText('EEL-9', { exact: true })).toBeVisible();
  await expect(box(page, 'Pack factor')).toHaveValue('1.3');
  await expect(box(page, 'Room')).toHaveValue('');
  await page.getByText('Start from a past pour').click();
  await page.getByRole('button', { name: /^Take it up.*EEL-8/ }).click();
  await expect(page.getByText('EEL-8', { exact: true })).toBeVisible();
  await expect(box(page, 'Pack factor')).toHaveValue('1.4');
  await expect(box(page, 'Room')).toHaveValue('22');
  await toShelf(page);
  await expect(page).toHaveURL(/shop=sample/);
  await row(page, 'Lamp Eel').getByRole('button', { name: 'Delete' }).click();
  await page.getByRole('button', { name: 'Start the sample shop afresh' }).click();
  await expect(row(page, 'Lamp Eel')).toContainText('2 poured');
  await page.getByRole('button', { name: 'Leave the sample shop' }).click();
  await expect(page.getByText('Nothing on the Shelf yet')).toBeVisible();
  await newPiece(page);
  await toStep(page, 'Batch');
  await expect(page.getByRole('button', { name: /^Use Sample/ })).toHaveCount(0);
});

test('another mold of a piece begins with what was said of the first', async ({ page }) => {
  await sampleShop(page);
  await row(page, 'Quay Troll head').getByRole('button', { name: 'Another mold' }).click();
  await expect(title(page)).toHaveText('Mold');
  await expect(page.getByRole('radio', { name: 'Brushed skin' })).toBeChecked();
  await toShelf(page);
  await expect(row(page, 'Quay Troll head')).toContainText('Brushed skin, 2');
  await expect(row(page, 'Quay Troll head')).toContainText('4 poured, 2 planned');
});

for (const width of [1280, 320]) {
  test(`the Shelf at ${width} px: nothing wider than the page, no small targets, no findings of axe`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 900 });
    await sampleShop(page);
    await row(page, 'Quay Troll head').getByText('Castings of Quay Troll head').click();
    await page.getByText('Change the stock of Sample Foam Light').click();
    await page.getByRole('button', { name: 'Change the card of Sample Foam Firm' }).click();
    await expect(page.getByLabel('Kits it is sold in')).toBeVisible();
    await row(page, 'Lamp Eel').getByRole('button', { name: 'Delete' }).click();
    expect(await axeFindings(page)).toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('main :is(a, button, summary, select, .file label, .qty input)')]
        .filter((one) => one.checkVisibility())
        .map((one) => ({ text: one.textContent, box: one.getBoundingClientRect() }))
        .filter(({ box }) => box.width < 43.9 || box.height < 43.9),
    );
    expect(small).toEqual([]);
  });
}
