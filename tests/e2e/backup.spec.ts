import type { Page } from '@playwright/test';
import { readFileSync, writeFileSync } from 'node:fs';
import { call } from '../support/cliCall';
import { toShelf } from './shelfPage';
import { expect, gramsOf, hasBrowser, newPiece, pourTroll, test, toStep } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');

const safety = (page: Page) => page.getByRole('region', { name: 'What if this device is lost?' });

/** The file that a press writes, and its name. */
async function backUp(page: Page): Promise<{ name: string; path: string; text: string }> {
  const coming = page.waitForEvent('download');
  await safety(page).getByRole('button', { name: 'Back up now' }).click();
  const download = await coming;
  const path = await download.path();
  await expect(safety(page).getByText('The backup is among your downloads.')).toBeVisible();
  return { name: download.suggestedFilename(), path, text: readFileSync(path, 'utf8') };
}

async function bringIn(page: Page, file: string | { name: string; text: string }): Promise<void> {
  await safety(page)
    .getByLabel('Bring in a backup')
    .setInputFiles(
      typeof file === 'string'
        ? file
        : { name: file.name, mimeType: 'application/json', buffer: Buffer.from(file.text) },
    );
}

async function forgetAll(page: Page): Promise<void> {
  await safety(page).getByRole('button', { name: 'Forget everything on this device' }).click();
  await safety(page).getByRole('button', { name: 'Forget all of it' }).click();
  await expect(safety(page).getByText('is forgotten')).toBeVisible();
}

test('backed up, forgotten, brought in and backed up again: the same bytes, the same grams', async ({
  page,
}) => {
  await pourTroll(page);
  await page.getByRole('button', { name: 'Keep this card in the shop' }).click();
  const before = [await gramsOf(page, 'A'), await gramsOf(page, 'B')];
  await toShelf(page);
  await page.getByLabel('Name of the shop').fill('Net Loft');
  await expect(page.getByRole('contentinfo')).toContainText('No backup yet.');
  const first = await backUp(page);
  expect(first.name).toMatch(/^net-loft-\d{4}-\d\d-\d\d\.json$/);
  await expect(page.getByRole('contentinfo')).toContainText(/Last backup: \d+.[A-Z][a-z]+ \d{4}\./);

  await safety(page).getByRole('button', { name: 'Forget everything on this device' }).click();
  await expect(safety(page)).toContainText(
    'This forgets 1 piece with 1 casting, 1 scan and 1 card, and the sample shop.',
  );
  await safety(page).getByRole('button', { name: 'Leave it' }).click();
  await expect(page.getByRole('heading', { name: 'quay-troll-scan' })).toBeVisible();
  await forgetAll(page);
  await expect(page.getByText('Nothing on the Shelf yet')).toBeVisible();
  await expect(page.getByRole('contentinfo')).toContainText('No backup yet.');
  await page.reload();
  await expect(page.getByText('Nothing on the Shelf yet')).toBeVisible();

  await bringIn(page, first.path);
  await expect(page.getByText(/^Brought in from .*: 1 piece and 1 card\.$/)).toBeVisible();
  const again = await backUp(page);
  expect(again.text).toBe(first.text);
  await page.getByRole('link', { name: 'quay-troll-scan', exact: true }).click();
  await toStep(page, 'Batch');
  expect([await gramsOf(page, 'A'), await gramsOf(page, 'B')]).toEqual(before);
});

test('a backup beside what is here leaves it as it is, and says so; in its place it is asked first', async ({
  page,
}) => {
  await newPiece(page);
  await toShelf(page);
  const mine = await backUp(page);
  const theirs = JSON.parse(mine.text) as {
    name: string;
    pieces: Record<string, { id: string; name: string; begunAtMs: number }>;
  };
  const [first] = Object.values(theirs.pieces);
  theirs.name = 'Their shop';
  // Begun later: of two that were begun in the same millisecond the id, which is random, would say which stands first.
  const later = { ...first!, id: 'other', name: 'Brought along', begunAtMs: first!.begunAtMs + 1 };
  theirs.pieces = { [first!.id]: { ...first!, name: 'Changed over there' }, other: later };
  const file = { name: 'theirs.json', text: JSON.stringify(theirs) };
  await bringIn(page, file);
  await expect(page.getByText('theirs.json is a backup of Their shop: 2 pieces')).toBeVisible();
  await expect(
    page.getByText('Here stand 1 piece with 1 casting. Nothing has been changed yet.'),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Leave it' }).click();
  await expect(page.getByRole('heading', { level: 2, name: 'Brought along' })).toHaveCount(0);
  await bringIn(page, file);
  await page.getByRole('button', { name: 'Put it beside what is here' }).click();
  await expect(page.getByText('Brought in from theirs.json: 1 piece and 0 cards.')).toBeVisible();
  await expect(page.getByText('Left as they stand here: Changed over there.')).toBeVisible();
  await page.getByRole('button', { name: 'Done' }).click();
  await expect(page.locator('.piece h2')).toHaveText(['New piece', 'Brought along']);
  await bringIn(page, file);
  await page.getByRole('button', { name: 'Replace all that is here' }).click();
  await expect(page.getByText('Brought in from theirs.json: 2 pieces and 0 cards.')).toBeVisible();
  await expect(page.locator('.piece h2')).toHaveText(['Changed over there', 'Brought along']);
});

test('a file that is no backup is refused in words, and nothing is lost', async ({ page }, info) => {
  await newPiece(page);
  await toShelf(page);
  const { text } = await backUp(page);
  const newer = text.replace('risewright/shop@2', 'risewright/shop@3');
  const cases: [string, string, RegExp][] = [
    ['cut.json', text.slice(0, 200), /The shop file cut\.json cannot be used: it is not JSON/],
    ['newer.json', newer, /of a newer Risewright than this one/],
    ['else.json', '{"schema":"risewright/size@1"}', /cannot be used: its schema is risewright\/size@1/],
    ['scan.json', 'solid x', /it is not JSON/],
  ];
  for (const [name, content, words] of cases) {
    await bringIn(page, { name, text: content });
    await expect(page.getByText(words)).toBeVisible();
    await expect(page.getByText('Nothing here was changed.')).toBeVisible();
  }
  expect((await backUp(page)).text).toBe(text);
  const path = info.outputPath('dropped.json');
  writeFileSync(path, text);
  const data = await page.evaluateHandle((content) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([content], 'dropped.json'));
    return transfer;
  }, text);
  await page.dispatchEvent('body', 'drop', { dataTransfer: data });
  await expect(page.getByText('dropped.json is a backup: 1 piece')).toBeVisible();
});

test('the sample shop backed up opens in the command line, and in the own shop of another device', async ({
  page,
}) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Try the sample shop' }).click();
  await expect(page.getByRole('heading', { name: 'Lamp Eel' })).toBeVisible({ timeout: 60_000 });
  const { text, path } = await backUp(page);
  const said = call(
    ['batch', '--shop', 'b.json', '--foam', 'Sample Foam Light', '--volume', '4.478 L', '--json'],
    { files: { 'b.json': text } },
  );
  expect(said.exit).toBe(0);
  await page.getByRole('button', { name: 'Leave the sample shop' }).click();
  await bringIn(page, path);
  await expect(page.getByText(/: 4 pieces and 3 cards\.$/)).toBeVisible();
  await page.getByRole('link', { name: 'Quay Troll head', exact: true }).click();
  await toStep(page, 'Measure');
  await expect(page.getByText('quay-troll-scan.stl').first()).toBeVisible();
});
