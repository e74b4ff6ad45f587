import { useEffect, useLayoutEffect, useRef } from 'react';

/**
 * A button that is gone once it was pressed would leave the focus nowhere, and a keyboard at the top of the page. It goes to
 * the box the button belongs to, else to the heading of its question or part.
 */
export function useFocusKept(): void {
  const held = useRef<{ at: Element; home: HTMLElement | undefined } | undefined>(undefined);
  useEffect(() => {
    const hold = ({ target }: FocusEvent): void => {
      if (target instanceof Element && target !== document.body)
        held.current = { at: target, home: homeOf(target) };
    };
    /** A click beside everything gives the focus up on purpose. */
    const letGo = ({ target }: PointerEvent): void => {
      if (target instanceof Element && target.closest(PRESSABLE) === null) held.current = undefined;
    };
    addEventListener('focusin', hold);
    addEventListener('pointerdown', letGo);
    return () => {
      removeEventListener('focusin', hold);
      removeEventListener('pointerdown', letGo);
    };
  }, []);
  useLayoutEffect(() => {
    const { at, home } = held.current ?? {};
    const focused = document.activeElement;
    if (at === undefined || (focused !== document.body && focused !== at) || isThere(at)) return;
    held.current = undefined;
    (home !== undefined && isThere(home) ? home : document.querySelector<HTMLElement>('main h1'))?.focus();
  });
}

const PRESSABLE = 'button, a, input, select, label, summary, [tabindex]';

const isThere = (element: Element): boolean => element.isConnected && element.checkVisibility();

function homeOf(element: Element): HTMLElement | undefined {
  if (!element.matches('button')) return undefined;
  const box = element.closest('.qty')?.querySelector<HTMLElement>('input');
  const heading = element.closest('.q, main')?.querySelector<HTMLElement>('h1, h2');
  return box ?? heading ?? undefined;
}
