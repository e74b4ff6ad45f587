import type { Problem, Status } from '../../problem';

const RANK: readonly Status[] = ['fine', 'unknown', 'look', 'stop'];

/** A section is as good as the worst of its rows. */
export const worstOf = (statuses: readonly Status[]): Status =>
  statuses.reduce<Status>(
    (worst, status) => (RANK.indexOf(status) > RANK.indexOf(worst) ? status : worst),
    'fine',
  );

export const worstFinding = (findings: readonly Problem[]): Status =>
  worstOf(findings.map(({ status }) => status));
