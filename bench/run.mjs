// npm run bench: bundles bench/size.ts beside the installed packages and runs it.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = `${root}node_modules/.cache/risewright-bench`;
const cli = `${root}dist/cli/risewright.js`;

if (!existsSync(cli)) {
  console.error('bench: expected dist/cli/risewright.js, got none. Run npm run build first.');
  process.exit(1);
}
mkdirSync(folder, { recursive: true });
await build({
  entryPoints: [`${root}bench/size.ts`],
  outfile: `${folder}/size.mjs`,
  bundle: true,
  packages: 'external',
  platform: 'node',
  format: 'esm',
  target: 'node20',
  logLevel: 'warning',
});
process.exitCode =
  spawnSync(process.execPath, ['--expose-gc', `${folder}/size.mjs`, root], { stdio: 'inherit' }).status ?? 1;
