// The lock file must name versions and checksums, never the host they were fetched from.
import { readFileSync } from 'node:fs';

const lock = readFileSync(new URL('../package-lock.json', import.meta.url), 'utf8');
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
