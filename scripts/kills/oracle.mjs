// What a store holds after each step, worked out apart from the browser: the same steps on an IndexedDB in memory.
import 'fake-indexeddb/auto';
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { root } from '../setup.mjs';

const CONTENTS =
  "export { openStore } from './src/store/store';\nexport { digestOf, doStep, stepName } from './tests/support/storeWork';";

/** The store and the steps as one file: `iife` for a page, where it is found as `kills`, or `esm`. */
export async function bundled(format) {
  const { outputFiles } = await build({
    stdin: { contents: CONTENTS, resolveDir: root, loader: 'ts' },
    bundle: true,
    write: false,
    format,
    globalName: 'kills',
    target: 'es2022',
    logLevel: 'warning',
  });
  return outputFiles[0].text;
}

/** Digests by how many steps were done. */
export async function openOracle(folder) {
  const file = join(folder, 'oracle.mjs');
  writeFileSync(file, await bundled('esm'));
  const { openStore, doStep, digestOf, stepName } = await import(pathToFileURL(file).href);
  rmSync(file);
  const store = openStore('oracle');
  const digests = [await digestOf(store)];
  return {
    stepName,
    digestAfter: async (steps) => {
      while (digests.length <= steps) {
        await doStep(store, digests.length - 1);
        digests.push(await digestOf(store));
      }
      return digests[steps];
    },
  };
}
