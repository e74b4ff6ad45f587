import type { Problem } from '../problem';
import type { Show } from '../units';
import { say } from '../words/say';
import { STATUS_WORDS } from '../words/statusWords';

/** A finding for a person, on one line. */
export function findingLine(problem: Problem, show: Show): string {
  const { text, hint } = say(problem, show);
  return `  ${STATUS_WORDS[problem.status].padEnd(11)} ${text} ${hint}`;
}
