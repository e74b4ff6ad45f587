// Builds the command line (dist/cli/risewright.js) and the library (dist/index.js with types): bundles that need nothing
// installed at run time. Manifold's wasm lies beside each of them; the library keeps Manifold in a file of its own, which is
// loaded only when a solid is made.
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
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
  entryPoints: { risewright: 'src/cli/main.ts', 'field-helper': 'src/cli/fieldHelper.ts' },
  outdir: 'dist/cli',
  platform: 'node',
  banner: {
    // The argument parser is CommonJS and asks for Node's own modules through require.
    js: "#!/usr/bin/env node\nimport { createRequire as __createRequire } from 'node:module';\nconst require = __createRequire(import.meta.url);",
  },
});
rmSync(join(root, 'dist', 'parts'), { recursive: true, force: true });
const library = await build({
  ...common,
  entryPoints: { index: 'src/index.ts' },
  outdir: 'dist',
  platform: 'neutral',
  mainFields: ['module', 'main'],
  splitting: true,
  chunkNames: 'parts/[name]-[hash]',
  // Manifold asks for it in Node alone.
  external: ['node:module'],
});

for (const folder of ['cli', 'parts']) {
  const wasm = join(root, 'node_modules', 'manifold-3d', 'manifold.wasm');
  copyFileSync(wasm, join(root, 'dist', folder, 'manifold.wasm'));
}

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
