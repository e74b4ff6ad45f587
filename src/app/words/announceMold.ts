import { chosenNow } from '../mold/chosen';
import { typeOf } from '../ticket/moldState';
import type { Ticket } from '../ticket/state';
import { totalKg } from './moldFigures';
import { sayOnPage } from './sayOnPage';

/** The mold as a screen reader is told, apart from volume and grams: it comes seconds after them. Never a number of before. */
export function announceMold(ticket: Ticket): string {
  const { title } = typeOf(ticket.molding);
  const { answer, problem } = chosenNow(ticket);
  if (problem !== undefined) return `${title}: ${sayOnPage(problem).text}`;
  return answer === undefined ? '' : `${title}: ${totalKg(answer).value} kilograms of silicone.`;
}
