import type { Dispatch } from 'react';
import type { History } from '../ticket/history';
import type { Action } from '../ticket/reducer';
import { stepWords } from '../words/stepWords';

/** Takes back the last thing that was done, named; and does it again. */
export function UndoButtons({ history, dispatch }: { history: History; dispatch: Dispatch<Action> }) {
  const last = history.past.at(-1);
  const next = history.future.at(-1);
  return (
    <>
      {last !== undefined && (
        <button type="button" className="act" onClick={() => dispatch({ do: 'undo' })}>
          Undo: {stepWords(last.what)}
        </button>
      )}
      {next !== undefined && (
        <button type="button" className="act" onClick={() => dispatch({ do: 'redo' })}>
          Redo: {stepWords(next.what)}
        </button>
      )}
    </>
  );
}
