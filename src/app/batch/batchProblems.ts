import type { Outcome, Problem } from '../../problem';
import type { FoamCard } from '../../yield';
import { pourNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { reversedFrom } from './reversed';

/** What is told by the fields of Batch: why there is no card or no pour, and a ratio that looks turned round. */
export function batchProblems(ticket: Ticket, card: Outcome<FoamCard> | undefined): Problem[] {
  const all = [
    card?.ok === false ? card.problem : undefined,
    pourNow(ticket).problem,
    reversedFrom(ticket, card),
  ];
  return all.filter((problem) => problem !== undefined);
}

/** The checks of the batch as it stands; undefined while there is no batch to check. */
export function batchChecks(ticket: Ticket, card: Outcome<FoamCard> | undefined): Problem[] | undefined {
  const batch = pourNow(ticket).answer?.batch;
  if (batch === undefined) return undefined;
  const reversed = reversedFrom(ticket, card);
  return reversed === undefined ? batch.findings : [reversed, ...batch.findings];
}
