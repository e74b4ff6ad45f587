import { useReducer } from 'react';
import { Batch } from './batch/Batch';
import { batchMarks } from './batch/marks';
import { Measure } from './measure/Measure';
import { measureMarks } from './measure/marks';
import { Busy } from './parts/Busy';
import { Head } from './parts/Head';
import { Rail } from './parts/Rail';
import type { Mark } from './parts/StatusMark';
import { ticketReducer } from './ticket/reducer';
import { newTicket } from './ticket/state';
import { useEngine } from './ticket/useEngine';
import { cardOf } from './ticket/wishes';
import { announce } from './words/announce';
import { worstOf } from './words/statuses';

export function App() {
  const [ticket, dispatch] = useReducer(ticketReducer, undefined, newTicket);
  const bench = useEngine(ticket, dispatch);
  const steps = [
    {
      id: 'measure',
      name: 'Measure',
      mark: stepMark(ticket.size.answer !== undefined, measureMarks(ticket)),
    },
    {
      id: 'batch',
      name: 'Batch',
      mark: stepMark(ticket.pour.answer !== undefined, batchMarks(ticket, cardOf(ticket))),
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
          <Batch ticket={ticket} dispatch={dispatch} />
        </main>
      </div>
      <footer className="foot">
        <p>Risewright {__APP_VERSION__}</p>
        <p>Nothing leaves this device.</p>
      </footer>
      <p className="sr" role="status" aria-live="polite">
        {announce(ticket)}
      </p>
    </>
  );
}

/** A step with no answer is open, unless something stops it. */
function stepMark(answered: boolean, marks: readonly Mark[]): Mark {
  const said = marks.filter((mark) => mark !== 'open');
  if (said.includes('stop')) return 'stop';
  return answered ? worstOf(said) : 'open';
}
