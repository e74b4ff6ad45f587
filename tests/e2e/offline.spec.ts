import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { BUILT, SUB_FOLDER, test } from './hosted';
import { expect, gramsOf, hasBrowser, openTroll, pourTroll, toStep } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');
test.use({ serviceWorkers: 'allow' });

const NEXT = 'feedbeef';
const running = (JSON.parse(readFileSync(`${BUILT}/version.json`, 'utf8')) as { build: string }).build;
const folders: string[] = [];
test.afterAll(() => folders.forEach((folder) => rmSync(folder, { recursive: true })));

/** The same files under the name of another build, as a later build would lie on the host: nothing of the old name is left. */
function laterBuild(): string {
  const folder = mkdtempSync(join(tmpdir(), 'risewright-next-'));
  folders.push(folder);
  cpSync(BUILT, folder, { recursive: true });
  const rename = (file: string, from: string | RegExp, to: string): void => {
    const path = join(folder, file);
    const text = readFileSync(path, 'utf8');
    if (text.replace(from, to) === text) throw new Error(`laterBuild: expected ${String(from)} in ${file}`);
    writeFileSync(path, text.replace(from, to));
  };
  rename('index.html', running, NEXT);
  rename('version.json', running, NEXT);
  rename(`sw-${running}.js`, /url:"index\.html",revision:"[0-9a-f]+"/, `url:"index.html",revision:"${NEXT}"`);
  renameSync(join(folder, `sw-${running}.js`), join(folder, `sw-${NEXT}.js`));
  return folder;
}

const foot = (page: Page) => page.getByRole('contentinfo');
const bar = (page: Page) => page.getByText('Another version is here');
const take = (page: Page) => page.getByRole('button', { name: 'Take the other version' });

async function openKept(page: Page): Promise<void> {
  await page.goto('./');
  await expect(foot(page)).toContainText(`build ${running}`);
  await expect(foot(page)).toContainText('it starts without network');
}

test('without network it starts at any of its addresses, and goes from scan to grams', async ({
  page,
  host,
  context,
}) => {
  await openKept(page);
  await openTroll(page);
  await host.close();
  await context.setOffline(true);
  await page.goto('./?piece=none&at=batch');
  await expect(foot(page)).toContainText(`build ${running}`);
  await pourTroll(page);
  expect(await gramsOf(page, 'A')).toBeGreaterThan(0);
  await toStep(page, 'Measure');
  await expect(page.getByRole('group', { name: 'Picture of the scan' }).locator('canvas')).toBeVisible();
});

test('keeps all of the page at once, and a sample scan when it is used', async ({ page }) => {
  await openKept(page);
  const kept = () =>
    page.evaluate(async () => {
      const all = await Promise.all(
        (await caches.keys()).map(async (name) =>
          (await (await caches.open(name)).keys()).map(({ url }) => url),
        ),
      );
      return all.flat().map((url) => new URL(url).pathname);
    });
  const files = readdirSync(`${BUILT}/assets`);
  const isScan = (name: string): boolean => /\.(stl|obj)$/.test(name);
  const before = await kept();
  for (const name of files.filter((one) => !isScan(one)))
    expect(before).toContain(`${SUB_FOLDER}assets/${name}`);
  expect(before.filter(isScan)).toEqual([]);
  await openTroll(page);
  await expect.poll(async () => (await kept()).filter(isScan).length).toBe(1);
});

test('another version is told and waits, over reloads and closed windows, until it is taken', async ({
  page,
  host,
  context,
}) => {
  await openKept(page);
  host.serve(laterBuild());
  host.asked.length = 0;
  await page.reload();
  await expect(bar(page)).toContainText(NEXT);
  await expect(foot(page)).toContainText(`build ${running}`);
  // A phone ends windows as it likes; the one that comes after is still the version it was.
  const last = await context.newPage();
  await page.close();
  await last.close();
  const again = await context.newPage();
  await again.goto('./');
  await expect(bar(again)).toContainText(NEXT);
  await expect(foot(again)).toContainText(`build ${running}`);
  expect(host.asked.filter((path) => path.includes(NEXT) || path.endsWith('.js'))).toEqual(
    // The browser looks for a changed worker file by itself; there is none under this name.
    host.asked.filter((path) => path.endsWith(`sw-${running}.js`)),
  );
  await pourTroll(again);
  const a = await gramsOf(again, 'A');
  await take(again).click();
  await expect(foot(again)).toContainText(`build ${NEXT}`);
  expect(await gramsOf(again, 'A')).toBe(a);
  await expect(bar(again)).toBeHidden();
  await context.setOffline(true);
  await again.reload();
  await expect(foot(again)).toContainText(`build ${NEXT}`);
});

test('is not taken while a pour goes on in another window', async ({ page, host, context }) => {
  await openKept(page);
  const pouring = await context.newPage();
  await openKept(pouring);
  await pouring.evaluate(() => {
    const until = new Promise<void>((done) => Object.assign(globalThis, { done }));
    void navigator.locks.request('risewright: no update now', { mode: 'shared' }, () => until);
  });
  host.serve(laterBuild());
  await page.reload();
  await take(page).click();
  await expect(page.getByText('A pour goes on in another window')).toBeVisible();
  await expect(foot(page)).toContainText(`build ${running}`);

  await pouring.evaluate(() => (globalThis as unknown as { done: () => void }).done());
  await take(page).click();
  await expect(foot(page)).toContainText(`build ${NEXT}`);
  // The other window goes on with what it has until it is told as well.
  await expect(foot(pouring)).toContainText(`build ${running}`);
  await expect(bar(pouring)).toBeVisible();
  await take(pouring).click();
  await expect(foot(pouring)).toContainText(`build ${NEXT}`);
});

test('a version that lies on the host in part is not taken', async ({ page, host }) => {
  await openKept(page);
  const folder = laterBuild();
  const missing = readdirSync(join(folder, 'assets')).find((name) => name.endsWith('.css'))!;
  rmSync(join(folder, 'assets', missing));
  // As hosts do, the sheet that is missing has another name in the new build; this one is fetched anew.
  writeFileSync(
    join(folder, `sw-${NEXT}.js`),
    readFileSync(join(folder, `sw-${NEXT}.js`), 'utf8').replaceAll(missing, `not-${missing}`),
  );
  host.serve(folder);
  await page.reload();
  await take(page).click();
  await expect(page.getByText('It could not be fetched whole')).toBeVisible();
  await page.reload();
  await expect(foot(page)).toContainText(`build ${running}`);
});
