import { spawnSync } from 'node:child_process';
import { expect, test } from '@playwright/test';

test('the package installs elsewhere without network, alone, and its command, library and types work there', () => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['scripts/pack-try.mjs'], {
    encoding: 'utf8',
    timeout: 85_000,
  });
  expect(status, stdout + stderr).toBe(0);
  expect(stdout.match(/^ok: /gm)!.length).toBeGreaterThan(12);
  expect(stdout).toContain('ok: its types are found');
});
