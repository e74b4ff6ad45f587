import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import type { Here } from '../../src/worker/lifeline';
import type { FromWorker, Request } from '../../src/worker/protocol';
import { expect, hasBrowser, newPiece, openTroll, test } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');

/** Facets of 5 120 lie up to 0.05 mm inside their ball of 50 mm (edges of 3.76 mm: 2.17^2 / 100), so their offsets do too. */
const SAGITTA_MM = 0.05;
const ballCm3 = (radiusMm: number): number => ((4 / 3) * Math.PI * radiusMm ** 3) / 1000;

interface Offsets {
  isIsolated: boolean;
  volumesCm3: number[];
  /** Progress told on the way. */
  shares: number[];
}

/** Asks the page's own worker, spawned a second time, for the offsets of a scan. */
async function offsetsOf(page: Page, file: string, offsetsMm: number[]): Promise<Offsets> {
  const url = page.workers()[0]!.url();
  const bytes = readFileSync(file).toString('base64');
  return page.evaluate(
    async ({ url, bytes, offsetsMm }) => {
      const worker = new Worker(url, { type: 'module' });
      const shares: number[] = [];
      let id = 0;
      const ask = (request: Request): Promise<unknown> =>
        new Promise((resolve, reject) => {
          worker.onmessage = ({ data }: MessageEvent<FromWorker | Here>) => {
            if (data.say === 'progress') shares.push(data.share);
            else if (data.say === 'answer') resolve(data.answer);
            else if (data.say === 'failed') reject(new Error(data.message));
          };
          worker.postMessage({ id: ++id, request });
        });
      const buffer = Uint8Array.from(atob(bytes), (c) => c.charCodeAt(0)).buffer;
      await ask({ kind: 'open', name: 'ball.stl', bytes: buffer });
      const wish = { up: '+z', fileUnit: 'mm', offsetsMm } as const;
      // The first measure starts the helpers; by the second they have said that they are ready. It asks for something else, as an answer that
      // is known is not worked out again.
      await ask({ kind: 'size', wish: { ...wish, offsetsMm: [5] } });
      await new Promise((resolve) => setTimeout(resolve, 1500));
      shares.length = 0;
      const answer = (await ask({ kind: 'size', wish })) as {
        value: { size: { offsets: { volumes: { volumeCm3: { value: number } }[] } } };
      };
      worker.terminate();
      return {
        isIsolated: crossOriginIsolated,
        volumesCm3: answer.value.size.offsets.volumes.map(({ volumeCm3 }) => volumeCm3.value),
        shares,
      };
    },
    { url, bytes, offsetsMm },
  );
}

test('offsets come out the same with shared memory and without it', async ({ page, browser, baseURL }) => {
  await openTroll(page);
  const together = await offsetsOf(page, 'sample-meshes/sphere-r50.stl', [10, -8]);
  expect(together.isIsolated).toBe(true);
  for (const [i, radiusMm] of [60, 42].entries()) {
    expect(together.volumesCm3[i]).toBeLessThan(ballCm3(radiusMm));
    expect(together.volumesCm3[i]).toBeGreaterThan(ballCm3(radiusMm - SAGITTA_MM));
  }
  expect(together.shares.length).toBeGreaterThan(2);
  expect([...together.shares].sort((a, b) => a - b)).toEqual(together.shares);

  // The same page from a host that sends no such headers.
  const context = await browser.newContext({ baseURL: baseURL!, serviceWorkers: 'block' });
  const alone = await context.newPage();
  await alone.route('**/*', async (route) => {
    const response = await route.fetch();
    const headers = Object.fromEntries(
      Object.entries(response.headers()).filter(([name]) => !name.startsWith('cross-origin-')),
    );
    await route.fulfill({ response, headers });
  });
  await newPiece(alone);
  await alone.getByRole('button', { name: 'Quay Troll head' }).click();
  await expect(alone.getByRole('radio', { name: '+y' })).toBeVisible();
  const single = await offsetsOf(alone, 'sample-meshes/sphere-r50.stl', [10, -8]);
  expect(single.isIsolated).toBe(false);
  expect(single.volumesCm3).toEqual(together.volumesCm3);
  await context.close();
});
