import { useCallback, useEffect, useRef, type Dispatch } from 'react';
import { createEngine, type Engine, type ScanSource } from '../../worker/engine';
import type { PicturePlace, SizeWish } from '../../worker/protocol';
import type { PourInputs } from '../../plan';
import type { Action } from './reducer';
import type { Ticket } from './state';
import { useDebounced } from './useDebounced';
import { pourInputsOf, sizeWishOf } from './wishes';

const TYPING_MS = 200;

const spawnWorker = (): Worker =>
  new Worker(new URL('../../worker/engine.worker.ts', import.meta.url), { type: 'module' });

export interface Bench {
  open: (source: ScanSource) => void;
  cancel: () => void;
  again: () => void;
}

/** Keeps the engine's answers in step with the ticket: what was said is asked anew when it has stood still. */
export function useEngine(ticket: Ticket, dispatch: Dispatch<Action>): Bench {
  const engine = useOneEngine(dispatch);
  const { scan, attempt } = ticket;
  const sizeKey = useDebounced(JSON.stringify(sizeWishOf(ticket)), TYPING_MS);
  useEffect(() => {
    if (scan === undefined) return;
    dispatch({ do: 'start', job: 'size' });
    void engine()
      .size(JSON.parse(sizeKey) as SizeWish)
      .then((ended) => dispatch({ do: 'ended', job: 'size', ended }));
  }, [engine, dispatch, scan, sizeKey, attempt]);

  const inputs = pourInputsOf(ticket);
  const pourKey = useDebounced(inputs === undefined ? '' : JSON.stringify(inputs), TYPING_MS);
  useEffect(() => {
    if (pourKey === '') return dispatch({ do: 'forget', job: 'pour' });
    dispatch({ do: 'start', job: 'pour' });
    void engine()
      .pour(JSON.parse(pourKey) as PourInputs)
      .then((ended) => dispatch({ do: 'ended', job: 'pour', ended }));
  }, [engine, dispatch, pourKey, attempt]);

  const pictureKey = JSON.stringify(pictureWishOf(ticket));
  useEffect(() => {
    if (scan === undefined) return;
    dispatch({ do: 'start', job: 'picture' });
    void engine()
      .picture(JSON.parse(pictureKey) as PicturePlace)
      .then((ended) => dispatch({ do: 'ended', job: 'picture', ended }));
  }, [engine, dispatch, scan, pictureKey, attempt]);

  return {
    open: (source) => {
      dispatch({ do: 'opening', source });
      void engine()
        .open(source)
        .then((ended) => dispatch({ do: 'opened', source, ended }));
    },
    cancel: () => {
      engine().cancel();
      dispatch({ do: 'cancel' });
    },
    again: () => dispatch({ do: 'again' }),
  };
}

/** The engine, made when it is first asked and closed with the page. */
function useOneEngine(dispatch: Dispatch<Action>): () => Engine {
  const engine = useRef<Engine | undefined>(undefined);
  useEffect(
    () => () => {
      engine.current?.close();
      engine.current = undefined;
    },
    [],
  );
  return useCallback(
    () =>
      (engine.current ??= createEngine(spawnWorker, (job, share) =>
        dispatch({ do: 'progress', job, share }),
      )),
    [dispatch],
  );
}

/** The picture follows the cut that was measured, not the one that is being typed. */
function pictureWishOf({ up, size }: Ticket): PicturePlace {
  const cut = size.answer?.cut;
  return { up: up.axis, ...(cut === undefined ? {} : { cut: { atUnits: cut.atUnits, keep: cut.keep } }) };
}
