import { useEffect, useState } from 'react';

/** The last of the parts whose top has passed the upper third of the window. */
export function usePartInView(ids: readonly string[]): string | undefined {
  const key = ids.join(' ');
  const [current, setCurrent] = useState(ids[0]);
  useEffect(() => {
    const look = (): void => {
      const passed = key
        .split(' ')
        .filter(
          (id) => (document.getElementById(id)?.getBoundingClientRect().top ?? Infinity) < innerHeight / 3,
        );
      setCurrent(passed.at(-1) ?? key.split(' ')[0]);
    };
    look();
    addEventListener('scroll', look, { passive: true });
    return () => removeEventListener('scroll', look);
  }, [key]);
  return current;
}
