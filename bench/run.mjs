// npm run bench [-- name ...]: bundles bench/<name>.ts beside the installed packages and runs it; size, offsets, mold and opening unless named.
// Then one table of all that was measured last.
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../scripts/setup.mjs';
import { bundleProgram } from '../scripts/sources.mjs';

const folder = join(root, 'node_modules/.cache/risewright-bench');
const built = join(root, 'dist/cli');
const names = process.argv.length > 2 ? process.argv.slice(2) : ['size', 'offsets', 'mold', 'opening'];

if (!existsSync(`${built}/risewright.js`)) {
  console.error('bench: expected dist/cli/risewright.js, got none. Run npm run build first.');
  process.exit(1);
}
mkdirSync(folder, { recursive: true });
// The helping threads lie beside whatever starts them.
copyFileSync(`${built}/field-helper.js`, `${folder}/field-helper.js`);
for (const name of [...names, 'table']) {
  await bundleProgram(`bench/${name}.ts`, `${folder}/${name}.mjs`);
  const child = spawnSync(process.execPath, ['--expose-gc', `${folder}/${name}.mjs`, root], {
    stdio: 'inherit',
    cwd: root,
  });
  process.exitCode = child.status ?? 1;
  if (process.exitCode !== 0) break;
}
