// Builds the command line (dist/cli/risewright.js) and the library (dist/index.js with types): bundles that need nothing
// installed at run time. Manifold's wasm lies beside each of them; the library keeps Manifold in a file of its own, which is
// loaded only when a solid is made.
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/** https://opensource.org/license/isc-license-txt */
const ISC = `Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted, provided that the above
copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF
MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT, INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES
WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN
CONNECTION WITH THE USE OR PERFORMANCE OF THIS SOFTWARE.`;

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
          : namedLicence(folder);
      return `${name}\n${'='.repeat(name.length)}\n\n${text.trim()}\n`;
    })
    .join('\n\n');
}

/** Of a package that names its licence and holds no file of it. Only the licences whose text is known here. */
function namedLicence(folder) {
  const { license, author } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  if (license !== 'ISC') throw new Error(`${folder} has no licence file: write the text of ${license} here`);
  return `ISC License\n\nCopyright (c) ${typeof author === 'string' ? author : author?.name}\n\n${ISC}`;
}
