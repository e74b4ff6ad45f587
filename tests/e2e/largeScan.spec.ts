import { twoBalls } from './solids';
import { expect, hasBrowser, newPiece, test } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');

test('a large scan is drawn simplified, says with how many of its triangles, and all of them are measured', async ({
  page,
}) => {
  await newPiece(page);
  const buffer = twoBalls(600_000);
  await page.getByLabel('Choose a scan').setInputFiles({ name: 'large.stl', mimeType: 'model/stl', buffer });
  await page.getByRole('radio', { name: 'Name the unit' }).check();
  await page.getByRole('radio', { name: 'a millimeter' }).check();
  await expect(page.getByText(/cm³, 19 times in 20/)).toBeVisible({ timeout: 60_000 });
  await expect(page.locator('.card [data-picture] canvas')).toBeVisible({ timeout: 60_000 });
  const said = /Drawn with ([\d\s\u202f]+) of ([\d\s\u202f]+) triangles/;
  await expect(page.locator('.card')).toContainText(said);
  const [, shown, all] = said.exec(await page.locator('.card').innerText())!;
  const numberIn = (text: string): number => Number(text.replace(/\D/g, ''));
  // Two balls of rows and columns of facets: the count of the file itself.
  expect(numberIn(all!)).toBe(buffer.readUInt32LE(80));
  expect(numberIn(shown!)).toBeLessThan(250_000);
});
