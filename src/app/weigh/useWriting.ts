import { useCallback, useState } from 'react';
import type { PourRow } from '../../job/book';
import type { Piece } from '../../job/piece';
import { readWeigh, withWeigh, type StockTaken, type Written } from '../../job/weighState';
import type { Problem } from '../../problem';
import { storeProblem, type ShopStore } from '../../store';
import type { KeptTicket } from '../ticket/useTicket';
import { takenBack, writtenInto } from './bookOfCasting';

type Draft = Omit<PourRow, 'id'> & { piece: string; casting: string; no: number };

export interface Writing {
  write: (draft: Draft, take: StockTaken | undefined) => void;
  isBusy: boolean;
  /** Why nothing was written. */
  problem: Problem | undefined;
}

/** Writes the pour into the book, with what goes off the stock, in one step; then notes at the casting how to take it back. */
export function useWriting(store: ShopStore, change: KeptTicket['change'], onWritten: () => void): Writing {
  const [isBusy, setBusy] = useState(false);
  const [problem, setProblem] = useState<Problem>();
  const write = useCallback<Writing['write']>(
    (draft, take) => {
      const run = async (): Promise<void> => {
        const done = await writeNow(store, draft, take);
        if ('refused' in done) return setProblem(done.refused);
        change((piece) => withWritten(piece, draft.casting, done));
        onWritten();
      };
      setBusy(true);
      setProblem(undefined);
      run()
        .catch((fault: unknown) => setProblem(storeProblem(fault)))
        .finally(() => setBusy(false));
    },
    [store, change, onWritten],
  );
  return { write, isBusy, problem };
}

async function writeNow(
  store: ShopStore,
  draft: Draft,
  take: StockTaken | undefined,
): Promise<Written | { refused: Problem }> {
  let done: Written | { refused: Problem } | undefined;
  await store.changeCore((core) => {
    const into = writtenInto(core, draft, { take, atMs: Date.now() });
    done = into.ok ? into.value.written : { refused: into.problem };
    return into.ok ? into.value.core : core;
  });
  return done!;
}

function withWritten(piece: Piece, casting: string, written: Written): Piece {
  const { isTaken: _isTaken, ...state } = readWeigh(piece, casting).state;
  const takenOff = written.taken ?? state.takenOff;
  return withWeigh(piece, casting, {
    ...state,
    written,
    ...(takenOff === undefined ? {} : { takenOff }),
  });
}

/** Takes the last writing of a casting back: out of the book, and onto the stock again. Why not, where it cannot be. */
export async function takeBack(
  store: ShopStore,
  change: KeptTicket['change'],
  casting: string,
  written: Written,
): Promise<Problem | undefined> {
  let refused: Problem | undefined;
  await store.changeCore((core) => {
    const back = takenBack(core, written);
    refused = back.ok ? undefined : back.problem;
    return back.ok ? back.value : core;
  });
  if (refused === undefined)
    change((piece) => {
      const { written: _written, takenOff, ...state } = readWeigh(piece, casting).state;
      const isStillOff = takenOff !== undefined && written.taken === undefined;
      return withWeigh(piece, casting, { ...state, ...(isStillOff ? { takenOff } : {}) });
    });
  return refused;
}
