import { join } from 'node:path';
import type { Plugin } from 'vite';
import { noticesText } from '../notices.mjs';

/** Beside the page, and reached from its foot. */
export const NOTICES_FILE = 'third-party.txt';

/**
 * Code that comes into the page past its modules: the bundler's own few lines, and the service worker, which is made after all else is written.
 * A test holds this against what the built worker says of itself.
 */
const APART = [
  'vite',
  'rolldown',
  'workbox-core',
  'workbox-expiration',
  'workbox-precaching',
  'workbox-routing',
  'workbox-strategies',
  'idb',
];

/** Writes the notices of everything that the page and its workers hold. One plugin for the page, one for the workers, which are bundled apart. */
export function thirdParty(root: string): { page: Plugin; worker: () => Plugin } {
  const modules = new Set<string>();
  const gather = (bundle: Record<string, { type: string; moduleIds?: string[] }>): void => {
    for (const { moduleIds = [] } of Object.values(bundle)) moduleIds.forEach((id) => modules.add(id));
  };
  return {
    worker: () => ({ name: 'third-party-of-worker', generateBundle: (_, bundle) => gather(bundle) }),
    page: {
      name: 'third-party',
      apply: 'build',
      generateBundle(_, bundle) {
        gather(bundle);
        const apart = APART.map((name) => join(root, 'node_modules', name));
        this.emitFile({ type: 'asset', fileName: NOTICES_FILE, source: noticesText([...modules, ...apart]) });
      },
    },
  };
}
