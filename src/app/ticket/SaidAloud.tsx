import type { Saving } from '../../store';
import { announce } from '../words/announce';
import { announceMold } from '../words/announceMold';
import { announceOpening } from '../words/announceOpening';
import type { Ticket } from './state';

/** What a screen reader is told when something has an answer; the focus stays where it is. */
export function SaidAloud({ ticket, saving }: { ticket: Ticket; saving: Saving }) {
  return (
    <>
      <p className="sr" role="status" aria-live="polite">
        {announce(ticket)}
      </p>
      <div className="sr" role="status" aria-live="polite">
        {announceMold(ticket)}
      </div>
      <div className="sr" role="status" aria-live="polite">
        {announceOpening(ticket)}
      </div>
      <div className="sr" role="alert">
        {saving.state === 'failed' ? 'The last change is not kept.' : ''}
      </div>
    </>
  );
}
