import type { Problem } from '../../problem';
import { fillAgainst } from '../../yield';
import type { Mark } from '../parts/StatusMark';
import { fieldMark } from '../ticket/fieldMark';
import { textOf } from '../ticket/fields';
import { fillNow, sculptNow, sizeNow, volumeNow } from '../ticket/now';
import { secondByOf } from '../ticket/scaleWishes';
import type { Ticket } from '../ticket/state';
import { fieldsOfWay, isFillSaid } from '../ticket/wayReads';
import { worstFinding, worstMark } from '../words/statuses';
import { halfShare, WIDE_SHARE } from '../words/wayWords';
import { plasterJacket, soakingSurface } from './wayHazards';

/** About how large the file is, which is no fault of the scan. */
export const isAboutScale = ({ code }: Problem): boolean =>
  code === 'SCALE_UNKNOWN' || code === 'SCALE_UNREACHED';

/** The marks of the questions of Measure, in their order: each the worst of what stands in its section; then those of the way in and of the volume. Those of a scan are left out where none is looked for. */
export function measureMarks(ticket: Ticket): Mark[] {
  const ways = [wayMark(ticket), volumeMark(ticket)];
  if (!isScanAsked(ticket)) return ways;
  const up: Mark = ticket.up.confirmed ? 'fine' : 'look';
  return [scanMark(ticket), up, unitMark(ticket), cutMark(ticket), soundMark(ticket), ...ways];
}

/** The questions of a scan stand on the page: there is one, or it is the way in. */
export const isScanAsked = ({ scan, sizing }: Ticket): boolean => scan !== undefined || sizing.way === 'scan';

/** Of the ways in without a scan: nothing to say while a scan alone is asked for. */
function wayMark(ticket: Ticket): Mark {
  const { way, sunk } = ticket.sizing;
  const fill = fillNow(ticket);
  const sculpt = way === 'displace' || way === 'tape' ? sculptNow(ticket) : undefined;
  const said = [fill, ...(sculpt === undefined ? [] : [sculpt])];
  const isFilled = way === 'fill' || isFillSaid(ticket);
  return worstMark([
    ...fieldsOfWay(ticket).map((name) => fieldMark(name, textOf(ticket.fields, name))),
    said.some(({ state }) => state === 'refused') ? 'stop' : 'open',
    said.some(({ state }) => state === 'answered') ? 'fine' : 'open',
    isFilled && plasterJacket(ticket) !== undefined ? 'stop' : 'open',
    way === 'displace' && sunk !== 'rice' && soakingSurface(ticket) !== undefined ? 'stop' : 'open',
  ]);
}

/** A volume is as good as the scan that it is of; by another way, as its range is narrow and mold and sculpt agree. */
function volumeMark(ticket: Ticket): Mark {
  const known = volumeNow(ticket).answer;
  const beside = besideMark(ticket);
  if (known === undefined || known.by === 'scan') {
    const isOtherWay = ticket.sizing.way === 'displace' || ticket.sizing.way === 'tape';
    const sound = isOtherWay ? 'open' : soundMark(ticket);
    return known === undefined ? sound : worstMark([sound, ticket.up.confirmed ? 'fine' : 'look', beside]);
  }
  return worstMark([halfShare(known.volumeCm3) > WIDE_SHARE ? 'look' : 'fine', beside]);
}

function besideMark(ticket: Ticket): Mark {
  const [fill, sculpt] = [fillNow(ticket).answer, sculptNow(ticket).answer];
  if (fill === undefined || sculpt === undefined) return 'open';
  return fillAgainst(sculpt.volumeCm3, fill.volumeCm3).isFar ? 'look' : 'fine';
}

function scanMark({ scan, reading }: Ticket): Mark {
  if (reading.problem !== undefined || reading.state === 'failed')
    return scan === undefined ? 'stop' : 'look';
  return scan === undefined || reading.state === 'running' ? 'open' : 'fine';
}

function unitMark(ticket: Ticket): Mark {
  const { answer, problem } = sizeNow(ticket);
  const field = worstMark([
    ticket.scaleWay === 'tape' ? fieldMark('tape', ticket.fields.tape) : 'open',
    secondByOf(ticket) === undefined ? 'open' : fieldMark('checkLength', ticket.fields.checkLength),
  ]);
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
