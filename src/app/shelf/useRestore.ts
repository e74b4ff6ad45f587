import { useCallback, useEffect, useRef, useState } from 'react';
import type { BroughtIn } from '../../store';
import type { Sentence } from '../../words/sentence';
import { openBackupBench, type BackupBench, type BackupSaid, type BackupTold } from '../shop/backupAside';
import { useShop } from '../shop/shopContext';
import { isEmptyShop } from './isEmptyShop';

/** How it stands with a backup that is brought in. */
export type Restore =
  | { state: 'idle' }
  | { state: 'reading'; file: string }
  /** Read and sound; what is here stays until it is said what is to become of it. */
  | { state: 'asked'; file: string; told: BackupTold }
  | { state: 'working'; file: string }
  | { state: 'done'; file: string; came: BroughtIn }
  | { state: 'refused'; sentence: Sentence };

export interface RestoreVerbs {
  restore: Restore;
  /** Reads a backup. Into an empty shop it goes at once. */
  look: (file: File) => void;
  take: (way: 'replace' | 'beside') => void;
  leave: () => void;
}

export function useRestore(): RestoreVerbs {
  const { store, view, askToPersist } = useShop();
  const [restore, setRestore] = useState<Restore>({ state: 'idle' });
  const bench = useRef<BackupBench>(undefined);
  useEffect(() => () => bench.current?.close(), []);

  const close = useCallback((next: Restore): void => {
    bench.current?.close();
    bench.current = undefined;
    setRestore(next);
  }, []);

  const bring = useCallback(
    async (way: 'replace' | 'beside', file: string): Promise<void> => {
      setRestore({ state: 'working', file });
      const said = await bench.current?.ask({ do: way, shop: store.name });
      if (said === undefined) return;
      close(
        said.kind === 'brought'
          ? { state: 'done', file, came: said.came }
          : { state: 'refused', sentence: sentenceOf(said) },
      );
      askToPersist();
    },
    [store, close, askToPersist],
  );

  const look = useCallback(
    (file: File): void => {
      const read = async (): Promise<void> => {
        bench.current?.close();
        bench.current = openBackupBench();
        setRestore({ state: 'reading', file: file.name });
        const said = await bench.current.ask({ do: 'look', file });
        if (said.kind !== 'looked') return close({ state: 'refused', sentence: sentenceOf(said) });
        if (view !== undefined && isEmptyShop(view)) return bring('replace', file.name);
        setRestore({ state: 'asked', file: file.name, told: said.told });
      };
      void read();
    },
    [view, bring, close],
  );

  return {
    restore,
    look,
    take: (way) => {
      if (restore.state === 'asked') void bring(way, restore.file);
    },
    leave: () => close({ state: 'idle' }),
  };
}

const sentenceOf = (said: BackupSaid): Sentence =>
  said.kind === 'problem'
    ? said.sentence
    : { text: 'The backup could not be read.', hint: 'Nothing here was changed.' };
