import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';

/**
 * Writes a file whole or not at all: beside it first, then in its place in one step, so that a full disk or a power cut leaves the old
 * one. A link stays one, and rights stay what they were.
 */
export function replaceFile(path: string, data: string): void {
  const target = existsSync(path) ? realpathSync(path) : path;
  const beside = `${target}.${process.pid}.part`;
  const mode = existsSync(target) ? statSync(target).mode & 0o777 : 0o666;
  try {
    const file = openSync(beside, 'wx', mode);
    try {
      writeFileSync(file, data);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(beside, target);
  } catch (e) {
    if ((e as NodeJS.ErrnoException).code !== 'EEXIST') rmSync(beside, { force: true });
    throw e;
  }
}
