import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/** The helping thread of the command line in one file, as the build makes it, in a folder of its own. Returns its address. */
export async function bundledHelper(): Promise<URL> {
  const outfile = join(mkdtempSync(join(tmpdir(), 'field-helper-')), 'field-helper.mjs');
  await build({
    entryPoints: ['src/cli/fieldHelper.ts'],
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    outfile,
    logLevel: 'warning',
  });
  return pathToFileURL(outfile);
}
