import type { Problem } from '../problem';
import type { Show } from '../units';
import { say } from '../words/say';
import { STATUS_WORDS } from '../words/statusWords';

/** A finding for a person, on one line; what is not checked says so once, at its head. */
export function findingLine(problem: Problem, show: Show): string {
  const { text, hint } = say(problem, show);
  const told = problem.status === 'unknown' ? text.replace(/^Not checked:? /, '') : text;
  return `  ${STATUS_WORDS[problem.status].padEnd(11)} ${told} ${hint}`;
}
