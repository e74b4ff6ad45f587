import type { Locator, Page } from '@playwright/test';
import { ask, box, expect, hasBrowser, newPiece, test, toStep } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');
test.slow();

const OPENING = 'Will it fill, and come out?';
const stage = (page: Page): Locator => page.locator('.card [data-picture]');

/** A ball of 50 mm radius on its board, and a poured skin around it. */
async function ballInSkin(page: Page, thicknessMm: string): Promise<void> {
  await newPiece(page);
  await page.getByLabel('Choose a scan').setInputFiles('sample-meshes/sphere-r50.stl');
  await page.getByRole('radio', { name: '+z', exact: true }).check();
  await page.getByRole('radio', { name: 'Name the unit' }).check();
  await page.getByRole('radio', { name: 'a millimeter' }).check();
  await toStep(page, 'Mold');
  await page.getByRole('radio', { name: 'Poured skin' }).check();
  await box(page, 'Blanket thickness').fill(thicknessMm);
}

/** Rows of pixels of an element as it is on the screen: true where a pixel has the gray of silicone (its token, line). */
async function grayRows(page: Page, element: Locator): Promise<boolean[][]> {
  const png = (await element.screenshot()).toString('base64');
  return page.evaluate(async (text) => {
    const bytes = Uint8Array.from(atob(text), (c) => c.charCodeAt(0));
    const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const { width, height } = image;
    const paper = new OffscreenCanvas(width, height).getContext('2d')!;
    paper.drawImage(image, 0, 0);
    const { data } = paper.getImageData(0, 0, width, height);
    const isGray = (p: number): boolean =>
      [0x6b, 0x67, 0x5f].every((c, k) => Math.abs(data[p + k]! - c) < 10);
    return Array.from({ length: height }, (_, y) =>
      Array.from({ length: width }, (_unused, x) => isGray(4 * (y * width + x))),
    );
  }, png);
}

/** Runs of gray in a row, each as its first pixel and the one after its last. Dots narrower than this are edges of lines. */
function runsIn(row: readonly boolean[], leastPx = 4): [number, number][] {
  const runs: [number, number][] = [];
  for (let x = 0; x < row.length; x++) {
    if (row[x] !== true) continue;
    const from = x;
    while (row[x] === true) x++;
    if (x - from >= leastPx) runs.push([from, x]);
  }
  return runs;
}

test('the cut skin is as thick on the screen as the bar says, within two pixels', async ({ page }) => {
  await ballInSkin(page, '20');
  await expect(page.locator('.card').getByText('silicone', { exact: true })).toBeVisible({ timeout: 60_000 });
  const bar = page.locator('.scalebar');
  const barMm = Number(/(\d+) mm/.exec(await bar.innerText())![1]);
  const pxPerMm = (await bar.locator('i').boundingBox())!.width / barMm;
  // At the equator a line across meets the skin at a right angle, and nowhere a shorter way through it.
  const shortest = async (): Promise<number> => {
    const across = (await grayRows(page, stage(page)))
      .map((row) => runsIn(row))
      .filter((runs) => runs.length === 2);
    return Math.min(...across.flatMap((runs) => runs.map(([from, to]) => to - from)));
  };
  await expect.poll(shortest, { timeout: 30_000 }).toBeLessThan(Infinity);
  // Ink outlines of 1.5 px lie half on the skin, on both sides.
  const seenPx = (await shortest()) + 1.5;
  expect(Math.abs(seenPx - 20 * pxPerMm), `${seenPx} px seen for ${20 * pxPerMm}`).toBeLessThanOrEqual(2);
});

test('a lost picture comes back, and no number waited for it', async ({ page }) => {
  await ballInSkin(page, '10');
  await expect(stage(page).locator('canvas')).toBeVisible({ timeout: 60_000 });
  const before = await page.locator('.sofar').innerText();
  await page.evaluate(() => {
    const gl = document.querySelector<HTMLCanvasElement>('.card canvas')!.getContext('webgl2')!;
    const lose = gl.getExtension('WEBGL_lose_context')!;
    Object.assign(globalThis, { restore: () => lose.restoreContext() });
    lose.loseContext();
  });
  await expect(page.locator('.card .lost')).toBeVisible();
  expect(await page.locator('.sofar').innerText()).toBe(before);
  await page.evaluate(() => (globalThis as unknown as { restore: () => void }).restore());
  await expect(page.locator('.card .lost')).toBeHidden();
  await expect.poll(async () => (await grayRows(page, stage(page))).flat().some(Boolean)).toBe(true);
});

test('without WebGL the numbers, the rows and the sheets are all there', async ({ page }) => {
  await page.addInitScript(() => {
    HTMLCanvasElement.prototype.getContext = () => null;
  });
  await ballInSkin(page, '10');
  await expect(page.locator('.card')).toContainText('draws no 3D pictures', { timeout: 60_000 });
  await ask(page, OPENING).scrollIntoViewIfNeeded();
  await expect(ask(page, OPENING).locator('[data-n]').first()).toBeVisible({ timeout: 90_000 });
  await expect(page.getByRole('button', { name: 'Print the mold sheet' })).toBeEnabled();
  await expect(page.locator('.card figcaption')).toContainText(/100 mm \(3\.94 in\) wide/);
});

test('the picture turns, moves and goes from mark to mark by keys, and says which it is at', async ({
  page,
}) => {
  await ballInSkin(page, '10');
  await ask(page, OPENING).scrollIntoViewIfNeeded();
  await expect(ask(page, OPENING).locator('[data-n]').first()).toBeVisible({ timeout: 90_000 });
  await expect(page.locator('.card [data-mark]').first()).toBeVisible({ timeout: 30_000 });
  await stage(page).focus();
  const placesOf = (): Promise<string> =>
    page.locator('.card [data-mark]').evaluateAll((all) => all.map((e) => e.outerHTML).join());
  for (const key of ['ArrowLeft', 'Shift+ArrowUp', '+', '4']) {
    const before = await placesOf();
    await page.keyboard.press(key);
    await expect.poll(placesOf, { message: key }).not.toBe(before);
  }
  await page.keyboard.press('n');
  const said = page.locator('.card .said');
  await expect(said).toContainText(/^1: /);
  await expect(ask(page, OPENING).locator('[data-n="1"]')).toHaveAttribute('aria-current', 'true');
  await expect(stage(page)).toBeFocused();
});
