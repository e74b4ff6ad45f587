const LOCK = 'risewright: no update now';

/** Tells the other windows of this page that no update may be taken, until what comes back is called. */
export function holdUpdates(): () => void {
  const locks = locksHere();
  let release: () => void = () => {};
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  void locks?.request(LOCK, { mode: 'shared' }, () => held);
  return () => release();
}

/** Whether a window of this page, any of them, holds updates back. */
export async function isHeld(): Promise<boolean> {
  const { held = [] } = (await locksHere()?.query()) ?? {};
  return held.some(({ name }) => name === LOCK);
}

/** Kept back on plain http, where there is no update to hold either. */
const locksHere = (): LockManager | undefined => navigator.locks;
