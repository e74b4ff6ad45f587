import { useEffect, useState } from 'react';
import { pictureNow, pourNow, sizeNow } from '../ticket/now';
import type { Bench } from '../ticket/useEngine';
import type { Ticket } from '../ticket/state';

/** Short work is done before it is worth a word. */
const QUIET_MS = 300;

/** What the engine is at, with its progress and the way out; after a cancel, the way back. */
export function Busy({ ticket, bench }: { ticket: Ticket; bench: Bench }) {
  const { opening } = ticket;
  const size = sizeNow(ticket);
  const isSizing = size.state === 'working' && ticket.size.state === 'running';
  const job = opening.state === 'running' ? opening : isSizing ? ticket.size : undefined;
  const shown = useHeld(job !== undefined);
  if (job !== undefined && shown) {
    return (
      <div className="busy">
        <label>
          <span>{job === opening ? 'Reading the scan' : 'Measuring'}</span>
          <progress max={1} {...(job.share === undefined ? {} : { value: job.share })} />
        </label>
        <button type="button" className="btn line" onClick={bench.cancel}>
          Cancel
        </button>
      </div>
    );
  }
  const cancelled = [size, pourNow(ticket), pictureNow(ticket)].some(({ state }) => state === 'cancelled');
  if (cancelled) {
    return (
      <div className="busy">
        <span>Measuring was cancelled. The scan and all that was typed are still here.</span>
        <button type="button" className="btn line" onClick={bench.again}>
          Measure again
        </button>
      </div>
    );
  }
  return null;
}

/** True once something has been so for QUIET_MS. */
function useHeld(is: boolean): boolean {
  const [held, setHeld] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setHeld(is), is ? QUIET_MS : 0);
    return () => clearTimeout(timer);
  }, [is]);
  return held && is;
}
