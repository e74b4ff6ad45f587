import { useCallback, useEffect, useRef, type Dispatch } from 'react';
import { bodyWish } from '../../worker/bodyWish';
import { createEngine, type Ended, type Engine, type ScanSource } from '../../worker/engine';
import type { Ray } from '../../geometry';
import type { Answers, Picked, PicturePlace } from '../../worker/protocol';
import { spawnWorker } from './spawnWorker';
import { asksOf, type Ask } from './asks';
import type { KeptSource } from './keptSource';
import type { Action } from './reducer';
import { sizeNow } from './now';
import type { Ticket } from './state';
import { sizeWishOf } from './wishes';

const TYPING_MS = 200;

export interface Bench {
  /** Reads another scan for this ticket. */
  open: (source: KeptSource) => void;
  /** Reads the scan that the ticket is of already. */
  reopen: (source: KeptSource) => void;
  /** What a ray meets; undefined where there is no answer. */
  pick: (ray: Ray, place: PicturePlace) => Promise<Picked | undefined>;
  /** The core of the scan, from its own file; or why there is none. */
  core: (source: ScanSource) => Promise<Ended<Answers['core']> | undefined>;
  cancel: () => void;
  /** Asks anew, of a new worker. */
  again: () => void;
}

/** Keeps the engine's answers in step with the ticket: what was said is asked anew when it has stood still. */
export function useEngine(ticket: Ticket, dispatch: Dispatch<Action>): Bench {
  const engine = useOneEngine(dispatch);
  const { fields, molding, pouring, typing } = ticket;
  useEffect(() => {
    if (!typing) return;
    const timer = setTimeout(() => dispatch({ do: 'still' }), TYPING_MS);
    return () => clearTimeout(timer);
  }, [dispatch, fields, molding, pouring, typing]);

  const asks = JSON.stringify(asksOf(ticket));
  useEffect(() => {
    for (const { job, key, request } of JSON.parse(asks) as Ask[]) {
      dispatch({ do: 'start', job, key });
      void engine()
        .ask(request)
        .then((ended) => dispatch({ do: 'ended', job, key, ended }));
    }
  }, [engine, dispatch, asks]);

  return {
    open: (source) => {
      dispatch({ do: 'opening', source });
      void engine()
        .open(source)
        .then((ended) => dispatch({ do: 'opened', source, ended }));
    },
    reopen: (source) => {
      dispatch({ do: 'opening', source });
      void engine()
        .open(source)
        .then((ended) => dispatch({ do: 'reopened', source, ended }));
    },
    pick: async (ray, place) => {
      const ended = await engine().ask({ kind: 'pick', ray, place });
      return ended.how === 'answered' && ended.answer.ok ? ended.answer.value : undefined;
    },
    core: (source) => {
      const wish = sizeNow(ticket).state === 'answered' ? sizeWishOf(ticket) : undefined;
      return wish === undefined ? Promise.resolve(undefined) : engine().core(bodyWish(wish), source);
    },
    cancel: () => {
      engine().cancel();
      dispatch({ do: 'cancel' });
    },
    again: () => {
      engine().cancel();
      dispatch({ do: 'again' });
    },
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
      (engine.current ??= createEngine(spawnWorker, (kind, share) => {
        if (kind !== 'pick' && kind !== 'core')
          dispatch({ do: 'progress', job: kind === 'open' ? 'reading' : kind, share });
      })),
    [dispatch],
  );
}
