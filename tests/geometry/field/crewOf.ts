import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { build } from 'esbuild';
import type { Crew } from '../../../src/geometry';

/** The helping thread of the command line in one file, as the build makes it, in a folder of its own. Returns its path. */
export async function bundledHelper(): Promise<string> {
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
  return outfile;
}

/** As many helping threads, started and ready to take a task. */
export async function crewOf(helper: string, helpers: number): Promise<Crew & { end: () => Promise<void> }> {
  const workers = Array.from(
    { length: helpers },
    (_, i) => new Worker(helper, { workerData: i + 1, execArgv: [] }),
  );
  await Promise.all(workers.map((worker) => new Promise((ready) => worker.once('online', ready))));
  return {
    helpers,
    begin: (task) => {
      for (const worker of workers) worker.postMessage(task);
    },
    end: async () => {
      await Promise.all(workers.map((worker) => worker.terminate()));
    },
  };
}
