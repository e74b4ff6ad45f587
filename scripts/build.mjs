// Builds the command line (dist/cli/risewright.js) and the library (dist/index.js with types): bundles that need nothing
// installed at run time. Manifold's wasm lies beside each of them; the library keeps Manifold in a file of its own, which is
// loaded only when a solid is made.
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { noticesText } from './notices.mjs';

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

// What an earlier build left would be packed with the rest.
for (const folder of ['cli', 'parts', 'types'])
  rmSync(join(root, 'dist', folder), { recursive: true, force: true });

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

// Of esbuild itself a few lines go into every bundle.
const modules = [program, library].flatMap(({ metafile }) => Object.keys(metafile.inputs));
const notices = noticesText([...modules, 'node_modules/esbuild'].map((path) => join(root, path)));
writeFileSync(join(root, 'dist', 'THIRD_PARTY_LICENSES.txt'), notices);

const types = spawnSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.types.json'], {
  cwd: root,
  stdio: 'inherit',
});
nameFiles(join(root, 'dist', 'types'));
process.exitCode = types.status ?? 1;

/** Types name each other as the sources do, without an ending; Node's own way of finding modules wants the file (TypeScript, nodenext). */
function nameFiles(folder) {
  for (const entry of readdirSync(folder, { recursive: true })) {
    const file = join(folder, entry);
    if (!file.endsWith('.d.ts')) continue;
    const text = readFileSync(file, 'utf8').replace(
      /(from |import\()(['"])(\.[^'"]*)\2/g,
      (_, before, quote, path) => `${before}${quote}${fileOf(dirname(file), path)}${quote}`,
    );
    writeFileSync(file, text);
  }
}

function fileOf(folder, path) {
  const ending = ['.d.ts', '/index.d.ts'].find((end) => existsSync(join(folder, `${path}${end}`)));
  if (ending === undefined) throw new Error(`${folder}: expected types for ${path}, got none`);
  return `${path}${ending.replace('.d.ts', '.js')}`;
}
