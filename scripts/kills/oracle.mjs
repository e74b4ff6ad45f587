// What a store holds after each step, worked out apart from the browser: the same steps on an IndexedDB in memory.
import 'fake-indexeddb/auto';
import { build } from 'esbuild';
import { root } from '../setup.mjs';
import { loadSources } from '../sources.mjs';

const CONTENTS =
  "export { openStore } from './src/store/store';\nexport { digestOf, doStep, stepName } from './tests/support/storeWork';";

/** The store and the steps as one file for a page, where they are found as `kills`. */
export async function scriptOfSteps() {
  const { outputFiles } = await build({
    stdin: { contents: CONTENTS, resolveDir: root, loader: 'ts' },
    bundle: true,
    write: false,
    format: 'iife',
    globalName: 'kills',
    target: 'es2022',
    logLevel: 'warning',
  });
  return outputFiles[0].text;
}

/** Digests by how many steps were done. */
export async function openOracle() {
  const { openStore, doStep, digestOf, stepName } = await loadSources(CONTENTS);
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
