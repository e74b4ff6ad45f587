import type { Problem } from '../problem';
import type { Show } from '../units';
import { say } from '../words/say';

/** More Stops than these are counted: with any of them nobody goes on. */
const MOST_STOPS = 2;

/** The Stops among findings in words, each once and the first few in full; nothing where there is none. */
export function stopWords(findings: readonly Problem[], show: Show): string {
  const stops = [
    ...new Set(findings.filter(({ status }) => status === 'stop').map((one) => say(one, show).text)),
  ];
  const more = stops.length - MOST_STOPS;
  return `${stops.slice(0, MOST_STOPS).join(' ')}${more > 0 ? ` And ${more} more.` : ''}`;
}
