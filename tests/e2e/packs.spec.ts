import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { ask, box, expect, gramsOf, hasBrowser, numberIn, pourTroll, tape, test, toStep } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');
test.slow();

const pack = (page: Page): Locator => ask(page, 'How hard do we pack it?');
const chart = (page: Page): Locator => pack(page).getByRole('img', { name: /Just filling takes/ });
const current = (section: Locator): Promise<void> => expect(section).toHaveAttribute('aria-busy', 'false');

/** What the chart and the table call this pour, g. */
const together = async (page: Page): Promise<number> =>
  (await gramsOf(page, 'A')) + (await gramsOf(page, 'B'));

/** It is drawn once it is near; nothing of it is fetched before. */
async function seeChart(page: Page): Promise<void> {
  await pack(page).locator('figure.chart').scrollIntoViewIfNeeded();
  await expect(chart(page)).toBeVisible();
}

async function tellPast(page: Page, text: string): Promise<void> {
  await pack(page).getByText('Prices, castings of before, depth of the skin').click();
  await box(page, 'Castings of before, by pack').fill(text);
  await current(pack(page));
}

/** Each word of the drawing as it stands on the screen: its height in pixels, and where it begins and ends across the drawing. */
const wordsOf = (svg: Locator): Promise<{ px: number; from: number; to: number }[]> =>
  svg.locator('text').evaluateAll((all) =>
    all
      .filter((text) => text.textContent !== '')
      .map((text) => {
        const drawn = (text as SVGTextElement).ownerSVGElement!;
        const frame = drawn.getBoundingClientRect();
        const scale = frame.width / Number(drawn.getAttribute('width'));
        const { x, width } = (text as SVGTextElement).getBBox();
        const left = (text as SVGTextElement).getScreenCTM()!.e + scale * x;
        return {
          px: parseFloat(getComputedStyle(text).fontSize) * scale,
          from: left - frame.left,
          to: frame.right - (left + scale * width),
        };
      }),
  );

test('the chart has this pour, the packs and each casting of before; its words are 12 px or more at every width', async ({
  page,
}) => {
  await pourTroll(page);
  await tellPast(page, '1.15 short, 1.25 filled 2');
  await seeChart(page);
  await expect(chart(page)).toContainText(`this pour, ${await together(page)}`);
  await expect(chart(page).locator('circle')).toHaveCount(3);
  await expect(chart(page)).toHaveAttribute('aria-label', /2 castings filled at 1\.25/);
  await expect(pack(page)).toContainText('n = 3 castings of before');
  for (const width of [1280, 390, 320]) {
    await page.setViewportSize({ width, height: 900 });
    await expect
      .poll(async () => (await chart(page).boundingBox())?.width ?? Infinity, { message: `at ${width} px` })
      .toBeLessThanOrEqual(width);
    const words = await wordsOf(chart(page));
    expect(words.length).toBeGreaterThan(10);
    for (const { px, from, to } of words) {
      expect(px, `at ${width} px`).toBeGreaterThanOrEqual(12);
      expect(Math.min(from, to), `at ${width} px`).toBeGreaterThanOrEqual(-1);
    }
  }
});

test('the chart brings no style of its own: the page allows none, and its policy is not broken', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const broken: string[] = [];
    Object.assign(globalThis, { broken });
    document.addEventListener('securitypolicyviolation', (event) => broken.push(event.violatedDirective));
  });
  await pourTroll(page);
  await seeChart(page);
  await expect(page.locator('svg style')).toHaveCount(0);
  expect(await page.evaluate(() => (globalThis as unknown as { broken: string[] }).broken)).toEqual([]);
});

test('from the first keystroke in the pack on no chart of before is seen, and it comes back with the new pour', async ({
  page,
}) => {
  await pourTroll(page);
  const before = `this pour, ${await together(page)}`;
  await seeChart(page);
  await expect(chart(page)).toContainText(before);
  await page.evaluate(() => {
    const frames: string[] = [];
    Object.assign(globalThis, { frames });
    const look = (): void => {
      frames.push(document.querySelector('figure.chart svg')?.textContent ?? '');
      requestAnimationFrame(look);
    };
    document.addEventListener('input', () => requestAnimationFrame(look), { once: true });
  });
  await box(page, 'Pack factor').fill('1.45');
  await expect(chart(page)).toContainText('this pour, ');
  await expect(chart(page)).toContainText(`this pour, ${await together(page)}`);
  const frames = await page.evaluate(() => (globalThis as unknown as { frames: string[] }).frames);
  for (const frame of frames) expect(frame).not.toContain(before);
});

test('the data stand in a table under the chart, and go into a file with units in its head', async ({
  page,
}) => {
  await pourTroll(page);
  await tellPast(page, '1.15 short');
  const grams = String(await together(page));
  await pack(page).getByText('Show the table').click();
  const table = pack(page).getByRole('table', { name: 'What the packs weigh, beside what just fills' });
  await expect(table.getByRole('row', { name: /this pour/ })).toContainText(grams);
  await expect(table.getByRole('row', { name: /short before/ })).toContainText('1.15');
  const download = page.waitForEvent('download');
  await pack(page).getByRole('button', { name: 'Save as CSV' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toBe('packs.csv');
  const lines = readFileSync(await file.path(), 'utf8')
    .replace('\ufeff', '')
    .split('\r\n');
  expect(lines[0]).toBe('What,Pack factor,"Mixed, g",Castings');
  expect(lines).toContain(`this pour,1.3,${grams},`);
  expect(lines.at(-1)).toBe('');
});

test.describe('where nothing was kept for being offline', () => {
  test.use({ serviceWorkers: 'block' });

  test('without the chunk that draws, a sentence says so and the table has it all', async ({
    page,
    watched,
  }) => {
    await page.route(/plotKit/, (route) => route.abort());
    await pourTroll(page);
    await pack(page).locator('figure.chart').scrollIntoViewIfNeeded();
    await expect(pack(page)).toContainText('The chart cannot be drawn');
    await pack(page).getByText('Show the table').click();
    await expect(pack(page).getByRole('row', { name: /this pour/ })).toBeVisible();
    // That fetch is meant to fail, and the browser says so.
    watched.splice(0, watched.length, ...watched.filter((line) => !/ERR_FAILED|plotKit/.test(line)));
  });
});

test('a pack is chosen with one press, of a pointer or of a key', async ({ page }) => {
  await pourTroll(page);
  await page.getByRole('radio', { name: 'Pack 1.35' }).click();
  await expect(box(page, 'Pack factor')).toHaveValue('1.35');
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: 'Pack 1.45' })).toBeChecked();
  await expect(page.getByRole('radio', { name: 'Pack 1.45' })).toBeFocused();
  await expect(box(page, 'Pack factor')).toHaveValue('1.45');
});

test('what is assumed is underlined until it is confirmed: in the head of its column, too', async ({
  page,
}) => {
  await pourTroll(page);
  const assumed = pack(page).locator('.packs .assumed');
  await expect(assumed).toHaveText('1.30');
  await pack(page).getByRole('button', { name: 'Confirm 1.30' }).click();
  await expect(assumed).toHaveCount(0);
  await expect(pack(page).locator('.ans .tag')).toHaveText('chosen');
  const weigh = ask(page, 'What do we weigh?');
  await weigh.getByRole('button', { name: 'Confirm the sculpt, as measured' }).click();
  await expect(weigh.locator('.choices .assumed')).toHaveCount(0);
  const warm = ask(page, 'How long must the mold warm?');
  await warm.getByRole('button', { name: 'Confirm one side' }).click();
  await expect(warm.getByLabel('Warmed from')).toHaveValue('1');
});

/** Something in every question of the pour, so that every figure is there. */
async function tellAll(page: Page): Promise<void> {
  for (const [label, text] of [
    ['Room', '18 C'],
    ['A and B, as they are mixed', '22 C'],
    ['Mold, measured inside', '24 C'],
    ['Height above the sea', '500'],
    ['Mixing cup, up to its rim', '1 L'],
    ['Shadow of the cavity across the parting', '450'],
    ['Plug or lid in the opening, its area; 0: none', '20'],
    ['Thickness of the rubber', '25 mm'],
    ['Air around it', '45 C'],
    ['NCO content of A, data sheet', '13'],
    ['Water in B, data sheet', '0.5'],
    ['Share of color 1', '1.5'],
    ['B in the cup, as read', '207'],
  ] as const)
    await box(page, label).fill(text);
  await gramsOf(page, 'A');
}

test('every question of Batch that shows a figure opens it: formula, inputs with where they come from, and source', async ({
  page,
}) => {
  await pourTroll(page, { times: true });
  await tellAll(page);
  const walked: string[] = [];
  for (const section of await page.locator('section.q').all()) {
    const name = await section.getByRole('heading').first().innerText();
    const shown = await section.locator('.ans, table .num, .grams .w').allInnerTexts();
    if (!shown.some((text) => /\d/.test(text))) continue;
    walked.push(name);
    const sum = section.locator('details').filter({ has: page.getByText('Show the sum', { exact: true }) });
    await expect(sum, name).toHaveCount(1);
    await sum.locator('summary').click();
    const opened = sum.locator('.opened:has(.formula)');
    expect(await opened.count(), name).toBeGreaterThan(0);
    for (const one of await opened.all()) {
      await expect(one.locator('h3'), name).toContainText(/: .*\d|: about|: under|: more/);
      expect((await one.locator('.formula').innerText()).length, name).toBeGreaterThan(3);
      expect(await one.getByRole('row').count(), name).toBeGreaterThan(0);
      for (const from of await one.locator('.from').allInnerTexts()) expect(from.trim(), name).not.toBe('');
      await expect(one.locator('.source'), name).toContainText(/Source: ./);
    }
  }
  expect(walked.length).toBeGreaterThanOrEqual(12);
});

test('a sum stays open while the figures are worked out anew, and shows those of now', async ({ page }) => {
  await pourTroll(page);
  const weigh = ask(page, 'What do we weigh?');
  await weigh.getByText('Show the sum').click();
  const mixed = weigh.getByRole('heading', { name: /^Mix in a cup/ });
  const before = await together(page);
  await expect(mixed).toHaveText(`Mix in a cup: ${before} g`);
  await page.getByRole('radio', { name: 'Pack 1.45' }).click();
  await expect.poll(() => together(page)).toBeGreaterThan(before);
  await expect(mixed).toHaveText(`Mix in a cup: ${await together(page)} g`);
});

test('"ready to pour" is offered with the grams, holds for them, and goes with any change until that is undone', async ({
  page,
}) => {
  await pourTroll(page);
  const ready = ask(page, 'Is everything ready?');
  const a = await gramsOf(page, 'A');
  await expect(ready).toContainText(`A:B 100:55 by weight, ${await together(page)} g in all`);
  await ready.getByRole('button', { name: 'Ready to pour' }).click();
  await expect(ready).toContainText('Ready to pour, as it stands');
  await expect(page.locator('a.btn:not(.line), button.btn:not(.line)')).toHaveText(['Go to the bench']);

  await box(page, 'Residue in the cup').fill('24 g');
  await expect(ready).toContainText('An input has changed since you said ready');
  await gramsOf(page, 'A');
  await expect(ready.getByRole('button', { name: 'Ready to pour' })).toBeVisible();
  await page.getByRole('button', { name: /^Undo: the residue/ }).click();
  await expect(ready).toContainText('Ready to pour, as it stands');

  await tape(page, '300');
  await toStep(page, 'Batch');
  await expect(ready).toContainText('An input has changed since you said ready');
  await tape(page, '290.85');
  await toStep(page, 'Batch');
  await expect(ready).toContainText('Ready to pour, as it stands');

  await page.reload();
  await expect(ready).toContainText('Ready to pour, as it stands');
  expect(await gramsOf(page, 'A')).toBe(a);
  await ready.getByRole('button', { name: 'Not ready after all' }).click();
  await expect(ready).not.toContainText('Ready to pour, as it stands');
});

test('what says Stop is asked about before "ready" is taken, and does not refuse it', async ({ page }) => {
  await pourTroll(page);
  const ready = ask(page, 'Is everything ready?');
  await ready.getByLabel('Water in the mold since it was dry').selectOption('not confirmed dry');
  await expect(ready.getByText('1 check says Stop')).toBeVisible();
  await ready.getByRole('button', { name: 'Ready to pour' }).click();
  await expect(ready).toContainText('One check says Stop. Ready all the same?');
  await expect(ready).not.toContainText('as it stands');
  await ready.getByRole('button', { name: 'Not yet' }).click();
  await expect(ready.getByRole('button', { name: 'Ready to pour' })).toBeVisible();
  await ready.getByRole('button', { name: 'Ready to pour' }).click();
  await ready.getByRole('button', { name: 'Ready all the same' }).click();
  await expect(ready).toContainText('Ready to pour, as it stands');
});

test('below A stands what the scale reads with B and the color under it', async ({ page }) => {
  await pourTroll(page);
  const weigh = ask(page, 'What do we weigh?');
  const [all, a] = [await together(page), await gramsOf(page, 'A')];
  await expect(weigh.locator('.grams')).toContainText(`scale reads ${all} g; ${a} g if set to zero after B`);
  await box(page, 'Share of color 1').fill('2');
  await gramsOf(page, 'A');
  const b = await gramsOf(page, 'B');
  const color = 0.02 * b;
  const read = await weigh.locator('.grams .sc').first().innerText();
  expect(numberIn(read)).toBe(Math.round(all + color));
});
