// node docs/pictures/page.mjs: takes the three pictures of the README from the built page (npm run build) with the sample shop.
/* global document, scrollTo, scrollY */
import { join } from 'node:path';
import { withBuiltPage } from '../../scripts/browser.mjs';
import { root } from '../../scripts/setup.mjs';

/** The sample shop works out four pieces; on two cores that takes a while. */
const LONGEST_MS = 180_000;
const PIECE = 'Quay Troll head';

const DESK = { width: 1280, height: 900 };
const PHONE = { width: 390, height: 844 };

await withBuiltPage(async ({ browser, url }) => {
  const context = await browser.newContext({ serviceWorkers: 'block', reducedMotion: 'reduce' });
  context.setDefaultTimeout(LONGEST_MS);
  const page = await context.newPage();
  // The sample shop is put in place by its Shelf.
  await page.goto(`${url}?shop=sample`);
  await page.getByRole('link', { name: PIECE, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: 'Measure' }).waitFor();
  const piece = new URL(page.url()).searchParams.get('piece');
  const take = async (at, viewport, name, question) => {
    await page.setViewportSize(viewport);
    await page.goto(`${url}?shop=sample&piece=${piece}&at=${at}`);
    await page.getByRole('heading', { level: 1 }).waitFor();
    const section =
      question === undefined ? undefined : page.getByRole('region', { name: question, exact: true });
    await section?.scrollIntoViewIfNeeded();
    await page.waitForFunction(
      () =>
        document.querySelector('[aria-busy="true"]') === null &&
        !/is being drawn|[Ww]orking out|Reading the scan|no volume|No mold yet/.test(document.body.textContent),
    );
    await page.waitForTimeout(1000);
    if (section === undefined)
      await page.evaluate(() => scrollTo(0, 0));
    else
      await section.evaluate((shown) => scrollTo(0, scrollY + shown.getBoundingClientRect().top - 120));
    await page.waitForTimeout(500);
    await page.screenshot({ path: join(root, 'docs', `${name}.png`) });
    console.log(`docs/${name}.png: taken`);
  };
  await take('mold', DESK, 'mold');
  await take('batch', DESK, 'batch', 'What do we weigh?');
  await take('bench', PHONE, 'bench');
  await context.close();
});
