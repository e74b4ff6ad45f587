import { worstFinding, worstMark } from '../words/statuses';
import type { Mark } from '../parts/StatusMark';
import { fieldMark } from '../ticket/fieldMark';
import { textOf } from '../ticket/fields';
import { openingNow } from '../ticket/now';
import { halfPlaces, openingFields } from '../ticket/openingWishes';
import type { Ticket } from '../ticket/state';

/** The worst of what stands in the question of opening and vents. */
export function openingMark(ticket: Ticket): Mark {
  const { state, answer } = openingNow(ticket);
  return worstMark([
    ...openingFields(ticket).map((name) => fieldMark(name, textOf(ticket.fields, name))),
    halfPlaces(ticket).length > 0 || state === 'refused' ? 'stop' : state === 'failed' ? 'unknown' : 'open',
    answer === undefined ? 'open' : worstFinding([...answer.findings, ...answer.checks]),
  ]);
}
