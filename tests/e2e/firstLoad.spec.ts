import { spawnSync } from 'node:child_process';
import { test } from '@playwright/test';
import { expect, hasBrowser } from './ticket';

test.skip(!hasBrowser, 'no chromium was found');

test('the first screen is there after less than 200 kB gzipped, and no picture is fetched before it is asked for', () => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['scripts/first-load.mjs'], {
    encoding: 'utf8',
    timeout: 80_000,
  });
  expect({ status, stderr }, stdout).toEqual({ status: 0, stderr: '' });
  const [, kB] = /^First screen: (\d+\.\d) kB gzipped of 200 kB$/m.exec(stdout) ?? [];
  // React alone is more than 60: less would mean that the screen was not seen.
  expect(Number(kB)).toBeGreaterThan(60);
  expect(stdout).toContain('TicketPage');
  expect(stdout).not.toMatch(/Stage-|engine\.worker/);
});
