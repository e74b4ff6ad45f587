import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Plugin } from 'vite';

const NOT_YET = 'build-not-stamped-yet';
const ID_LENGTH = 8;

/**
 * Names the build by what came out of it: a hash over every file, so that equal sources give equal names on any machine and without git, and
 * two builds that differ in anything differ in name. The page carries it, `version.json` tells it to a page that runs an older one, and
 * the service worker has it in its own name.
 */
export function buildStamp(version: string): { plugin: Plugin; serviceWorkerFile: () => string } {
  let id: string | undefined;
  const plugin: Plugin = {
    name: 'build-stamp',
    apply: 'build',
    transformIndexHtml: () => [{ tag: 'meta', attrs: { name: 'build', content: NOT_YET }, injectTo: 'head' }],
    writeBundle: {
      order: 'post',
      sequential: true,
      handler: ({ dir }) => {
        if (dir === undefined) throw new Error('buildStamp: expected a folder to write to, got none');
        id = idOf(dir);
        const page = join(dir, 'index.html');
        writeFileSync(page, readFileSync(page, 'utf8').replace(NOT_YET, id));
        writeFileSync(join(dir, 'version.json'), `${JSON.stringify({ version, build: id })}\n`);
      },
    },
  };
  return {
    plugin,
    serviceWorkerFile: () => {
      if (id === undefined) throw new Error('buildStamp: expected a written build, got none yet');
      return `sw-${id}.js`;
    },
  };
}

/** Files by name, with their content; the names of folders as on the web, on every machine. */
export function idOf(dir: string): string {
  const hash = createHash('sha256');
  const files = readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const named = files.map((file) => ({ file, name: relative(dir, file).split(sep).join('/') }));
  for (const { file, name } of named.sort((a, b) => (a.name < b.name ? -1 : 1))) {
    const bytes = readFileSync(file);
    hash.update(`${name}\n${bytes.length}\n`).update(bytes);
  }
  return hash.digest('hex').slice(0, ID_LENGTH);
}
