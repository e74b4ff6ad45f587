// npm run bench [-- name ...]: bundles bench/<name>.ts beside the installed packages and runs it; size, offsets, mold and opening unless named.
// Then one table of all that was measured last.
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = `${root}node_modules/.cache/risewright-bench`;
const built = `${root}dist/cli`;
const names = process.argv.length > 2 ? process.argv.slice(2) : ['size', 'offsets', 'mold', 'opening'];

if (!existsSync(`${built}/risewright.js`)) {
  console.error('bench: expected dist/cli/risewright.js, got none. Run npm run build first.');
  process.exit(1);
}
mkdirSync(folder, { recursive: true });
// The helping threads lie beside whatever starts them.
copyFileSync(`${built}/field-helper.js`, `${folder}/field-helper.js`);
for (const name of [...names, 'table']) {
  await build({
    entryPoints: [`${root}bench/${name}.ts`],
    outfile: `${folder}/${name}.mjs`,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'warning',
  });
  const child = spawnSync(process.execPath, ['--expose-gc', `${folder}/${name}.mjs`, root], {
    stdio: 'inherit',
    cwd: root,
  });
  process.exitCode = child.status ?? 1;
  if (process.exitCode !== 0) break;
}
