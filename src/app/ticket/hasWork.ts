import { FIELDS, type FieldName } from './fields';
import type { Ticket } from './state';

/** There is something on the ticket that a closed page would lose: nothing is kept yet. */
export const hasWork = ({ scan, fields }: Ticket): boolean =>
  scan !== undefined || (Object.keys(FIELDS) as FieldName[]).some((name) => fields[name].text.trim() !== '');
