import type { Problem } from '../../problem';
import type { Mark } from '../parts/StatusMark';
import type { Ticket } from '../ticket/state';
import { worstFinding } from '../words/statuses';

export const isAboutScale = ({ code }: Problem): boolean =>
  code === 'SCALE_UNKNOWN' || code === 'SCALE_UNREACHED';

/** The marks of the questions of Measure, in their order. */
export function measureMarks({ scan, opening, up, size, cut }: Ticket): Mark[] {
  const { answer, problem } = size;
  const findings = answer?.size.findings ?? [];
  const isCut = (code: Problem['code']): boolean => code === 'FLOOR_FOUND' || code === 'CUT_AWAY';
  const scale = findings.filter(({ code }) => code === 'UNITS_SUSPECT');
  return [
    opening.problem !== undefined
      ? scan === undefined
        ? 'stop'
        : 'look'
      : scan === undefined
        ? 'open'
        : 'fine',
    up.confirmed ? 'fine' : 'look',
    answer !== undefined
      ? worstFinding(scale)
      : problem?.code === 'SCALE_UNREACHED'
        ? 'stop'
        : problem === undefined
          ? 'open'
          : 'unknown',
    problem?.code === 'CUT_EMPTY'
      ? 'stop'
      : answer === undefined
        ? 'open'
        : cut !== undefined && answer.cut === undefined
          ? 'look'
          : worstFinding(findings.filter(({ code }) => isCut(code))),
    answer !== undefined
      ? worstFinding(findings)
      : problem === undefined || isAboutScale(problem)
        ? 'open'
        : 'stop',
    answer !== undefined
      ? up.confirmed
        ? 'fine'
        : 'look'
      : problem === undefined || isAboutScale(problem)
        ? 'open'
        : 'stop',
  ];
}
