import { openingNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { fillSentence, stretchSentence } from './openingPhrases';
import { sayOnPage } from './sayOnPage';

/** Opening and way out as a screen reader is told: it comes last. Never a number of before. */
export function announceOpening(ticket: Ticket): string {
  const { answer, problem } = openingNow(ticket);
  if (problem !== undefined) return sayOnPage(problem).text;
  return answer === undefined ? '' : `${fillSentence(answer)}; ${stretchSentence(answer)}.`;
}
