import { useEffect, useRef } from 'react';

/** Once something was pressed here, the focus goes to the title of each new phase: it is read out, and Space presses the one button from there. */
export function useTitleFocus(phase: string, isMoving: boolean): void {
  const before = useRef(phase);
  useEffect(() => {
    if (before.current === phase) return;
    before.current = phase;
    if (!isMoving) return;
    scrollTo(0, 0);
    focusTitle();
  }, [phase, isMoving]);
}

export const focusTitle = (): void =>
  document.querySelector<HTMLElement>('.bench h1')?.focus({ preventScroll: true });
