import { staticHost } from '../support/staticHost';
import { BUILT, SUB_FOLDER, test } from './hosted';
import { expect, gramsOf, hasBrowser, openTroll, pourTroll, volumeCm3 } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');

test('a host without headers, in a sub-folder: the same volume and grams as with shared memory', async ({
  page,
  browser,
}) => {
  await pourTroll(page);
  expect(await page.evaluate(() => crossOriginIsolated)).toBe(false);
  const alone = { cm3: await volumeCm3(page), a: await gramsOf(page, 'A'), b: await gramsOf(page, 'B') };

  const headers = {
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Cross-Origin-Embedder-Policy': 'require-corp',
  };
  const sharing = await staticHost(BUILT, { at: SUB_FOLDER, headers });
  const context = await browser.newContext({ baseURL: sharing.url, serviceWorkers: 'block' });
  const other = await context.newPage();
  await pourTroll(other);
  expect(await other.evaluate(() => crossOriginIsolated)).toBe(true);
  expect({ cm3: await volumeCm3(other), a: await gramsOf(other, 'A'), b: await gramsOf(other, 'B') }).toEqual(
    alone,
  );
  await context.close();
  await sharing.close();
});

test('asks its host for nothing that is not there, and for nothing outside of its folder', async ({
  page,
  host,
}) => {
  const missing: string[] = [];
  page.on('response', (response) => {
    if (response.status() !== 200) missing.push(`${response.status()} ${response.url()}`);
  });
  await openTroll(page);
  expect(missing).toEqual([]);
  expect(host.asked.filter((path) => !path.startsWith(SUB_FOLDER))).toEqual([]);
  expect(host.asked.some((path) => path.endsWith('.stl'))).toBe(true);
});

test('can be put on a home screen: a manifest with icons that are there, drawn as large as they say', async ({
  page,
  host,
}) => {
  await page.goto('./');
  const found = await page.evaluate(async () => {
    const href = document.querySelector<HTMLLinkElement>('link[rel="manifest"]')!.href;
    const manifest = (await (await fetch(href)).json()) as {
      name: string;
      start_url: string;
      icons: { src: string; sizes: string }[];
    };
    const touch = document.querySelector<HTMLLinkElement>('link[rel="apple-touch-icon"]')!.href;
    const icons = [...manifest.icons, { src: touch, sizes: '180x180' }].map(async ({ src, sizes }) => {
      const image = new Image();
      image.src = new URL(src, href).href;
      await image.decode();
      return { sizes, is: `${image.naturalWidth}x${image.naturalHeight}` };
    });
    const start = new URL(manifest.start_url, href).href;
    return { name: manifest.name, start, icons: await Promise.all(icons) };
  });
  expect(found.name).toBe('Risewright');
  expect(found.start).toBe(host.url);
  expect(found.icons).toHaveLength(5);
  for (const { sizes, is } of found.icons.filter(({ sizes }) => sizes !== 'any')) expect(is).toBe(sizes);
});
