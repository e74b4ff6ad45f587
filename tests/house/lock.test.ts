import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');

/** What the check of the lock file says of these two files. */
function checked(packages: object, manifest: object = {}): { status: number | null; said: string } {
  const folder = mkdtempSync(join(tmpdir(), 'risewright-lock-'));
  try {
    writeFileSync(join(folder, 'package-lock.json'), JSON.stringify({ packages: { '': {}, ...packages } }));
    writeFileSync(join(folder, 'package.json'), JSON.stringify(manifest));
    const script = join(root, 'scripts/check-lock.mjs');
    const { status, stderr } = spawnSync(process.execPath, [script, folder], { encoding: 'utf8' });
    return { status, said: stderr };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const SOUND = { version: '1.0.0', integrity: 'sha512-x' };

it('a lock file of versions and checksums is taken', () => {
  expect(checked({ 'node_modules/a': SOUND })).toEqual({ status: 0, said: '' });
});

it.each<[string, object, object, string]>([
  [
    'an address',
    { 'node_modules/a': { ...SOUND, resolved: 'https://host/a.tgz' } },
    {},
    'download addresses',
  ],
  ['no checksum', { 'node_modules/a': { version: '1.0.0' } }, {}, 'no checksum for: node_modules/a'],
  [
    'a script that runs at installing',
    { 'node_modules/b/node_modules/@c/a': { ...SOUND, hasInstallScript: true } },
    { allowScripts: { a: false } },
    'when they are installed: node_modules/b/node_modules/@c/a',
  ],
])('one with %s is not', (_, packages, manifest, words) => {
  const { status, said } = checked(packages, manifest);
  expect(status).toBe(1);
  expect(said).toContain(words);
});

it('a package whose script was said no to is taken', () => {
  const packages = { 'node_modules/@c/a': { ...SOUND, hasInstallScript: true } };
  expect(checked(packages, { allowScripts: { '@c/a': false } })).toEqual({ status: 0, said: '' });
});

it('npx risewright, as the README has it, is not stopped: npm takes this very package for one whose script nobody looked at', () => {
  expect(readFileSync(join(root, '.npmrc'), 'utf8')).not.toContain('strict-allow-scripts');
});
