// npm run corpus -- FOLDER: reads every file of a corpus as `size` does, and says how many were answered as its manifest.json asks.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const [folder, ...more] = process.argv.slice(2);
if (folder === undefined || more.length > 0 || !existsSync(join(folder, 'manifest.json'))) {
  console.error('Name one folder that has a manifest.json: npm run corpus -- FOLDER');
  process.exitCode = 2;
} else {
  const { status } = spawnSync(
    process.execPath,
    ['node_modules/vitest/vitest.mjs', 'run', 'tests/corpus/given.test.ts', '--silent=false'],
    {
      cwd: fileURLToPath(new URL('..', import.meta.url)),
      env: { ...process.env, RISEWRIGHT_CORPUS: resolve(folder) },
      stdio: 'inherit',
    },
  );
  process.exitCode = status ?? 1;
}
