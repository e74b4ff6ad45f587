// Bundles the command line to dist/cli/risewright.js: one file, no dependencies at run time.
import { readFileSync } from 'node:fs';
import { build } from 'esbuild';

const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));

await build({
  entryPoints: { risewright: 'src/cli/main.ts' },
  outdir: 'dist/cli',
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  legalComments: 'linked',
  banner: {
    js: "#!/usr/bin/env node\nimport { createRequire as __createRequire } from 'node:module';\nconst require = __createRequire(import.meta.url);",
  },
  define: { RISEWRIGHT_VERSION: JSON.stringify(version) },
  logLevel: 'warning',
});
