import { useEffect, useState, type RefObject } from 'react';

/** How far below the window a chart is fetched ahead. Chosen here. */
const AHEAD = '600px';

/** True once the element has come near the window; what is folded away is not near. */
export function useNear(ref: RefObject<Element | null>): boolean {
  const [isNear, setNear] = useState(false);
  useEffect(() => {
    const element = ref.current;
    if (element === null || isNear) return;
    const watch = new IntersectionObserver(
      (entries) => entries.some(({ isIntersecting }) => isIntersecting) && setNear(true),
      { rootMargin: AHEAD },
    );
    watch.observe(element);
    return () => watch.disconnect();
  }, [ref, isNear]);
  return isNear;
}
