import { useCallback, useEffect, useRef, useState } from 'react';
import type { Piece } from '../../job/piece';
import { seenSculpt } from '../../job/seen';
import { counted } from '../../words/sentence';
import { useShop } from '../shop/shopContext';

/** Sizes, outlines and grams of pieces that were brought in or not opened since: worked out here, all in one go. */
export function WorkOut({ pieces, isAtOnce }: { pieces: readonly Piece[]; isAtOnce: boolean }) {
  const { store } = useShop();
  const [isRunning, setRunning] = useState(false);
  const [fault, setFault] = useState<string>();
  const stop = useRef<AbortController>(undefined);
  const isBegun = useRef(false);
  const waiting = pieces.filter(
    (piece) => piece.sculpt.scan !== undefined && seenSculpt(piece, __APP_VERSION__)?.outline === undefined,
  );
  useEffect(
    () => () => {
      stop.current?.abort();
      isBegun.current = false;
    },
    [],
  );

  const run = useCallback(
    (all: readonly Piece[]): void => {
      const { signal } = (stop.current = new AbortController());
      setRunning(true);
      setFault(undefined);
      import('./workOut')
        .then(({ workOut }) => workOut(store, all, signal))
        .catch((thrown: unknown) => setFault(thrown instanceof Error ? thrown.message : String(thrown)))
        .finally(() => setRunning(false));
    },
    [store],
  );

  const mustBegin = isAtOnce && waiting.length > 0;
  useEffect(() => {
    if (!mustBegin || isBegun.current) return;
    isBegun.current = true;
    run(waiting);
    // Once, with what waits now.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [mustBegin]);

  if (isRunning)
    return (
      <p className="note quiet" role="status">
        Working out sizes and grams; {counted(waiting.length, 'piece')} to go …
      </p>
    );
  return (
    <>
      {waiting.length > 0 && (
        <div className="chg">
          <button type="button" className="act" onClick={() => run(waiting)}>
            Work out sizes and grams of {counted(waiting.length, 'piece')}
          </button>
        </div>
      )}
      {fault !== undefined && (
        <p className="note" role="status">
          Not all could be worked out: {fault}. Open the piece to see why.
        </p>
      )}
    </>
  );
}
