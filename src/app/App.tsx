import { useReducer } from 'react';
import { Batch } from './batch/Batch';
import { batchMarks } from './batch/marks';
import { Measure } from './measure/Measure';
import { Mold } from './mold/Mold';
import { chosenNow } from './mold/chosen';
import { moldMarks } from './mold/marks';
import { measureMarks } from './measure/marks';
import { Busy } from './parts/Busy';
import { Head } from './parts/Head';
import { Rail } from './parts/Rail';
import type { Mark } from './parts/StatusMark';
import { pourNow, sizeNow } from './ticket/now';
import { ticketReducer } from './ticket/reducer';
import { newTicket } from './ticket/state';
import { useEngine } from './ticket/useEngine';
import { cardOf } from './ticket/wishes';
import { useAskBeforeLeaving } from './ticket/useAskBeforeLeaving';
import { hasWork } from './ticket/hasWork';
import { useFileDrop } from './parts/useFileDrop';
import { useFocusKept } from './parts/useFocusKept';
import { announce } from './words/announce';
import { announceMold } from './words/announceMold';
import { announceOpening } from './words/announceOpening';
import { worstMark } from './words/statuses';

export function App() {
  const [ticket, dispatch] = useReducer(ticketReducer, undefined, newTicket);
  const bench = useEngine(ticket, dispatch);
  useFocusKept();
  useFileDrop(bench.open);
  useAskBeforeLeaving(hasWork(ticket));
  const steps = [
    {
      id: 'measure',
      name: 'Measure',
      mark: stepMark(sizeNow(ticket).state === 'answered', measureMarks(ticket)),
    },
    {
      id: 'mold',
      name: 'Mold',
      mark: stepMark(chosenNow(ticket).state === 'answered', moldMarks(ticket)),
    },
    {
      id: 'batch',
      name: 'Batch',
      mark: stepMark(pourNow(ticket).state === 'answered', Object.values(batchMarks(ticket, cardOf(ticket)))),
    },
  ];
  return (
    <>
      <a className="skip" href="#measure">
        Skip to the ticket
      </a>
      <div className="page">
        <Rail steps={steps} />
        <main className="ticket">
          <Head ticket={ticket} />
          <Busy ticket={ticket} bench={bench} />
          <Measure ticket={ticket} dispatch={dispatch} bench={bench} />
          <Mold ticket={ticket} dispatch={dispatch} bench={bench} />
          <Batch ticket={ticket} dispatch={dispatch} bench={bench} />
        </main>
      </div>
      <footer className="foot">
        <p>Risewright {__APP_VERSION__}</p>
        <p>Nothing leaves this device.</p>
      </footer>
      <p className="sr" role="status" aria-live="polite">
        {announce(ticket)}
      </p>
      <div className="sr" role="status" aria-live="polite">
        {announceMold(ticket)}
      </div>
      <div className="sr" role="status" aria-live="polite">
        {announceOpening(ticket)}
      </div>
    </>
  );
}

/** A step with no answer is open, unless something stops it. */
function stepMark(answered: boolean, marks: readonly Mark[]): Mark {
  if (marks.includes('stop')) return 'stop';
  return answered ? worstMark(marks) : 'open';
}
