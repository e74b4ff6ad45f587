import { useEffect, useState } from 'react';
import type { Step } from '../route';
import { moldNow, pictureNow, pourNow, sizeNow } from '../ticket/now';
import type { Bench } from '../ticket/useEngine';
import type { Ticket } from '../ticket/state';

/** Short work is done before it is worth a word. */
const QUIET_MS = 300;

/** What the engine is at, with its progress and the way out; after a cancel, the way back. */
export function Busy({ ticket, bench, at }: { ticket: Ticket; bench: Bench; at: Step }) {
  const { reading } = ticket;
  const size = sizeNow(ticket);
  const isSizing = size.state === 'working' && ticket.size.state === 'running';
  // Elsewhere nobody waits for the molds.
  const isMolding = at === 'mold' && moldNow(ticket).state === 'working' && ticket.mold.state === 'running';
  const job =
    reading.state === 'running' ? reading : isSizing ? ticket.size : isMolding ? ticket.mold : undefined;
  const shown = useHeld(job !== undefined);
  if (job !== undefined && shown) {
    const bar = <Bar what={words(ticket, job)} job={job} onCancel={bench.cancel} />;
    // Once there is a ticket to work on, the bar lies over the page and moves nothing: on a slow machine a measure takes seconds too.
    return job === reading ? bar : <div className="over">{bar}</div>;
  }
  const cancelled = [size, pourNow(ticket), pictureNow(ticket), moldNow(ticket)].some(
    ({ state }) => state === 'cancelled',
  );
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

type Running = Pick<Ticket['reading'], 'state' | 'share'>;

const words = ({ reading, mold }: Ticket, job: Running): string =>
  job === reading ? 'Reading the scan' : job === mold ? 'Working out the molds' : 'Measuring';

function Bar({ what, job, onCancel }: { what: string; job: Running; onCancel: () => void }) {
  return (
    <div className="busy">
      <label>
        <span>{what}</span>
        <progress max={1} {...(job.share === undefined ? {} : { value: job.share })} />
      </label>
      <button type="button" className="btn line" onClick={onCancel}>
        Cancel
      </button>
    </div>
  );
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
