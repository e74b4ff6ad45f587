import { spawn, type ChildProcess } from 'node:child_process';
import { networkInterfaces } from 'node:os';
import { test as base } from './ticket';
import { expect, gramsOf, hasBrowser, pourTroll, volumeCm3 } from './ticket';

/** An address as a phone would use: not this machine to the browser, so nothing that only https gets. */
const PHONE_SEES = '10.9.8.7';

interface Served {
  port: number;
  said: string;
}

const test = base.extend<object, { served: Served }>({
  served: [
    // eslint-disable-next-line no-empty-pattern
    async ({}, use) => {
      const child = spawn(process.execPath, ['scripts/start.mjs', '--lan', '--built']);
      await use(await readyWords(child));
      child.kill();
    },
    { scope: 'worker' },
  ],
  baseURL: async ({ served }, use) => use(`http://${PHONE_SEES}:${served.port}/`),
});

test.use({
  launchOptions: async ({ launchOptions }, use) =>
    use({
      ...launchOptions,
      args: [...(launchOptions.args ?? []), `--host-resolver-rules=MAP ${PHONE_SEES} 127.0.0.1`],
    }),
});

test.skip(!hasBrowser, 'no chromium was found');

/** What it says, once it says how it is stopped. */
const readyWords = (child: ChildProcess): Promise<Served> =>
  new Promise((resolve, reject) => {
    let said = '';
    child.stdout!.on('data', (part) => {
      said += String(part);
      const port = /127\.0\.0\.1:(\d+)/.exec(said)?.[1];
      if (port !== undefined && said.includes('Stop it with Ctrl+C')) resolve({ port: Number(port), said });
    });
    child.stderr!.on('data', (part) => (said += String(part)));
    child.on('exit', () => reject(new Error(`readyWords: expected it to serve, got: ${said}`)));
  });

test('npm start -- --lan prints every address of this machine, and what plain http takes away', ({
  served,
}) => {
  const mine = Object.values(networkInterfaces())
    .flat()
    .filter((one) => one !== undefined && one.family === 'IPv4' && !one.internal)
    .map((one) => one!.address);
  for (const address of mine) expect(served.said).toContain(`http://${address}:${served.port}/`);
  for (const what of ['wake lock', 'offline start', 'persistent storage', 'shared memory', 'backup'])
    expect(served.said).toContain(what);
});

test('on plain http all of it works, from the scan to the grams, and the page says what it has not', async ({
  page,
}) => {
  await pourTroll(page);
  const has = await page.evaluate(() => ({
    isSecureContext,
    crossOriginIsolated,
    serviceWorker: 'serviceWorker' in navigator,
    wakeLock: 'wakeLock' in navigator,
    storage: 'storage' in navigator,
    randomUUID: 'randomUUID' in crypto,
  }));
  expect(has).toEqual({
    isSecureContext: false,
    crossOriginIsolated: false,
    serviceWorker: false,
    wakeLock: false,
    storage: false,
    randomUUID: false,
  });
  const cm3 = await volumeCm3(page);
  const a = await gramsOf(page, 'A');
  expect(a).toBeGreaterThan(await gramsOf(page, 'B'));
  const note = page.getByText('This address is plain http');
  for (const what of ['screen on', 'without network', 'what is stored', 'shared between threads'])
    await expect(note).toContainText(what);

  // It is kept, and can be taken along.
  await page.reload();
  expect(await gramsOf(page, 'A')).toBe(a);
  expect(await volumeCm3(page)).toBe(cm3);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Back up now' }).click();
  expect(await (await download).failure()).toBeNull();
});

test('a name that is not this machine is turned away', async ({ served, request }) => {
  const host = { Host: 'elsewhere.example' };
  const answer = await request.get(`http://127.0.0.1:${served.port}/`, { headers: host });
  expect(answer.status()).toBe(403);
});
