import { lstatSync, readFileSync, statSync, writeFileSync, writeSync } from 'node:fs';
import { EXIT } from './exit';
import { makeFolder } from './makeFolder';
import { startCrew } from './nodeCrew';
import { replaceFile } from './replaceFile';
import { run } from './run';

declare const RISEWRIGHT_VERSION: string;

/** A pipe may take a while to drain, and may be closed by its reader: neither is a fault. */
function write(fd: 1 | 2, text: string): void {
  const bytes = Buffer.from(text);
  for (let at = 0; at < bytes.length;) {
    try {
      at += writeSync(fd, bytes, at);
    } catch (e) {
      const code = (e as NodeJS.ErrnoException).code;
      if (code === 'EPIPE') return;
      if (code !== 'EAGAIN') throw e;
    }
  }
}

let crew: ReturnType<typeof startCrew> | undefined;

try {
  process.exitCode = await run(
    process.argv.slice(2),
    {
      out: (text) => write(1, text),
      note: (text) => write(2, text),
      readFile: (path) => readFileSync(path),
      fileBytes: (path) => statSync(path).size,
      readStdin: () => readFileSync(0),
      readSample: (name) => readFileSync(new URL(`../../sample-meshes/${name}`, import.meta.url)),
      exists: (path) => lstatSync(path, { throwIfNoEntry: false }) !== undefined,
      makeFolder,
      writeFile: (path, data) => writeFileSync(path, data),
      replaceFile,
      startCrew: (threads) => (crew ??= startCrew(threads)),
      isTerminal: process.stderr.isTTY,
    },
    RISEWRIGHT_VERSION,
  );
} catch (e) {
  write(2, `A fault of ours: ${e instanceof Error ? (e.stack ?? e.message) : String(e)}\n`);
  process.exitCode = EXIT.ourFault;
} finally {
  crew?.end();
}
