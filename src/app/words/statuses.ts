import type { Problem, Status } from '../../problem';
import type { Mark } from '../parts/StatusMark';

const RANK: readonly Status[] = ['fine', 'unknown', 'look', 'stop'];

/** A section is as good as the worst of its rows. */
export const worstOf = (statuses: readonly Status[]): Status =>
  statuses.reduce<Status>(
    (worst, status) => (RANK.indexOf(status) > RANK.indexOf(worst) ? status : worst),
    'fine',
  );

export const worstFinding = (findings: readonly Problem[]): Status =>
  worstOf(findings.map(({ status }) => status));

/** The same where some have nothing to say yet: they do not count, unless nobody has. */
export function worstMark(marks: readonly Mark[]): Mark {
  const said = marks.filter((mark) => mark !== 'open');
  return said.length === 0 ? 'open' : worstOf(said);
}
