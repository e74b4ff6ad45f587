import { useEffect, useMemo, useSyncExternalStore } from 'react';
import { withBench, type BenchRun } from '../../job/benchState';
import type { Piece } from '../../job/piece';
import type { BenchSession, BenchShown } from './benchSession';
import { RUN_KEY } from './localRun';
import { isRunning } from './phase';
import { sessionOf } from './sessions';

/** The pour of one casting on this page, kept in the piece too: what is pressed here goes there, what is newer there comes here. */
export function useBenchRun({
  shop,
  piece,
  id,
  kept,
  change,
}: {
  /** Name of the shop's store: two shops never share a clock. */
  shop: string;
  piece: Piece;
  id: string;
  kept: BenchRun;
  change: (how: (piece: Piece) => Piece) => void;
}): { session: BenchSession; shown: BenchShown } {
  const key = `${RUN_KEY}${shop}/${piece.id}/${id}`;
  // What the piece has kept is heard below; here it is what a session that is new begins with.
  // eslint-disable-next-line react-hooks/exhaustive-deps
  const session = useMemo(() => sessionOf(key, kept), [key]);
  const shown = useSyncExternalStore(session.subscribe, session.shown);
  const { run } = shown;
  useEffect(() => {
    if (kept.rev > run.rev) return session.hear(kept);
    if (kept.rev === run.rev) return isRunning(run) ? undefined : session.settled();
    const keep = (): void => change((now) => withBench(now, id, { run }));
    keep();
    // A store that failed is tried again: the press is not lost meanwhile.
    const timer = setInterval(keep, AGAIN_MS);
    return () => clearInterval(timer);
  }, [session, change, id, kept, run]);
  return { session, shown };
}

const AGAIN_MS = 5000;
