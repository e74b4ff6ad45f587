// The lock file must name versions and checksums, never the host they were fetched from; and no package may run a script when it is installed.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const folder = process.argv[2] ?? fileURLToPath(new URL('..', import.meta.url));
const lock = readFileSync(join(folder, 'package-lock.json'), 'utf8');
if (lock.includes('"resolved"')) {
  console.error(
    'package-lock.json holds download addresses ("resolved"). Run: npm install --package-lock-only, with the .npmrc of this folder.',
  );
  process.exit(1);
}
const entries = Object.entries(JSON.parse(lock).packages).filter(([path]) => path !== '');
const unchecked = entries
  .filter(([, entry]) => entry.integrity === undefined && !entry.link && !entry.inBundle)
  .map(([path]) => path);
if (unchecked.length > 0) {
  console.error(`package-lock.json has no checksum for: ${unchecked.join(', ')}`);
  process.exit(1);
}
const { allowScripts } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
const running = entries
  .filter(([path, entry]) => entry.hasInstallScript && allowScripts?.[nameOf(path)] !== false)
  .map(([path]) => path);
if (running.length > 0) {
  console.error(
    `These run a script when they are installed: ${running.join(', ')}. Say false to it in allowScripts of package.json.`,
  );
  process.exit(1);
}

function nameOf(path) {
  return path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
}
