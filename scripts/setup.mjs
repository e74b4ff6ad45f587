// Makes sure that what package-lock.json names is installed. Node built-ins only: it runs before anything is there.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** Vite 8 needs these; an older Node gets one clear line instead of a stack. */
export function checkNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if ((major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major > 22) return;
  console.error(`Risewright needs Node 20.19, 22.12 or newer; this is ${process.versions.node}.`);
  process.exit(1);
}

/** Runs npm with the Node that runs this script; returns its exit code. */
export function npm(args, options = {}) {
  const cli = process.env.npm_execpath;
  const viaNode = cli !== undefined && cli.endsWith('.js');
  const result = viaNode
    ? spawnSync(process.execPath, [cli, ...args], { cwd: root, stdio: 'inherit', ...options })
    : spawnSync('npm', args, {
        cwd: root,
        stdio: 'inherit',
        shell: process.platform === 'win32',
        ...options,
      });
  return result.status ?? 1;
}

/** Installs when node_modules is missing or older than the lock file's content. */
export function ensureInstalled() {
  checkNode();
  const installed = join(root, 'node_modules', '.package-lock.json');
  const lock = join(root, 'package-lock.json');
  if (existsSync(installed) && sameVersions(installed, lock)) return;
  console.log('Installing what the lock file names ...');
  // No script of any package runs, ours neither: what it would build is built here.
  const code = npm(['ci', '--include=dev', '--ignore-scripts', '--no-audit', '--no-fund']);
  if (code !== 0) process.exit(code);
  const built = spawnSync(process.execPath, ['scripts/prepare.mjs'], { cwd: root, stdio: 'inherit' });
  if (built.status !== 0) process.exit(built.status ?? 1);
}

/** Do both lock files name the same versions? Entries for other platforms are not installed and do not count. */
function sameVersions(installedFile, lockFile) {
  const installed = JSON.parse(readFileSync(installedFile, 'utf8')).packages ?? {};
  const wanted = JSON.parse(readFileSync(lockFile, 'utf8')).packages ?? {};
  return Object.entries(wanted).every(
    ([path, entry]) =>
      path === '' ||
      entry.optional ||
      entry.devOptional ||
      entry.peer ||
      installed[path]?.version === entry.version,
  );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) ensureInstalled();
