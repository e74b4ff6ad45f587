import { useEffect } from 'react';

/** The browser asks, in its own words, before the page is closed or left. */
export function useAskBeforeLeaving(is: boolean): void {
  useEffect(() => {
    if (!is) return;
    const ask = (event: BeforeUnloadEvent): void => event.preventDefault();
    addEventListener('beforeunload', ask);
    return () => removeEventListener('beforeunload', ask);
  }, [is]);
}
