import { useSyncExternalStore } from 'react';
import { browserUpdates } from './browserUpdates';
import { updateGate } from './updateGate';
import type { Update } from './updates';
import { runningVersion, type Version } from './version';

/** The version that runs, whether another one waits, and what takes it, once all that holds is over. */
export function useUpdate(): Update & { version: Version; update: () => Promise<void> } {
  const updates = browserUpdates();
  const now = useSyncExternalStore(updates.subscribe, updates.now);
  return { ...now, version: runningVersion(), update: () => updates.take(updateGate.free) };
}
