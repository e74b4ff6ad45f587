import { readdirSync, readFileSync } from 'node:fs';
import { test as plain, type Page } from '@playwright/test';
import { placeCard } from '../../src/sheet';
import { boundsOf, shadowOutlines, VIEW_AXES, VIEW_NAMES } from '../../src/geometry';
import { HAND } from '../support/moldSamples';
import { pourOf, sheetOf } from '../support/sheetOf';
import { staticHost } from '../support/staticHost';
import { BUILT, test } from './hosted';
import { expect, gramsOf, hasBrowser, pourTroll } from './ticket';

plain.skip(!hasBrowser, 'no chromium was found');

/** Opened as the page opens it; what its policy refused is told with it. */
async function openedFrom(page: Page, html: string): Promise<{ sheet: Page; refused: string[] }> {
  const refused: string[] = [];
  // Heard from its first line on: it need not be loaded twice for that.
  page.context().on('console', (message) => {
    if (message.page() !== page) refused.push(message.text());
  });
  const opened = page.waitForEvent('popup');
  await page.evaluate((text) => {
    open(URL.createObjectURL(new Blob([text], { type: 'text/html' })), '_blank');
  }, html);
  const sheet = await opened;
  await sheet.waitForLoadState();
  return { sheet, refused };
}

const pxOf = (page: Page, selector: string, property: string): Promise<number> =>
  page
    .locator(selector)
    .first()
    .evaluate((e, name) => parseFloat(getComputedStyle(e).getPropertyValue(name)), property);

const PX_MM = 96 / 25.4;

test('sheets look in their window as they do alone, under the policy of the page that opened them', async ({
  page,
}) => {
  await page.goto('./');
  const { sheet, refused } = await openedFrom(page, sheetOf(pourOf()));
  expect((await pxOf(sheet, 'article', 'width')) / PX_MM).toBeCloseTo(190, 1);
  expect((await pxOf(sheet, 'header .blank', 'width')) / PX_MM).toBeCloseTo(30, 1);
  // 28 pt.
  expect(await pxOf(sheet, '.mix b', 'font-size')).toBeCloseTo(37.33, 1);
  expect((await sheet.pdf({ format: 'A4' })).toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);

  const views = VIEW_NAMES.map((name) => ({ name, outlines: shadowOutlines(HAND, VIEW_AXES[name]) }));
  const dots = [{ n: 1, kind: 'vent' as const, atMm: boundsOf(HAND).max, text: 'Vent 2 mm' }];
  const card = { boundsMm: boundsOf(HAND), views, upWhenPoured: [0, 0, 1] as const, dots };
  const other = await openedFrom(page, placeCard(card, { version: '0.0.0-test', show: 'metric' }));
  expect((await pxOf(other.sheet, 'article', 'width')) / PX_MM).toBeCloseTo(190, 1);
  expect((await pxOf(other.sheet, '.places th', 'width')) / PX_MM).toBeCloseTo(10, 0);
  // 12 pt, in a drawing whose unit is a millimeter.
  expect(await pxOf(other.sheet, 'svg text', 'font-size')).toBeCloseTo(4.23, 1);
  expect([...refused, ...other.refused]).toEqual([]);
});

test('the pour sheet of the page is printed with its style', async ({ page, context }) => {
  await pourTroll(page);
  await context.addInitScript(() =>
    Object.assign(globalThis, { print: () => Object.assign(globalThis, { wasPrinted: true }) }),
  );
  const a = await gramsOf(page, 'A');
  const opened = page.waitForEvent('popup');
  await page.getByRole('button', { name: 'Print the pour sheet' }).click();
  const sheet = await opened;
  await expect.poll(() => sheet.evaluate(() => 'wasPrinted' in globalThis)).toBe(true);
  await expect(sheet.locator('.mix b').first()).toHaveText(new RegExp(`^${a}`));
  expect((await pxOf(sheet, 'article', 'width')) / PX_MM).toBeCloseTo(190, 1);
});

plain('the built page has nothing inline, and its policy lets nothing in that is', async ({ page }) => {
  const html = readFileSync(`${BUILT}/index.html`, 'utf8');
  expect(html).toMatch(/<meta http-equiv="Content-Security-Policy" content="default-src 'none';/);
  expect(html).not.toMatch(/unsafe-(inline|eval|hashes)|\*/);
  expect(html).not.toMatch(/<style|\sstyle=|\son[a-z]+=|<script(?![^>]*\ssrc=)/i);
  expect(html).not.toMatch(/https?:\/\//);

  const host = await staticHost(BUILT, { at: '/shop/tool/' });
  const elsewhere = await staticHost(BUILT);
  await page.goto(host.url);
  const tried = await page.evaluate(async (other) => {
    const ran: string[] = [];
    Object.assign(globalThis, { ran });
    const script = document.createElement('script');
    script.textContent = 'globalThis.ran.push("script")';
    document.body.append(script);
    document.body.insertAdjacentHTML(
      'beforeend',
      '<img src="no" onerror="globalThis.ran.push(\'handler\')">',
    );
    document.body.insertAdjacentHTML('beforeend', '<p id="painted" style="position:fixed">x</p>');
    // In a turn of its own: what the test itself runs may eval.
    setTimeout(() => {
      // eslint-disable-next-line @typescript-eslint/no-implied-eval, @typescript-eslint/no-unsafe-call -- what is tried here
      new Function('globalThis.ran.push("eval")')();
    });
    const sent = await fetch(other).then(
      () => 'sent',
      () => 'refused',
    );
    await new Promise((resolve) => setTimeout(resolve, 300));
    const painted = getComputedStyle(document.getElementById('painted')!).position;
    return { ran, sent, painted };
  }, elsewhere.url);
  expect(tried).toEqual({ ran: [], sent: 'refused', painted: 'static' });
  expect(elsewhere.asked).toEqual([]);
  await host.close();
  await elsewhere.close();
});

plain('the served page sends the policy with every file, workers too', async ({ request }) => {
  const files = readdirSync(`${BUILT}/assets`).filter((name) => name.endsWith('.js'));
  expect(files.some((name) => name.includes('worker'))).toBe(true);
  for (const path of ['', ...files.map((name) => `assets/${name}`)]) {
    const policy = (await request.get(path)).headers()['content-security-policy'];
    expect(policy, path).toMatch(/^default-src 'none'; script-src 'self';.*frame-ancestors 'none'$/);
  }
});
