import { existsSync, mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';

/**
 * Makes a folder and those above it. Not by Node's own recursive way: where a parent is there but takes no folder, as in
 * /proc, that tries the two in turn for ever.
 */
export function makeFolder(path: string): void {
  try {
    mkdirSync(path);
  } catch (e) {
    const code = (e as NodeJS.ErrnoException).code;
    if (code === 'EEXIST' && statSync(path).isDirectory()) return;
    const parent = dirname(path);
    if (code !== 'ENOENT' || parent === path || existsSync(parent)) throw e;
    makeFolder(parent);
    mkdirSync(path);
  }
}
