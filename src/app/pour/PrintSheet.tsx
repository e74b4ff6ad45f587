import { pourSheet } from '../../sheet';
import type { BatchProps } from '../batch/batchProps';
import type { PourOnPage } from '../../worker/pour';
import { pourToldNow, sizeNow } from '../ticket/now';
import { openToPrint } from '../parts/openToPrint';
import type { Ticket } from '../ticket/state';

/** One page for the hand, in a window of its own, from where it is printed. Nothing of before is ever printed. */
export function PrintSheet({ ticket, pour: { answer } }: Pick<BatchProps, 'ticket' | 'pour'>) {
  return (
    <button
      type="button"
      className="btn"
      disabled={answer === undefined}
      onClick={() => answer !== undefined && openToPrint(sheetOf(ticket, answer))}
    >
      Print the pour sheet
    </button>
  );
}

/** The sheet of the pour as it stands, with what stops it. */
function sheetOf(ticket: Ticket, pour: PourOnPage): string {
  const { scan, foam, today } = ticket;
  const told = pourToldNow(ticket);
  return pourSheet(pour, {
    ...(scan === undefined ? {} : { title: scan.source.name }),
    ...(foam.name.trim() === '' ? {} : { foam: foam.name.trim() }),
    version: __APP_VERSION__,
    date: today,
    findings: [...(sizeNow(ticket).answer?.size.findings ?? []), ...Object.values(pour.refused)],
    ...(told === undefined ? {} : { told }),
  });
}
