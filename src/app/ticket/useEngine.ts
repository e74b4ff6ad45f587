import { useCallback, useEffect, useRef, type Dispatch } from 'react';
import { createEngine, type Ended, type Engine, type ScanSource } from '../../worker/engine';
import type { Answers } from '../../worker/protocol';
import { asksOf, type Ask } from './asks';
import type { Action, JobName } from './reducer';
import type { Ticket } from './state';

const TYPING_MS = 200;

const spawnWorker = (): Worker =>
  new Worker(new URL('../../worker/engine.worker.ts', import.meta.url), { type: 'module' });

export interface Bench {
  open: (source: ScanSource) => void;
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
      void asked(engine(), request).then((ended) => dispatch({ do: 'ended', job, key, ended }));
    }
  }, [engine, dispatch, asks]);

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
    again: () => {
      engine().cancel();
      dispatch({ do: 'again' });
    },
  };
}

function asked(engine: Engine, request: Ask['request']): Promise<Ended<Answers[JobName]>> {
  switch (request.kind) {
    case 'size':
      return engine.size(request.wish);
    case 'mold':
      return engine.mold(request.wish, request.ask);
    case 'opening':
      return engine.opening(request.wish, request.ask);
    case 'bestUp':
      return engine.bestUp(request.wish, request.ask);
    case 'pour':
      return engine.pour(request.ask);
    case 'picture':
      return engine.picture(request.place);
  }
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
      (engine.current ??= createEngine(spawnWorker, (kind, share) =>
        dispatch({ do: 'progress', job: kind === 'open' ? 'reading' : kind, share }),
      )),
    [dispatch],
  );
}
