import { useEffect, useRef } from 'react';

/**
 * Space and Enter press the one button wherever the focus is, but not while something is typed, and not on what a key means
 * itself: a link, a tick, another button that was reached with the keyboard.
 */
export function useBenchKeys(press: (() => void) | undefined): void {
  const latest = useRef(press);
  useEffect(() => {
    latest.current = press;
  });
  useEffect(() => {
    /** A button that was pressed with a finger keeps the focus, and means nothing by it. */
    let touched: Element | null = null;
    const touch = ({ target }: PointerEvent): void => {
      touched = target instanceof Element ? target.closest('button') : null;
    };
    const isForButton = (event: KeyboardEvent): boolean =>
      latest.current !== undefined && isPress(event) && (event.target === touched || !isOwn(event));
    const down = (event: KeyboardEvent): void => {
      if (event.key === 'Tab') touched = null;
      if (!isForButton(event)) return;
      event.preventDefault();
      if (!event.repeat) latest.current?.();
    };
    // A button that has the focus would be pressed once more as Space is let go.
    const up = (event: KeyboardEvent): void => {
      if (event.key === ' ' && isForButton(event)) event.preventDefault();
    };
    addEventListener('pointerdown', touch, true);
    addEventListener('keydown', down, true);
    addEventListener('keyup', up, true);
    return () => {
      removeEventListener('pointerdown', touch, true);
      removeEventListener('keydown', down, true);
      removeEventListener('keyup', up, true);
    };
  }, []);
}

const isPress = ({ key, ctrlKey, metaKey, altKey }: KeyboardEvent): boolean =>
  (key === ' ' || key === 'Enter') && !ctrlKey && !metaKey && !altKey;

function isOwn({ target, key }: KeyboardEvent): boolean {
  if (!(target instanceof Element) || target.closest('[data-primary]') !== null) return false;
  if (target.matches('input[type="checkbox"]')) return key === ' ';
  if (target.matches('a')) return key === 'Enter';
  return target.matches('input, textarea, select, button, summary, [contenteditable]');
}
