// Builds the command line (dist/cli/risewright.js) and the library (dist/index.js with types): bundles that need nothing
// at run time.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const common = {
  absWorkingDir: root,
  bundle: true,
  format: 'esm',
  target: 'node20',
  legalComments: 'linked',
  logLevel: 'warning',
  metafile: true,
  define: { RISEWRIGHT_VERSION: JSON.stringify(version) },
};

const program = await build({
  ...common,
  entryPoints: { risewright: 'src/cli/main.ts' },
  outdir: 'dist/cli',
  platform: 'node',
  banner: {
    // The argument parser is CommonJS and asks for Node's own modules through require.
    js: "#!/usr/bin/env node\nimport { createRequire as __createRequire } from 'node:module';\nconst require = __createRequire(import.meta.url);",
  },
});
const library = await build({
  ...common,
  entryPoints: { index: 'src/index.ts' },
  outdir: 'dist',
  platform: 'neutral',
  mainFields: ['module', 'main'],
});

writeFileSync(join(root, 'dist', 'THIRD_PARTY_LICENSES.txt'), licencesOf([program, library]));

const types = spawnSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.types.json'], {
  cwd: root,
  stdio: 'inherit',
});
process.exitCode = types.status ?? 1;

/** The licence texts of every package whose code went into a bundle, as their terms ask. */
function licencesOf(results) {
  const inputs = results.flatMap(({ metafile }) => Object.keys(metafile.inputs));
  const packages = new Set(
    inputs.map((path) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(path)?.[1]).filter(Boolean),
  );
  return [...packages]
    .sort()
    .map((name) => {
      const folder = join(root, 'node_modules', name);
      const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
      const text =
        file !== undefined && existsSync(join(folder, file))
          ? readFileSync(join(folder, file), 'utf8')
          : 'no licence file';
      return `${name}\n${'='.repeat(name.length)}\n\n${text.trim()}\n`;
    })
    .join('\n\n');
}
