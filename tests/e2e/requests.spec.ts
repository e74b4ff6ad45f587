import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { test as plain, type BrowserContext, type Page } from '@playwright/test';
import type { FromWorker, Request } from '../../src/worker/protocol';
import config from '../../playwright.config';
import { HOSTILE_NAMES } from '../support/hostileNames';
import { requestLog, type RequestLog } from '../support/requestLog';
import { staticHost, type StaticHost } from '../support/staticHost';
import { BUILT, SUB_FOLDER } from './hosted';
import { ask, expect, hasBrowser, newPiece } from './ticket';

plain.skip(!hasBrowser, 'no chromium was found');

interface Wire {
  host: StaticHost;
  log: RequestLog;
  context: BrowserContext;
  page: Page;
  /** As the browser tells of them, blobs and data too. */
  told: string[];
}

/** The built page in a browser whose every request is written down, by the browser and by the proxy that it has to go through. */
const test = plain.extend<{ wire: Wire }>({
  wire: async ({ browser }, use) => {
    const host = await staticHost(BUILT, { at: SUB_FOLDER });
    const log = await requestLog(host.url);
    const context = await browser.newContext({
      baseURL: host.url,
      serviceWorkers: 'block',
      proxy: { server: log.server },
    });
    const told: string[] = [];
    context.on('request', (request) => told.push(request.url()));
    const page = await context.newPage();
    await use({ host, log, context, page, told });
    await context.close();
    await log.close();
    await host.close();
  },
});

/**
 * Of what the browser asks by itself, whatever page it shows, nothing is tried here, so it is kept from it: form filling asks the browser's maker about
 * the boxes of every page, and no page can forbid it. The list stands in the place of the one that comes with the test runner.
 */
const OF_THE_BROWSER = [
  'AutofillServerCommunication',
  'HttpsUpgrades',
  'HttpsFirstBalancedModeAutoEnable',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'AimEnabled',
  'PreconnectToSearch',
];
const { launchOptions } = config.use!;
test.use({
  launchOptions: {
    ...launchOptions,
    args: [...launchOptions!.args!, `--disable-features=${OF_THE_BROWSER.join(',')}`],
  },
});

/** Neither the page nor a worker nor the browser went anywhere but to the page's own folder. */
function expectOnlyOwn({ host, log, told }: Wire): void {
  const isOwn = (url: string): boolean =>
    url.startsWith(host.url) || url.startsWith(`blob:${new URL(host.url).origin}`) || url.startsWith('data:');
  expect(told.filter((url) => !isOwn(url))).toEqual([]);
  expect(log.asked.filter((url) => !url.startsWith(host.url))).toEqual([]);
  expect(log.asked.length).toBeGreaterThan(10);
}

const ENDINGS = /\.(stl|obj|ply|3mf)$/i;

const scansIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => ENDINGS.test(name))
    .sort()
    .map((name) => join(folder, name));

/** Odd files of our own; the samples where there are none yet. */
const OWN = ['tests/corpus', 'sample-meshes'].find(
  (folder) => existsSync(folder) && scansIn(folder).length > 0,
)!;
const GIVEN = process.env.RISEWRIGHT_CORPUS;

interface File {
  name: string;
  buffer: Buffer;
}

const fileOf = (path: string, name = basename(path)): File => ({ name, buffer: readFileSync(path) });

/**
 * One after the other through the page: read, and measured and drawn where there is time before the next. Each is told by its name. Within the page,
 * as the test runner looks too seldom whether one is done.
 */
async function throughPage(page: Page, files: readonly File[]): Promise<void> {
  const untold = await ask(page, 'What did you scan?').evaluate(
    async (scan, all) => {
      const input = scan.querySelector<HTMLInputElement>('input[type=file]')!;
      const isTold = (name: string): boolean =>
        scan.textContent.includes(name) && scan.getAttribute('aria-busy') === 'false';
      const untold: string[] = [];
      for (const { name, base64 } of all) {
        const chosen = new DataTransfer();
        chosen.items.add(new File([Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))], name));
        input.files = chosen.files;
        input.dispatchEvent(new Event('change', { bubbles: true }));
        const from = performance.now();
        while (!isTold(name) && performance.now() - from < 20_000)
          await new Promise((resolve) => setTimeout(resolve, 10));
        if (!isTold(name)) untold.push(name);
      }
      return untold;
    },
    files.map(({ name, buffer }) => ({ name, base64: buffer.toString('base64') })),
  );
  expect(untold).toEqual([]);
}

/** One after the other through a worker of the page's own, asked for the volume of each that it reads. Gives how many it read. */
async function throughWorker(page: Page, files: readonly File[]): Promise<number> {
  const url = page
    .workers()
    .find((worker) => worker.url().includes('engine.worker'))!
    .url();
  let read = 0;
  for (const { name, buffer } of files)
    read += await page.evaluate(
      async ({ url, name, base64 }) => {
        const kept = globalThis as unknown as { engine?: Worker; id?: number };
        const worker = (kept.engine ??= new Worker(url, { type: 'module' }));
        const say = (request: Request): Promise<boolean> =>
          new Promise((resolve) => {
            const id = (kept.id = (kept.id ?? 0) + 1);
            worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
              if (data.id === id && data.say !== 'progress') resolve(data.say === 'answer' && data.answer.ok);
            };
            worker.postMessage({ id, request });
          });
        const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0)).buffer;
        const isRead = await say({ kind: 'open', name, bytes });
        if (isRead) await say({ kind: 'size', wish: { up: '+z', fileUnit: 'mm' } });
        return isRead ? 1 : 0;
      },
      { url, name, base64: buffer.toString('base64') },
    );
  return read;
}

test('the log sees what leaves: an address of elsewhere, by the page, securely, and by a worker', async ({
  wire: { page, log, told },
}) => {
  await newPiece(page);
  await throughPage(page, [fileOf('sample-meshes/sphere-r50.stl')]);
  // A worker is bound by the policy of its own file alone, which this plain host sends without one: what it asks for would go out.
  const worker = page.workers().find((one) => one.url().includes('engine.worker'))!;
  await worker.evaluate(() =>
    fetch('http://elsewhere.invalid/worker', { mode: 'no-cors' }).catch(() => null),
  );
  await page.goto('http://elsewhere.invalid/page').catch(() => null);
  await page.goto('https://elsewhere.invalid/secure').catch(() => null);
  expect(log.asked).toEqual(
    expect.arrayContaining([
      'http://elsewhere.invalid/worker',
      'http://elsewhere.invalid/page',
      'connect elsewhere.invalid:443',
    ]),
  );
  expect(told).toContain('http://elsewhere.invalid/page');
});

test('no file of our own corpus makes the page or its engine ask for anything but its own files', async ({
  wire,
}) => {
  const files = scansIn(OWN).map((path) => fileOf(path));
  expect(files.length).toBeGreaterThan(5);
  await newPiece(wire.page);
  await throughPage(wire.page, files);
  expect(await throughWorker(wire.page, files)).toBeGreaterThan(3);
  expectOnlyOwn(wire);
});

test('a scan may be called anything', async ({ wire }) => {
  const { page } = wire;
  await newPiece(page);
  // No name of a file holds a slash.
  const names = HOSTILE_NAMES.map((name) => `${name.replaceAll('/', '\u2215')}.stl`);
  await throughPage(
    page,
    names.map((name, n) =>
      n % 2 === 0 ? fileOf('sample-meshes/sphere-r50.stl', name) : { name, buffer: Buffer.from('solid') },
    ),
  );
  expect(await page.evaluate(() => 'ran' in globalThis)).toBe(false);
  await expect(
    page.locator('main :is(script, iframe, base, [onerror], [onload], [onmouseover], img[src="x"])'),
  ).toHaveCount(0);
  expectOnlyOwn(wire);
});

test('the folder named by RISEWRIGHT_CORPUS, every file of it', async ({ wire }) => {
  test.skip(GIVEN === undefined, 'RISEWRIGHT_CORPUS is not set');
  const files = scansIn(GIVEN!).map((path) => fileOf(path));
  test.setTimeout(60_000 + 5_000 * files.length);
  await newPiece(wire.page);
  await throughPage(wire.page, files);
  const read = await throughWorker(wire.page, files);
  expectOnlyOwn(wire);
  const { asked } = wire.log;
  console.log(
    `${files.length} files, ${read} read; ${asked.length} requests, 0 of them elsewhere; ${wire.told.length} told by the browser`,
  );
});
