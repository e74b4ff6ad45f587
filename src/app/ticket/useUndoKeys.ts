import { useEffect, type Dispatch } from 'react';
import type { Action } from './reducer';

/** Control or Command with Z takes back, with Shift or Y does again; within a box the browser's own undo of letters goes first. */
export function useUndoKeys(dispatch: Dispatch<Action>): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const key = event.key.toLowerCase();
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isText(event.target)) return;
      const way = key === 'y' || (key === 'z' && event.shiftKey) ? 'redo' : key === 'z' ? 'undo' : undefined;
      if (way === undefined) return;
      event.preventDefault();
      dispatch({ do: way });
    };
    // Another box: what is typed into it, or again into the one of before, is a step of its own.
    const leave = (): void => dispatch({ do: 'pause' });
    addEventListener('keydown', press);
    addEventListener('focusout', leave);
    return () => {
      removeEventListener('keydown', press);
      removeEventListener('focusout', leave);
    };
  }, [dispatch]);
}

const isText = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && target.type === 'text');
