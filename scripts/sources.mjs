// The sources as they stand now, for scripts that ask them something: bundled by esbuild and imported, nothing built before.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { root } from './setup.mjs';

/** What a module of these contents exports; its imports are from the root. */
export async function loadSources(contents, { plugins = [] } = {}) {
  const folder = join(root, 'node_modules', '.cache', 'risewright-sources');
  mkdirSync(folder, { recursive: true });
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: root, loader: 'ts' },
    bundle: true,
    write: false,
    platform: 'node',
    format: 'esm',
    logLevel: 'error',
    plugins,
    banner: {
      // The argument parser is CommonJS and asks for Node's own modules through require.
      js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
    },
  });
  const file = join(folder, `sources-${process.pid}.mjs`);
  writeFileSync(file, outputFiles[0].contents);
  const sources = await import(pathToFileURL(file).href);
  rmSync(file);
  return sources;
}

/** Bundles a program of ours for Node, beside the installed packages, which stay outside of it. */
export const bundleProgram = (entry, outfile) =>
  build({
    entryPoints: [join(root, entry)],
    outfile,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'warning',
  });
