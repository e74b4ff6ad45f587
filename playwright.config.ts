import { existsSync } from 'node:fs';
import { defineConfig } from '@playwright/test';
import { chromiumPath } from './scripts/chromium.mjs';

/** A port of its own: a page that someone works with is never tested by mistake. */
const PORT = 4387;

const executablePath = chromiumPath(process.env, existsSync);
// Said once, by the parent: the list reporter does not print why tests were skipped.
if (executablePath === undefined && process.env.TEST_WORKER_INDEX === undefined) {
  console.warn(
    'No chromium was found, so the page is not tested in a browser. Set CHROMIUM_PATH to test it.',
  );
}

export default defineConfig({
  testDir: 'tests/e2e',
  testMatch: '*.spec.ts',
  outputDir: 'test-results',
  // Two pages at a time: much of a test is waiting for an engine that works on one thread.
  workers: 2,
  timeout: 90_000,
  expect: { timeout: 40_000 },
  forbidOnly: process.env.CI !== undefined,
  reporter: [['list']],
  use: {
    baseURL: `http://127.0.0.1:${PORT}/`,
    // A copy that is kept would hand later tests the page of before; offline.spec.ts lets it.
    serviceWorkers: 'block',
    launchOptions: {
      ...(executablePath === undefined ? {} : { executablePath }),
      args: [
        '--no-sandbox',
        '--use-angle=swiftshader',
        '--enable-unsafe-swiftshader',
        // The 3D picture is drawn by the processor here; the page itself without a detour over it, which took a third of all the time.
        '--disable-gpu-rasterization',
        '--disable-gpu-compositing',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  ...(executablePath === undefined
    ? {}
    : {
        webServer: {
          command: `npx vite preview --host 127.0.0.1 --port ${PORT} --strictPort`,
          url: `http://127.0.0.1:${PORT}/`,
          reuseExistingServer: false,
        },
      }),
});
