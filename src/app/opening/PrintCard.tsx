import type { OpeningPlan } from '../../plan';
import { openingCard } from '../../sheet';
import { PrintButton } from '../parts/PrintButton';
import { sizeNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';

/** The place card of the plan as it stands, with what stops it. Nothing of before is ever printed. */
export function PrintCard({ ticket, plan }: { ticket: Ticket; plan: OpeningPlan | undefined }) {
  return (
    <PrintButton html={plan === undefined ? undefined : () => cardOf(ticket, plan)}>
      Print the place card
    </PrintButton>
  );
}

const cardOf = (ticket: Ticket, plan: OpeningPlan): string =>
  openingCard(plan, {
    ...(ticket.scan === undefined ? {} : { title: ticket.scan.source.name }),
    version: __APP_VERSION__,
    date: ticket.today,
    findings: sizeNow(ticket).answer?.size.findings ?? [],
  });
