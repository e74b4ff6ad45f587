import { useEffect, useState, type RefObject } from 'react';

/** Width of the element in whole pixels, as it is now; undefined while it is not laid out. */
export function useWidth(ref: RefObject<Element | null>): number | undefined {
  const [widthPx, setWidth] = useState<number>();
  useEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const watch = new ResizeObserver((entries) => {
      const width = Math.floor(entries.at(-1)?.contentRect.width ?? 0);
      setWidth(width > 0 ? width : undefined);
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, [ref]);
  return widthPx;
}
