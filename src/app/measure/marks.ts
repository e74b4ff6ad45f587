import type { Problem } from '../../problem';
import type { Mark } from '../parts/StatusMark';
import { fieldMark } from '../ticket/fieldMark';
import { sizeNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { worstFinding, worstMark } from '../words/statuses';

/** About how large the file is, which is no fault of the scan. */
export const isAboutScale = ({ code }: Problem): boolean =>
  code === 'SCALE_UNKNOWN' || code === 'SCALE_UNREACHED';

/** The marks of the questions of Measure, in their order: each the worst of what stands in its section. */
export function measureMarks(ticket: Ticket): Mark[] {
  const up: Mark = ticket.up.confirmed ? 'fine' : 'look';
  const sound = soundMark(ticket);
  const volume = sizeNow(ticket).state === 'answered' ? worstMark([sound, up]) : sound;
  return [scanMark(ticket), up, unitMark(ticket), cutMark(ticket), sound, volume];
}

function scanMark({ scan, reading }: Ticket): Mark {
  if (reading.problem !== undefined || reading.state === 'failed')
    return scan === undefined ? 'stop' : 'look';
  return scan === undefined || reading.state === 'running' ? 'open' : 'fine';
}

function unitMark(ticket: Ticket): Mark {
  const { answer, problem } = sizeNow(ticket);
  const field = ticket.scaleWay === 'tape' ? fieldMark('tape', ticket.fields.tape) : 'open';
  if (problem?.code === 'SCALE_UNREACHED') return 'stop';
  if (problem?.code === 'SCALE_UNKNOWN') return worstMark(['unknown', field]);
  return worstMark([
    answer === undefined ? 'open' : worstOfCodes(answer.size.findings, 'UNITS_SUSPECT'),
    field,
  ]);
}

function cutMark(ticket: Ticket): Mark {
  const size = sizeNow(ticket);
  const field = fieldMark('cutHeight', ticket.fields.cutHeight);
  if (size.state === 'unread' && size.field === 'cutHeight') return worstMark(['look', field]);
  if (size.problem?.code === 'CUT_EMPTY') return 'stop';
  const found = size.answer?.size.findings;
  return worstMark([found === undefined ? 'open' : worstOfCodes(found, 'FLOOR_FOUND', 'CUT_AWAY'), field]);
}

function soundMark(ticket: Ticket): Mark {
  const { state, answer, problem } = sizeNow(ticket);
  if (answer !== undefined) return worstFinding(answer.size.findings);
  if (state === 'failed') return 'unknown';
  return problem === undefined || isAboutScale(problem) ? 'open' : 'stop';
}

const worstOfCodes = (findings: readonly Problem[], ...codes: Problem['code'][]): Mark =>
  worstFinding(findings.filter(({ code }) => codes.includes(code)));
