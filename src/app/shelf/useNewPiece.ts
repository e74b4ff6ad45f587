import { useCallback, useState } from 'react';
import type { Problem } from '../../problem';
import { keepScanAside, newId, storeProblem } from '../../store';
import { useShop } from '../shop/shopContext';
import { viewNow } from '../shop/viewNow';
import type { KeptSource } from '../ticket/keptSource';
import { localDay } from '../ticket/localDay';
import type { Nav } from '../useRoute';
import { freeName, NEW_NAME, nameOf } from './pieceNames';
import { isScanName, SCAN_KINDS } from './scanNames';

export interface NewPiece {
  /** A piece without a scan. */
  begin: () => void;
  /** A piece named after a scan's file, which is kept first and then read in Measure. */
  beginWith: (source: KeptSource) => void;
  /** What is being done. */
  note: string | undefined;
  /** A file that is no scan. */
  refused: string | undefined;
  problem: Problem | undefined;
}

export function useNewPiece(nav: Nav): NewPiece {
  const { store, askToPersist } = useShop();
  const [note, setNote] = useState<string>();
  const [refused, setRefused] = useState<string>();
  const [problem, setProblem] = useState<Problem>();

  const add = useCallback(
    async (name: string, scan?: string): Promise<void> => {
      const { newPiece } = await import('../ticket/newPiece');
      const { core, pieces } = await viewNow(store);
      const now = new Date();
      const taken = pieces.map((one) => one.name);
      const piece = newPiece({ name: freeName(name, taken), today: localDay(now), core });
      const sculpt = scan === undefined ? piece.sculpt : { ...piece.sculpt, scan };
      await store.addPiece({ ...piece, begunAtMs: now.getTime(), sculpt });
      nav.go({ at: 'measure', piece: piece.id });
    },
    [store, nav],
  );

  const run = useCallback((words: string, work: () => Promise<void>): void => {
    setNote(words);
    setRefused(undefined);
    setProblem(undefined);
    work()
      .catch((fault: unknown) => setProblem(storeProblem(fault)))
      .finally(() => setNote(undefined));
  }, []);

  const begin = useCallback(() => run('A new piece …', () => add(NEW_NAME)), [run, add]);

  const beginWith = useCallback(
    (source: KeptSource) =>
      run(`${source.name} is being kept …`, async () => {
        if (!isScanName(source.name))
          return setRefused(`${source.name} is no scan: choose an ${SCAN_KINDS} file.`);
        const id = newId();
        const kept = await keepScanAside(store, { id, name: source.name, file: await source.bytes() });
        if (kept !== undefined) return setProblem(kept);
        askToPersist();
        await add(nameOf(source.name), id);
      }),
    [run, add, store, askToPersist],
  );

  return { begin, beginWith, note, refused, problem };
}
