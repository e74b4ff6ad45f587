import type { Locator, Page } from '@playwright/test';
import { axeFindings } from './axe';
import { binaryStl, boxFacets } from './solids';
import { ask, expect, hasBrowser, newPiece, numberIn, openTroll, tape, test, volumeCm3 } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');

const unit = (page: Page): Locator => ask(page, 'How big is one unit in the file?');
const sound = (page: Page): Locator => ask(page, 'Is the scan sound?');
const picture = (page: Page): Locator => page.getByRole('group', { name: 'Picture of the scan' });

const NOWHERE = [0, 0, 0];
const CUBE: Parameters<typeof boxFacets> = [[100, 100, 100], NOWHERE];

/** A click on the picture, at shares of its width and height. */
async function pressOn(page: Page, across: number, down: number): Promise<void> {
  const { x, y, width, height } = (await picture(page).boundingBox())!;
  await page.mouse.click(x + across * width, y + down * height);
}

/** A file of boxes, in millimeters. */
async function openBoxes(page: Page, ...boxes: Parameters<typeof boxFacets>[]): Promise<void> {
  await newPiece(page);
  const buffer = binaryStl(boxes.flatMap((box) => boxFacets(...box)));
  await page.getByLabel('Choose a scan').setInputFiles({ name: 'boxes.stl', mimeType: 'model/stl', buffer });
  await page.getByRole('radio', { name: 'Name the unit' }).check();
  await page.getByRole('radio', { name: 'a millimeter' }).check();
}

test('a second side agrees, or warns, and is taken for the scale only when it is told to', async ({
  page,
}) => {
  await openTroll(page);
  await expect(page.getByText('Check it with a second distance')).toBeHidden();
  await tape(page, '290.85');
  const before = await volumeCm3(page);
  await page.getByRole('radio', { name: 'its width' }).check();
  // The clean sculpt is 262.70 mm wide (sample-meshes/README.md); a tape that reads 264 is half a percent more.
  await page.getByLabel('Taped width').fill('264');
  await expect(unit(page)).toContainText(/The taped width agrees with the taped height within 0\.\d+ %/);
  expect(await volumeCm3(page)).toBe(before);

  await page.getByLabel('Taped width').fill('10.8 in');
  // 274.3 on 262.7 is 4.4 %; the noise of the scan widens it by a few tenths of a millimeter.
  await expect(unit(page)).toContainText(/By the taped width the piece would be 4\.[34] % larger/);
  await expect(unit(page).locator('.g')).toContainText('Look');
  expect(await volumeCm3(page)).toBe(before);
  await unit(page).getByRole('button', { name: 'Use this distance instead' }).click();
  await expect(unit(page).locator('.ans')).toContainText('by the taped width');
  await expect.poll(() => volumeCm3(page)).toBeGreaterThan(1.12 * before);
  await unit(page).getByRole('button', { name: 'Use the taped height instead' }).click();
  await expect.poll(() => volumeCm3(page)).toBe(before);
});

test('two points are picked with the mouse and with the keyboard alone, and stand in words', async ({
  page,
}) => {
  await openBoxes(page, CUBE);
  await page.getByRole('radio', { name: 'two points on the picture' }).check();
  await page.getByRole('button', { name: 'Pick two points on the picture' }).click();
  await expect(picture(page)).toBeFocused();
  await expect(page.locator('.scalebar')).toContainText('mm');
  await pressOn(page, 0.01, 0.01);
  await expect(page.getByText('Nothing is there: point at the piece.')).toBeVisible();
  // A drag turns the piece and sets nothing; 1 looks at it from the front again.
  const stage = (await picture(page).boundingBox())!;
  await page.mouse.move(stage.x + stage.width / 2, stage.y + stage.height / 2);
  await page.mouse.down();
  await page.mouse.move(stage.x + stage.width / 2 + 60, stage.y + stage.height / 2);
  await page.mouse.up();
  await page.keyboard.press('1');
  await expect(unit(page).getByText('Point 1:')).toBeHidden();

  await pressOn(page, 0.5, 0.5);
  // The middle of the front face, which lies at y = 100; a pixel is less than half a millimeter.
  await expect(
    unit(page).getByText(/^Point 1: x (49|50|51)(\.\d+)?, y 100, z (49|50|51)(\.\d+)?$/),
  ).toBeVisible();
  for (let press = 0; press < 5; press++) await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('Taped between points 1 and 2')).toBeFocused();
  const apart = numberIn(
    await unit(page)
      .getByText(/ apart;/)
      .innerText(),
  );
  const bar = await page.locator('.scalebar i').boundingBox();
  const mm = numberIn(await page.locator('.scalebar').innerText());
  // 49 px up, by the scale bar, which is as wide as it says to a pixel.
  expect(Math.abs(apart / ((49 * mm) / bar!.width) - 1)).toBeLessThan(0.03);
  await expect(picture(page).locator('.marks circle')).toHaveCount(2);

  await page.keyboard.type(String(apart));
  await expect(unit(page)).toContainText('The distance between two points agrees with the file unit');
  await page.getByRole('button', { name: 'Pick two other points' }).click();
  await expect(page.getByLabel('Taped between points 1 and 2')).toHaveValue('');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: 'Pick two points on the picture' })).toBeFocused();
});

test('the plane is moved with the slider, cuts nothing unasked, and once it cuts the slider moves the cut', async ({
  page,
}) => {
  await openBoxes(page, [[100, 100, 200], NOWHERE]);
  expect(await volumeCm3(page)).toBe(2000);
  const cut = ask(page, 'Is anything in the scan that is not the piece?');
  const slider = page.getByRole('slider', { name: 'Slide the plane up or down' });
  await expect(slider).toHaveAttribute('max', '200');
  const before = await picture(page).locator('canvas').screenshot();
  await slider.fill('50');
  await expect(page.getByLabel('Plane above the lowest point')).toHaveValue('50');
  await expect(slider).toHaveAttribute('aria-valuetext', '50 mm (1.97 in)');
  await expect
    .poll(async () => (await picture(page).locator('canvas').screenshot()).equals(before))
    .toBe(false);
  await expect(cut).toContainText('Nothing is cut off');
  expect(await volumeCm3(page)).toBe(2000);

  await page.getByRole('button', { name: 'Cut at the typed height' }).click();
  await expect(cut).toContainText('500 cm³ cut off');
  expect(await volumeCm3(page)).toBe(1500);
  await slider.focus();
  const step = Number(await slider.getAttribute('step'));
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => volumeCm3(page)).toBe(1500 - 10 * step);
  await page.getByRole('button', { name: 'Remove the cut' }).click();
  await expect.poll(() => volumeCm3(page)).toBe(2000);
});

test('a separate piece is left out and put back by its row, and undo does the same', async ({ page }) => {
  // 1000 and 120 cm3, apart.
  await openBoxes(page, CUBE, [
    [60, 50, 40],
    [200, 0, 0],
  ]);
  expect(await volumeCm3(page)).toBe(1120);
  await sound(page).getByRole('button', { name: 'Leave out (finding 1.2)' }).click();
  await expect.poll(() => volumeCm3(page)).toBe(1000);
  await expect(sound(page).getByRole('row', { name: /left out, as you said/ })).toContainText('− 120 cm³');
  await sound(page).getByRole('button', { name: 'Put back (finding 1)' }).click();
  await expect.poll(() => volumeCm3(page)).toBe(1120);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(() => volumeCm3(page)).toBe(1000);
  await page.reload();
  // Kept: a piece left out stays out.
  await expect.poll(() => volumeCm3(page)).toBe(1000);
});

test('a finding is shown on the picture where it lies', async ({ page }) => {
  await openTroll(page);
  await tape(page, '290.85');
  await sound(page)
    .getByRole('button', { name: /^Show \(finding 1\)/ })
    .click();
  await expect(picture(page).locator('[data-picked]')).toHaveAttribute('data-mark', '1');
  await expect(sound(page).locator('tr[aria-current="true"]')).toHaveAttribute('data-n', '1');
  // Every finding with a place has its number on the picture, not only the one that is shown.
  await expect(picture(page).locator('[data-mark]')).toHaveCount(
    await sound(page).getByRole('button', { name: /^Show/ }).count(),
  );
  await expect(page.getByText('Boxes 1, 2: the places of those findings.')).toBeVisible();
});

test('each way up is shown standing, with its sides in words', async ({ page }) => {
  await openTroll(page);
  await expect(page.getByRole('radio', { name: '+y', exact: true })).toHaveAccessibleDescription(
    /^11\.45 tall, 10\.35 wide, 9\.05\d deep$/,
  );
});

test('without WebGL nothing is asked that needs a picture, and a side checks all the same', async ({
  page,
}) => {
  await page.addInitScript(() => {
    HTMLCanvasElement.prototype.getContext = () => null;
  });
  await openTroll(page);
  await tape(page, '290.85');
  await expect(page.getByRole('radio', { name: 'its width' })).toBeVisible();
  await expect(page.getByRole('radio', { name: 'two points on the picture' })).toBeHidden();
  await expect(sound(page).getByRole('button', { name: /^Show/ })).toHaveCount(0);
  await page.getByRole('radio', { name: 'its width' }).check();
  await page.getByLabel('Taped width').fill('264');
  await expect(unit(page)).toContainText('The taped width agrees');
});

for (const width of [1280, 390, 320]) {
  test(`at ${width} px nothing runs over, targets are 44 px, and axe finds nothing`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await openBoxes(page, CUBE, [
      [60, 50, 40],
      [200, 0, 0],
    ]);
    await page.getByRole('radio', { name: 'two points on the picture' }).check();
    await page.getByRole('button', { name: 'Pick two points on the picture' }).click();
    await expect(page.locator('.prompt')).toBeVisible();
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over).toBeLessThanOrEqual(0);
    const small = await page.evaluate(() =>
      [
        ...document.querySelectorAll(
          'main a, main button, main summary, main select, main input, main label:has(input)',
        ),
      ]
        .filter((e) => !e.matches('.sr, label input'))
        .map((e) => ({ what: e.outerHTML.slice(0, 80), height: e.getBoundingClientRect().height }))
        .filter(({ height }) => height > 0 && height < 43.9),
    );
    expect(small).toEqual([]);
    expect(await axeFindings(page)).toEqual([]);
  });
}
