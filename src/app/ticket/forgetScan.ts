import { textOf, type FieldName, type Fields } from './fields';
import { MADE_FIELDS } from './madeFields';
import { FACTS_OF_SCAN } from './moldState';
import { OPENING_FIELDS_OF_SCAN } from './openingFields';
import { POUR_FIELDS_OF_SCAN } from './pourFields';
import { POUR_FACTS_OF_SCAN } from './pourState';
import { newTicket, type Ticket } from './state';

/** The ticket without what was said of its scan; foam, silicone and the shop's figures stay. */
export function forgetScan(ticket: Ticket): Ticket {
  const { up, scaleWay, along, fileUnit, cut, keep, measuring, fields, venting } = newTicket();
  return {
    ...ticket,
    up,
    scaleWay,
    along,
    fileUnit,
    cut,
    keep,
    measuring,
    venting,
    fields: {
      ...ticket.fields,
      ...(Object.fromEntries(FIELDS_OF_SCAN.map((name) => [name, textOf(fields, name)])) as Partial<Fields>),
    } as Fields,
    molding: {
      ...ticket.molding,
      facts: {
        ...ticket.molding.facts,
        ...Object.fromEntries(FACTS_OF_SCAN.map((fact) => [fact, ''])),
      },
    },
    pouring: {
      ...ticket.pouring,
      facts: {
        ...ticket.pouring.facts,
        ...Object.fromEntries(POUR_FACTS_OF_SCAN.map((fact) => [fact, ''])),
      },
      readyFor: '',
    },
  };
}

const FIELDS_OF_SCAN: readonly FieldName[] = [
  'tape',
  'checkLength',
  'cutHeight',
  'sculptMass',
  'measuredShrink',
  'barrierDry',
  'bondFace',
  ...POUR_FIELDS_OF_SCAN,
  ...OPENING_FIELDS_OF_SCAN,
  ...[...MADE_FIELDS].filter(([, { isOfScan }]) => isOfScan).map(([name]) => name),
];
