import type { Page } from '@playwright/test';
import { expectKept, onDisk, ROWS, standing, withoutSilicone } from './everyInput';
import {
  box,
  expect,
  gramsOf,
  hasBrowser,
  newPiece,
  pourTroll,
  soFar,
  soFarGrams,
  test,
  toStep,
  watch,
  type Step,
} from './ticket';

test.skip(!hasBrowser, 'no chromium was found');
test.slow();

/** Size, grams and silicone are worked out anew after a reload, one after the other. */
const WORKED_OUT_MS = 90_000;

const STEPS: readonly Step[] = ['Measure', 'Mold', 'Batch'];

/** All screens as they stand. */
async function allStanding(page: Page): Promise<string[][]> {
  const all: string[][] = [];
  for (const step of STEPS) {
    await toStep(page, step);
    all.push(await standing(page, { silicone: true }));
  }
  return all;
}

test('whatever was said stands after a reload as it did before, with the same volume and grams', async ({
  page,
}) => {
  await newPiece(page);
  for (const row of ROWS) {
    for (const { step, say } of row) {
      await toStep(page, step);
      await say(page);
    }
    await expectKept(page);
    const before = await standing(page);
    await page.reload();
    await expect
      .poll(() => standing(page), { message: row[0]!.calls, timeout: WORKED_OUT_MS })
      .toEqual(before);
  }
  const before = await allStanding(page);
  expect(await soFarGrams(page)).toEqual({ a: await gramsOf(page, 'A'), b: await gramsOf(page, 'B') });
  await page.reload();
  await expect.poll(() => allStanding(page), { timeout: WORKED_OUT_MS }).toEqual(before);
});

test('every step is taken back to the blank ticket and done again, by buttons and by keys', async ({
  page,
}) => {
  await newPiece(page);
  const sayings = ROWS.flat();
  const kept = [await onDisk(page)];
  const headNow = async (): Promise<string> => withoutSilicone(await soFar(page).innerText());
  // Volume and grams after each row, by how much was said until then.
  const heads = new Map([[0, await headNow()]]);
  const blank = await standing(page);
  for (const row of ROWS) {
    for (const { step, say } of row) {
      await toStep(page, step);
      await say(page);
      kept.push(await onDisk(page));
    }
    await standing(page);
    heads.set(kept.length - 1, await headNow());
  }
  const told = await allStanding(page);
  const button = (way: 'Undo' | 'Redo') => page.getByRole('button', { name: new RegExp(`^${way}:`) });
  const blankAgain = async (): Promise<void> => {
    await expect(button('Undo')).toHaveCount(0);
    await toStep(page, 'Measure');
    await expect.poll(() => standing(page), { timeout: WORKED_OUT_MS }).toEqual(blank);
  };

  for (let i = sayings.length; i > 0; i--) {
    await expect(button('Undo')).toHaveText(`Undo: ${sayings[i - 1]!.calls}`);
    await button('Undo').click();
    await expect.poll(() => onDisk(page), `undo of ${sayings[i - 1]!.calls}`).toEqual(kept[i - 1]);
    if (heads.has(i - 1)) await expect.poll(headNow).toBe(heads.get(i - 1));
  }
  await blankAgain();

  await page.getByRole('heading', { level: 1 }).focus();
  for (let i = 0; i < sayings.length; i++) {
    await page.keyboard.press(i % 2 === 0 ? 'Control+y' : 'Control+Shift+Z');
    await expect.poll(() => onDisk(page), `redo of ${sayings[i]!.calls}`).toEqual(kept[i + 1]);
  }
  await expect.poll(() => allStanding(page), { timeout: WORKED_OUT_MS }).toEqual(told);
  for (let i = sayings.length; i > 0; i--) {
    await page.keyboard.press('Control+z');
    await expect.poll(() => onDisk(page)).toEqual(kept[i - 1]);
  }
  await blankAgain();
  for (const { calls } of sayings) {
    await expect(button('Redo')).toHaveText(`Redo: ${calls}`);
    await button('Redo').click();
  }
  await expect(button('Redo')).toHaveCount(0);
  await expect.poll(() => allStanding(page), { timeout: WORKED_OUT_MS }).toEqual(told);
});

test('two tabs on one piece show what the other says, and nothing is lost where both type at once', async ({
  page,
  context,
  baseURL,
}) => {
  await pourTroll(page);
  const other = await context.newPage();
  const heard = watch(other, baseURL!);
  await other.goto(page.url());
  expect(await gramsOf(other, 'A')).toBe(await gramsOf(page, 'A'));
  const both = [page, other];
  const expectBoth = async (label: string, text: string): Promise<void> => {
    for (const tab of both) await expect(box(tab, label)).toHaveValue(text);
  };
  const sameGrams = async (): Promise<number> => {
    const [mine, theirs] = [await gramsOf(page, 'A'), await gramsOf(other, 'A')];
    expect(theirs).toBe(mine);
    return mine;
  };
  const before = await sameGrams();
  await box(page, 'Pack factor').fill('1.4');
  await expectBoth('Pack factor', '1.4');
  await expect.poll(() => gramsOf(other, 'A')).toBeGreaterThan(before);
  await sameGrams();
  await box(other, 'Residue in the cup').fill('30');
  await expectBoth('Residue in the cup', '30');
  await sameGrams();

  const name = 'Our own foam, the third try';
  await Promise.all([
    box(page, 'Name on the card')
      .fill('')
      .then(() => box(page, 'Name on the card').pressSequentially(name)),
    box(other, 'Foam out of the vents').pressSequentially('12.345678901234567890', { delay: 20 }),
  ]);
  await expectBoth('Name on the card', name);
  await expectBoth('Foam out of the vents', '12.345678901234567890');
  await box(page, 'Riser volume').fill('120');
  await expectBoth('Riser volume', '120');
  // What one tab takes back is its own.
  await page.getByRole('button', { name: 'Undo: the riser' }).click();
  await expectBoth('Riser volume', '');
  await expectBoth('Foam out of the vents', '12.345678901234567890');
  await expect(other.getByRole('button', { name: /^Undo:/ })).toHaveText('Undo: the vents');
  await sameGrams();
  for (const tab of both) {
    await tab.reload();
    await expect(box(tab, 'Name on the card')).toHaveValue(name);
    await expect(box(tab, 'Foam out of the vents')).toHaveValue('12.345678901234567890');
  }
  expect(heard).toEqual([]);
});

test('a piece that is deleted in another tab is missed on its ticket, and can be kept again as it stands', async ({
  page,
  context,
  baseURL,
}) => {
  await newPiece(page);
  await toStep(page, 'Batch');
  await box(page, 'Name on the card').fill('Our own foam');
  await expectKept(page);
  const shelf = await context.newPage();
  const heard = watch(shelf, baseURL!);
  await shelf.goto('./');
  await shelf.getByRole('button', { name: /^Delete ?: New piece$/ }).click();
  await expect(page.getByRole('main')).toContainText('it was deleted in another tab');
  await box(page, 'Pack factor').fill('1.4');
  await page.getByRole('button', { name: 'Keep it now' }).click();
  await expect(page.getByRole('main')).not.toContainText('it was deleted in another tab');
  await expectKept(page);
  await expect(shelf.getByRole('link', { name: 'New piece', exact: true })).toBeVisible();
  await shelf.goto(page.url());
  await expect(box(shelf, 'Name on the card')).toHaveValue('Our own foam');
  await expect(box(shelf, 'Pack factor')).toHaveValue('1.4');
  expect(heard).toEqual([]);
});

test('a page closed in the middle of typing has lost no more than the last 300 ms of it', async ({
  page,
  context,
}) => {
  await newPiece(page);
  await toStep(page, 'Batch');
  const url = page.url();
  await box(page, 'Name on the card').focus();
  const typed: { text: string; atMs: number }[] = [];
  for (const letter of 'The quick brown fox jumps over the lazy dog') {
    await page.keyboard.type(letter);
    typed.push({ text: (typed.at(-1)?.text ?? '') + letter, atMs: Date.now() });
    await page.waitForTimeout(25);
  }
  const closedMs = Date.now();
  await page.close({ runBeforeUnload: false });
  const again = await context.newPage();
  await again.goto(url);
  await expect(box(again, 'Name on the card')).not.toHaveValue('');
  const found = await box(again, 'Name on the card').inputValue();
  const sure = typed.filter(({ atMs }) => atMs <= closedMs - 300).at(-1)!.text;
  expect(typed.at(-1)!.text.startsWith(found)).toBe(true);
  expect(found.length).toBeGreaterThanOrEqual(sure.length);
  test.info().annotations.push({ type: 'letters', description: `${found.length} of ${typed.length} kept` });
});
