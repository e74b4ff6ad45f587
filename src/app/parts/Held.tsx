import { useEffect, useLayoutEffect, useRef, type ReactNode } from 'react';

/** Keeps the height of what it holds while figures are worked out, so that a box below it stays under the finger. */
export function Held({ busy, children }: { busy: boolean; children: ReactNode }) {
  const at = useRef<HTMLDivElement>(null);
  const heightPx = useRef(0);
  const isBusy = useRef(busy);
  useLayoutEffect(() => {
    isBusy.current = busy;
    if (at.current !== null) at.current.style.minHeight = busy ? `${heightPx.current}px` : '';
  }, [busy]);
  useEffect(() => {
    const watch = new ResizeObserver(([entry]) => {
      if (!isBusy.current && entry !== undefined) heightPx.current = entry.contentRect.height;
    });
    if (at.current !== null) watch.observe(at.current);
    return () => watch.disconnect();
  }, []);
  return <div ref={at}>{children}</div>;
}
