import { existsSync } from 'node:fs';
import { defineConfig } from '@playwright/test';
import { chromiumPath } from './tests/e2e/chromium';

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
  workers: 1,
  timeout: 90_000,
  expect: { timeout: 20_000 },
  forbidOnly: process.env.CI !== undefined,
  reporter: [['list']],
  use: {
    baseURL: `http://127.0.0.1:${PORT}/`,
    launchOptions: {
      ...(executablePath === undefined ? {} : { executablePath }),
      args: [
        '--no-sandbox',
        '--use-angle=swiftshader',
        '--enable-unsafe-swiftshader',
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
