import { useEffect, useState } from 'react';

/** Keeps the screen awake while `isWanted`, and takes that up again when the page is back in view. False: the device may dim, quietly. */
export function useWakeLock(isWanted: boolean): boolean {
  const [isHeld, setHeld] = useState(false);
  useEffect(() => {
    if (!isWanted) return;
    let lock: WakeLockSentinel | undefined;
    let isOver = false;
    const take = async (): Promise<void> => {
      if (document.visibilityState !== 'visible' || (lock !== undefined && !lock.released)) return;
      try {
        const taken = await locksHere()?.request('screen');
        if (isOver) return void taken?.release();
        lock = taken;
        setHeld(taken !== undefined);
        taken?.addEventListener('release', () => setHeld(false));
      } catch {
        setHeld(false);
      }
    };
    const back = (): void => void take();
    back();
    document.addEventListener('visibilitychange', back);
    return () => {
      isOver = true;
      document.removeEventListener('visibilitychange', back);
      void lock?.release();
      setHeld(false);
    };
  }, [isWanted]);
  return isHeld;
}

/** There is none on plain http, and in older browsers. */
const locksHere = (): WakeLock | undefined => (navigator as { wakeLock?: WakeLock }).wakeLock;
