import { useCallback, useState, type MouseEvent } from 'react';
import type { Undo } from './UndoBar';

export interface Undos {
  undos: readonly Undo[];
  /** A delete that was made by this press, and how to take it back. */
  add: (event: MouseEvent, words: string, undo: () => Promise<void>) => void;
  over: (id: number) => void;
}

/** Deletes that can still be taken back. */
export function useUndos(): Undos {
  const [undos, setUndos] = useState<readonly Undo[]>([]);
  const add = useCallback<Undos['add']>(({ detail }, words, undo) => {
    // A press by Enter or Space has no count of clicks.
    setUndos((all) => [...all, { id: (all.at(-1)?.id ?? 0) + 1, words, undo, isByKey: detail === 0 }]);
  }, []);
  const over = useCallback((id: number) => setUndos((all) => all.filter((one) => one.id !== id)), []);
  return { undos, add, over };
}
