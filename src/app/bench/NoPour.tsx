import { Complaint } from '../parts/Complaint';
import { Link } from '../parts/Link';
import { Working } from '../parts/Working';
import { pourNow, sizeNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { cardOf } from '../ticket/wishes';
import type { ReadyProps } from './benchProps';

/** No grams to pour by: what is missing for them, and the way back to where it is said. */
export function NoPour({ ticket, nav, piece, onWeigh, isInHand }: ReadyProps) {
  const { problem, state } = pourNow(ticket);
  if (isInHand && (state === 'working' || isReading(ticket)))
    return (
      <p className="why lead" role="status">
        <Working what="the grams" />
      </p>
    );
  return (
    <>
      {problem !== undefined && <Complaint problem={problem} />}
      <p className="why lead">{isInHand ? missingWords(ticket) : 'Another casting is in hand by now.'}</p>
      <p>
        <Link nav={nav} to={{ at: 'batch', piece: piece.id }} className="btn">
          Back to Batch
        </Link>
      </p>
      <p>
        <button type="button" className="act" onClick={onWeigh}>
          Weigh back without the clock
        </button>
      </p>
    </>
  );
}

/** Its scan is read again after a reload, and then measured. */
const isReading = ({ scanId, scan, reading }: Ticket): boolean =>
  reading.state === 'running' || (scanId !== undefined && scan === undefined && reading.state === 'idle');

function missingWords(ticket: Ticket): string {
  const card = cardOf(ticket);
  const missing = [
    ...(sizeNow(ticket).state === 'answered' ? [] : ['the volume from Measure']),
    ...(card === undefined ? ['a foam'] : card.ok ? [] : ['a foam card without a mistake']),
  ];
  return missing.length === 0
    ? 'No grams yet: Batch says why.'
    : `No grams yet. Still missing: ${missing.join(' and ')}.`;
}
