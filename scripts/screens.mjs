// node scripts/screens.mjs [folder]: pictures of every screen with the sample shop, at the width of a desk and of a phone, to be looked at by a person.
// A long screen is cut into several. Each is taken as it opens, and those of a ticket once more with all of it unfolded.
/* global document, innerHeight, requestAnimationFrame, scrollTo */
import { mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { withBuiltPage } from './browser.mjs';
import { root } from './setup.mjs';

const WIDTHS = [1280, 390];

/** One picture is no taller than this, so that its words can still be read when it is fitted to a window. */
const TALLEST_PX = 1600;

/** The sample shop works out four pieces; on two cores that takes a while. */
const LONGEST_MS = 180_000;

const STEPS = ['Measure', 'Mold', 'Batch'];
const PIECE = 'Quay Troll head';

const folder = resolve(process.argv[2] ?? join(root, 'screens'));
mkdirSync(folder, { recursive: true });

await withBuiltPage(async ({ browser, url }) => {
  const context = await browser.newContext({ serviceWorkers: 'block', reducedMotion: 'reduce' });
  context.setDefaultTimeout(LONGEST_MS);
  const page = await context.newPage();

  await page.goto(url);
  const newPiece = page.getByRole('button', { name: 'New piece', exact: true });
  await newPiece.waitFor();
  await take(page, 'shelf-empty');
  await newPiece.click();
  await page.getByLabel('Choose a scan').waitFor({ state: 'attached' });
  await take(page, 'measure-blank');

  await page.goto(`${url}?shop=sample`);
  await page.locator('.piece svg').nth(3).waitFor();
  await page.getByText('Working out sizes and grams').waitFor({ state: 'detached' });
  await take(page, 'shelf');
  await page.getByRole('link', { name: PIECE, exact: true }).click();
  for (const step of STEPS) {
    await page.getByRole('navigation', { name: 'Ticket' }).getByRole('link', { name: step }).click();
    await page.getByRole('heading', { level: 1, name: step }).waitFor();
    await settle(page);
    await take(page, step.toLowerCase());
    await page
      .locator('.q details')
      .evaluateAll((all) => all.forEach((each) => each.setAttribute('open', '')));
    await take(page, `${step.toLowerCase()}-unfolded`);
  }
  await context.close();
});

/** Down to the foot once, so that what is only worked out when it is looked at is there; then until nothing works. */
async function settle(page) {
  await page.evaluate(async () => {
    for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight) {
      scrollTo(0, y);
      await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
    }
    scrollTo(0, 0);
  });
  await page.waitForFunction(() => {
    const soFar = document.querySelector('.sofar');
    const hasAll = soFar.querySelectorAll('strong').length === 3 && !soFar.textContent.includes('…');
    const isBusy = document.querySelector('[aria-busy="true"]') !== null;
    return hasAll && !isBusy && !document.body.textContent.includes('is being drawn');
  });
}

async function take(page, name) {
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: 900 });
    // The charts are drawn anew for the width.
    await page.waitForTimeout(500);
    const height = await page.evaluate(() => document.documentElement.scrollHeight);
    const count = Math.ceil(height / TALLEST_PX);
    for (let n = 0; n < count; n++) {
      const y = n * TALLEST_PX;
      const path = join(folder, `${name}-${width}-${String(n + 1).padStart(2, '0')}.png`);
      const clip = { x: 0, y, width, height: Math.min(TALLEST_PX, height - y) };
      await page.screenshot({ path, fullPage: true, clip });
    }
    console.log(`${name} at ${width} px: ${count === 1 ? 'one picture' : `${count} pictures`}`);
  }
}
