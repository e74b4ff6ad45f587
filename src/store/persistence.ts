/** What the browser says when it is asked to keep the data of this page even when room gets short. */
export type Persistence = 'kept' | 'refused' | 'unknown';

/** Whether it was promised before; never asks. */
export async function isPersisted(): Promise<boolean> {
  const storage = navigator.storage as StorageManager | undefined;
  try {
    return (await storage?.persisted?.()) ?? false;
  } catch {
    return false;
  }
}

/** Asks once; `unknown` where the browser has nothing to ask, as on plain http. Storage Standard, 6.1. */
export async function askToPersist(): Promise<Persistence> {
  // On plain http there is no such object, whatever the types say.
  const storage = navigator.storage as StorageManager | undefined;
  if (storage?.persist === undefined) return 'unknown';
  try {
    return (await storage.persist()) ? 'kept' : 'refused';
  } catch {
    return 'unknown';
  }
}
