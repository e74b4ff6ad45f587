import { useMemo, useState } from 'react';
import { readBench, withBench, type BenchState } from '../../job/benchState';
import { isSame } from '../../job/json';
import type { Piece } from '../../job/piece';

/** What is said at the bench beside the presses. */
export type BenchSaid = Omit<BenchState, 'run'>;

/** What a casting says of the bench, with what was said here and is still on its way to the store. */
export function useBenchState(
  piece: Piece,
  id: string,
  change: (how: (piece: Piece) => Piece) => void,
): { said: BenchSaid; unread: string[]; run: BenchState['run']; say: (part: Partial<BenchSaid>) => void } {
  // The same run while the piece is the same: presses are told from it.
  const { bench, unread } = useMemo(() => readBench(piece, id), [piece, id]);
  const { run, ...kept } = bench;
  const [pending, setPending] = useState<{ id: string; part: Partial<BenchSaid> }>({ id, part: {} });
  const mine = pending.id === id ? stillPending(pending.part, kept) : {};
  const say = (part: Partial<BenchSaid>): void => {
    setPending((before) => ({ id, part: { ...(before.id === id ? before.part : {}), ...part } }));
    change((now) => withBench(now, id, part));
  };
  return { said: { ...kept, ...mine }, unread, run, say };
}

/** What the piece has by now is no longer pending. */
const stillPending = (part: Partial<BenchSaid>, kept: BenchSaid): Partial<BenchSaid> =>
  Object.fromEntries(
    Object.entries(part).filter(([name, value]) => !isSame(value, kept[name as keyof BenchSaid])),
  );
