import type { Outcome, Problem } from '../../problem';
import type { FoamCard } from '../../yield';
import { pourNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { isCovered, isToldElsewhere } from './findings';
import { reversedFrom } from './reversed';

/** What is told by the fields of Batch: why there is no card, no pour or no part of it, and a ratio that looks turned round. */
export function batchProblems(ticket: Ticket, card: Outcome<FoamCard> | undefined): Problem[] {
  const pour = pourNow(ticket);
  const all = [
    card?.ok === false ? card.problem : undefined,
    pour.problem,
    ...Object.values(pour.answer?.refused ?? {}),
    reversedFrom(ticket, card),
  ];
  return all.filter((problem) => problem !== undefined);
}

/** All that was found of the pour as it stands; undefined while there is none. */
export function batchFindings(ticket: Ticket, card: Outcome<FoamCard> | undefined): Problem[] | undefined {
  const pour = pourNow(ticket).answer;
  if (pour === undefined) return undefined;
  const reversed = reversedFrom(ticket, card);
  return reversed === undefined ? pour.findings : [reversed, ...pour.findings];
}

/** The rows of the last table: every check, and of the findings those that neither a check nor a question tells already. */
export function batchChecks(ticket: Ticket, card: Outcome<FoamCard> | undefined): Problem[] | undefined {
  const findings = batchFindings(ticket, card);
  const checks = pourNow(ticket).answer?.checks;
  if (findings === undefined || checks === undefined) return undefined;
  return [...checks, ...findings.filter((one) => !isCovered(one, checks) && !isToldElsewhere(one))];
}
