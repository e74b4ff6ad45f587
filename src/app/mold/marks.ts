import type { Mark } from '../parts/StatusMark';
import { fieldMark } from '../ticket/fieldMark';
import { textOf, type FieldName } from '../ticket/fields';
import { readKitsText } from '../ticket/kits';
import {
  CASTING_FIELDS,
  CORE_FIELDS,
  FACT_FIELDS,
  FINISH_FIELDS,
  holdFields,
  SILICONE_FIELDS,
  typeFields,
} from '../ticket/moldWishes';
import { typeOf } from '../ticket/moldState';
import { openingMark } from '../opening/openingMark';
import { castingNow, filledNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { worstFinding, worstMark } from '../words/statuses';
import { chosenNow } from './chosen';
import { fieldOfMold } from './fieldProblem';
import { findingsOf, type Part } from './findings';

/** The marks of the questions of Mold, in their order: each the worst of what stands in its section. */
export function moldMarks(ticket: Ticket): Mark[] {
  const { molding } = ticket;
  const now = chosenNow(ticket);
  const mold = now.answer;
  const at = now.problem === undefined ? undefined : fieldOfMold(ticket, now.problem);
  const byFields = (names: readonly FieldName[]): Mark[] => [
    ...names.map((name) => fieldMark(name, textOf(ticket.fields, name))),
    names.some((name) => name === at) ? 'stop' : 'open',
  ];
  const found = (part: Part): Mark => (mold === undefined ? 'open' : worstFinding(findingsOf(mold, part)));
  const isAssumed = mold !== undefined && molding.type === undefined;
  const kits: Mark = at === 'kits' || !readKitsText(molding.kits).ok ? 'stop' : 'open';
  return [
    worstMark([
      now.state === 'refused' ? 'stop' : now.state === 'failed' ? 'unknown' : 'open',
      mold === undefined ? 'open' : isAssumed ? 'look' : 'fine',
      ...byFields(typeFields(typeOf(molding))),
    ]),
    worstMark([found('hold'), ...byFields(holdFields(molding))]),
    worstMark([found('silicone'), kits, ...byFields(SILICONE_FIELDS)]),
    worstMark([found('bear'), ...byFields(FACT_FIELDS)]),
    worstMark([cavityMark(ticket), filledMark(ticket), ...byFields([...CASTING_FIELDS, ...CORE_FIELDS])]),
    worstMark([mold === undefined ? 'open' : 'fine', ...byFields(FINISH_FIELDS)]),
    openingMark(ticket),
  ];
}

const filledMark = (ticket: Ticket): Mark => (filledNow(ticket).state === 'refused' ? 'stop' : 'open');

function cavityMark(ticket: Ticket): Mark {
  const { state, answer } = castingNow(ticket);
  if (answer !== undefined) return worstFinding(answer.findings);
  return state === 'refused' ? 'stop' : state === 'failed' ? 'unknown' : 'open';
}
