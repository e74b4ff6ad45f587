import { FIELD_NAMES, textOf } from './fields';
import type { Ticket } from './state';

/** There is something on the ticket that a closed page would lose: nothing is kept yet. */
export const hasWork = ({ scan, fields }: Ticket): boolean =>
  scan !== undefined || FIELD_NAMES.some((name) => textOf(fields, name).text.trim() !== '');
