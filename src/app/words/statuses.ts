import type { Problem, Status } from '../../problem';
import { isWorse } from '../../words/statusWords';
import type { Mark } from '../parts/StatusMark';

/** A section is as good as the worst of its rows. */
export const worstOf = (statuses: readonly Status[]): Status =>
  statuses.reduce<Status>((worst, status) => (isWorse(status, worst) ? status : worst), 'fine');

export const worstFinding = (findings: readonly Problem[]): Status =>
  worstOf(findings.map(({ status }) => status));

/** The same where some have nothing to say yet: they do not count, unless nobody has. */
export function worstMark(marks: readonly Mark[]): Mark {
  const said = marks.filter((mark) => mark !== 'open');
  return said.length === 0 ? 'open' : worstOf(said);
}
