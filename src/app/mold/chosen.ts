import type { Mold } from '../../plan';
import { moldNow, type Said } from '../ticket/now';
import { typeOf } from '../ticket/moldState';
import type { Ticket } from '../ticket/state';

/** What holds for the chosen type as the ticket stands: its mold, or why there is none. */
export function chosenNow(ticket: Ticket): Said<Mold> {
  const now = moldNow(ticket);
  if (now.state !== 'answered') return now as Said<never>;
  const mold = now.answer.find(({ type }) => type === typeOf(ticket.molding).key)?.mold;
  if (mold === undefined) return { state: 'working' };
  return mold.ok ? { state: 'answered', answer: mold.value } : { state: 'refused', problem: mold.problem };
}

/** The mold of before while another is worked out: for cautions, which must not blink. No number of it is shown. */
export function heldMold(ticket: Ticket): Mold | undefined {
  const molds = ticket.mold.answer ?? ticket.mold.before;
  const mold = molds?.find(({ type }) => type === typeOf(ticket.molding).key)?.mold;
  return mold?.ok === true ? mold.value : undefined;
}
