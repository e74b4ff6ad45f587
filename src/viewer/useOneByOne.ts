import { useEffect, useState } from 'react';

/** Lets the things of a list in one after another, so that the page answers in between. A new list begins anew. */
export function useOneByOne<T>(list: readonly T[] | undefined): readonly T[] {
  const [now, setLet] = useState<{ of: readonly T[] | undefined; count: number }>({ of: list, count: 0 });
  const count = now.of === list ? now.count : 0;
  useEffect(() => {
    if (list === undefined || count >= list.length) return;
    const timer = setTimeout(() => setLet({ of: list, count: count + 1 }));
    return () => clearTimeout(timer);
  }, [list, count]);
  return list?.slice(0, count) ?? [];
}
