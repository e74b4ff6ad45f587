import type { Page } from '@playwright/test';
import { axeFindings } from './axe';
import { APART_MS, button, expectRight, title, toBench } from './benchPage';
import { box, expect, gramsOf, hasBrowser, newPiece, pourTroll, test } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');
test.slow();
test.use({ viewport: { width: 390, height: 844 } });

/** Nothing against WCAG 2.2 AA, nothing over the edge, and every target as large as a glove needs. */
async function expectSound(page: Page, screen: string): Promise<void> {
  for (const width of [1280, 320, 390]) {
    await page.setViewportSize({ width, height: 844 });
    expect(await axeFindings(page), `${screen} at ${width} px`).toEqual([]);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over, `${screen} at ${width} px`).toBeLessThanOrEqual(0);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('main a, main button, main select, main input, main label:has(input)')]
        .filter((e) => !e.matches('label input'))
        .map((e) => ({ what: e.outerHTML.slice(0, 80), height: e.getBoundingClientRect().height }))
        .filter(({ height }) => height < 63.9),
    );
    expect(small, `${screen} at ${width} px`).toEqual([]);
  }
  const primary = await page.locator('[data-primary]').boundingBox();
  expect(primary!.height).toBeGreaterThanOrEqual(96);
  expect(primary!.y).toBeGreaterThan((844 * 2) / 3 - 96);
}

test('from ready through mixing and waiting to the weigh-back, with one button', async ({ page }) => {
  await pourTroll(page, { times: true });
  await box(page, 'Plug or lid in the opening, its area; 0: none').fill('12');
  await box(page, 'Vents beside the opening').fill('0');
  await page.getByLabel('The opening stays open or its plug lets air out').selectOption('no');
  const a = await gramsOf(page, 'A');
  const b = await gramsOf(page, 'B');
  await toBench(page);
  await expect(page.locator('[data-part="A"]')).toHaveText(`${a}g`);
  await expect(
    page.getByText(`Press, then add A until the scale reads ${a + b} g, or ${a} g if`),
  ).toBeVisible();

  // A Stop stands here in words, and is read before the clock starts.
  const stops = page.getByRole('region', { name: 'What the plan says Stop to' });
  await expect(stops).toContainText('Stop:');
  await button(page, 'I am mixing').click();
  await expect(page.getByRole('alert').filter({ hasText: 'The plan says Stop' })).toBeVisible();
  await expect(title(page)).toHaveText('Ready?');
  for (const read of await stops.getByRole('checkbox').all()) await read.check();

  // B as read gives its A, here and nowhere else.
  await page.getByRole('textbox', { name: 'in the cup' }).fill('207');
  const forB = Math.round((207 * 100) / 55);
  await expect(page.locator('[data-part="A"]')).toHaveText(`${forB}g`);
  await expect(
    page.getByText(`Press, then add A until the scale reads ${forB + 207} g, or ${forB} g if`),
  ).toBeVisible();
  await page.getByLabel('Room', { exact: true }).fill('72 F');
  await expect(page.getByText('22.2 °C (72 °F)')).toBeVisible();

  // Open ticks come to the top once the finger is away.
  const ticks = page.getByRole('list', { name: 'Before A goes in' });
  await expect(page.getByText('5 ticks are open; you can start anyway.')).toBeVisible();
  await ticks.getByRole('checkbox').first().check();
  await expect(page.getByText('4 ticks are open')).toBeVisible();
  await expect(ticks.getByRole('checkbox').last()).toBeChecked();
  await expectSound(page, 'Ready');

  // Typing presses nothing; the keys do, from wherever the focus is.
  await page.getByRole('textbox', { name: 'in the cup' }).focus();
  await page.keyboard.press('Enter');
  await expect(title(page)).toHaveText('Ready?');
  await title(page).focus();
  const pressedAt = Date.now();
  await page.keyboard.press('Space');
  await expect(title(page)).toHaveText('Mixing');
  await expect(title(page)).toBeFocused();

  // A bounce is ignored, and a press beside the button does nothing.
  await page.keyboard.press('Space');
  await page.waitForTimeout(APART_MS);
  await expect(title(page)).toHaveText('Mixing');
  for (const [x, y] of [
    [195, 180],
    [60, 330],
    [300, 420],
    [195, 560],
  ] as const)
    await page.mouse.click(x, y);
  await expect(title(page)).toHaveText('Mixing');
  await expect(page.getByText(`until the scale reads ${forB + 207} g, or ${forB} g if`)).toBeVisible();
  await expect(page.locator('.by')).toContainText('0:35');
  await expect(page.locator('.by')).toContainText('data sheet');
  await expect(page.getByText(/began \d\d:\d\d:\d\d/)).toBeVisible();
  await expect(page.getByText('screen kept awake')).toBeVisible();
  await expectRight(page, pressedAt);
  await expectSound(page, 'Mixing');

  // The sound was switched with a finger: the key still belongs to the one button.
  await button(page, 'Sound: on').click();
  await expect(button(page, 'Sound: off')).toBeVisible();
  await page.keyboard.press('Space');
  await expect(title(page)).toHaveText('Plug it');
  await page.waitForTimeout(APART_MS);
  await button(page, 'Undo “Poured”').click();
  await expect(title(page)).toHaveText('Mixing');
  await page.waitForTimeout(APART_MS);
  await button(page, 'Undo “I am mixing”').click();
  await expect(title(page)).toHaveText('Ready?');
  await page.waitForTimeout(APART_MS);
  await button(page, 'Go on with it').click();
  await expectRight(page, pressedAt);
  await page.waitForTimeout(APART_MS);
  await button(page, 'Poured').click();
  await page.waitForTimeout(APART_MS);
  await page.keyboard.press('Enter');
  await expect(title(page)).toHaveText('Wait until');
  await expect(page.getByText(/mixed at \d\d:\d\d:\d\d/)).toBeVisible();
  await expect(page.getByText('Now. Hands off the straps')).toBeVisible();
  await expectSound(page, 'Wait');

  // Early is asked about in place, and not refused.
  await page.waitForTimeout(APART_MS);
  await button(page, 'It is open').click();
  await expect(page.getByText(/^Open 2[45] min early\?$/)).toBeVisible();
  await button(page, 'No, wait').click();
  await expect(title(page)).toHaveText('Wait until');
  await button(page, 'It is open').click();
  await button(page, 'Yes, it is open').click();
  await expect(title(page)).not.toHaveText('Wait until');
  await expect(button(page, 'Undo “It is open”')).toBeVisible();
  await page.reload();
  await button(page, 'Undo “It is open”').click();
  await expect(title(page)).toHaveText('Wait until');
});

test('without grams it says what is missing, and a pour without the clock is weighed back', async ({
  page,
}) => {
  await newPiece(page);
  await toBench(page);
  await expect(
    page.getByText('No grams yet. Still missing: the volume from Measure and a foam.'),
  ).toBeVisible();
  await expect(page.locator('[data-primary]')).toHaveCount(0);
  await button(page, 'Weigh back without the clock').click();
  await expect(title(page)).not.toHaveText('Ready?');
  await button(page, 'Back to the clock').click();
  await page.getByRole('link', { name: 'Back to Batch' }).click();
  await expect(title(page)).toHaveText('Batch');
});
