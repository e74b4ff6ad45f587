import type { Outcome } from '../../problem';
import type { FoamCard } from '../../yield';
import { measureMarks } from '../measure/marks';
import type { Mark } from '../parts/StatusMark';
import { fieldMark } from '../ticket/fieldMark';
import { textOf, type FieldName } from '../ticket/fields';
import { pourNow } from '../ticket/now';
import { readPastText } from '../ticket/past';
import { valueIn } from '../ticket/readField';
import { fieldsOfPart } from '../ticket/pourWishes';
import type { Ticket } from '../ticket/state';
import { FOAM_FIELDS, LOSS_FIELDS } from '../ticket/wishes';
import { worstFinding, worstMark } from '../words/statuses';
import { batchChecks, batchFindings, batchProblems } from './batchProblems';
import { fieldOf } from './fieldProblem';
import { pourMarks } from '../pour/marks';

/** The questions of Batch, in their order on the page. */
export const BATCH_QUESTIONS = [
  'foam',
  'pack',
  'losses',
  'day',
  'weigh',
  'short',
  'cups',
  'warm',
  'forces',
  'times',
  'colors',
  'ready',
  'bench',
] as const;
export type BatchQuestion = (typeof BATCH_QUESTIONS)[number];

/** The mark of each question of Batch: the worst of what stands in its section. */
export function batchMarks(ticket: Ticket, card: Outcome<FoamCard> | undefined): Record<BatchQuestion, Mark> {
  const pour = pourNow(ticket);
  const findings = batchFindings(ticket, card);
  const only = (...codes: string[]): Mark =>
    findings === undefined ? 'open' : worstFinding(findings.filter(({ code }) => codes.includes(code)));
  const assumed = (...names: string[]): Mark =>
    pour.answer?.batch.assumptions.some(({ name }) => names.includes(name)) === true ? 'look' : 'open';
  const problems = batchProblems(ticket, card);
  const byFields = (names: readonly FieldName[]): Mark[] => [
    ...names.map((name) => fieldMark(name, textOf(ticket.fields, name))),
    ...problems
      .filter((problem) => names.some((name) => name === fieldOf(problem)))
      .map(({ status }) => status),
  ];
  const checks = batchChecks(ticket, card);
  const ofPour = pourMarks(pour.answer, only);
  const part = (name: keyof typeof ofPour): Mark =>
    worstMark([ofPour[name], ...byFields(fieldsOfPart(ticket, name))]);
  return {
    foam: worstMark([
      card?.ok === true ? 'fine' : 'open',
      only('NO_CUP_TEST', 'MIN_FILL_BELOW_FREE_RISE'),
      ...byFields(FOAM_FIELDS),
    ]),
    pack: worstMark([
      only('PACK_UNUSUAL', 'SHORT_FILL_LIKELY', 'MIN_FILL_UNKNOWN'),
      assumed('pack_factor'),
      readPastText(ticket.pouring.past).ok ? 'open' : 'stop',
      ...byFields(['pack', ...fieldsOfPart(ticket, 'prices'), ...fieldsOfPart(ticket, 'skin')]),
    ]),
    losses: worstMark([
      only('RESIDUE_LARGE'),
      assumed('residue_g', 'vents_g', 'riser_cm3', 'scale_step_g'),
      ...byFields(LOSS_FIELDS),
    ]),
    day: worstMark([part('day'), part('mold')]),
    weigh: weighMark(ticket, card, only),
    short: only('SHORT_FILL_LIKELY', 'NO_CUP_TEST', 'MIN_FILL_UNKNOWN'),
    cups: part('cups'),
    warm: part('warm'),
    forces: part('forces'),
    times: part('times'),
    colors: part('colors'),
    ready: worstMark([
      checks === undefined ? 'open' : worstFinding(checks),
      ...byFields(fieldsOfPart(ticket, 'facts')),
    ]),
    bench: benchMark(ticket, card),
  };
}

function benchMark({ fields }: Ticket, card: Outcome<FoamCard> | undefined): Mark {
  const isRead = card?.ok === true && valueIn(fields, 'bInCup') !== undefined;
  return worstMark([isRead ? 'fine' : 'open', fieldMark('bInCup', fields.bInCup)]);
}

const SPOILS = [
  'PACK_UNUSUAL',
  'SHORT_FILL_LIKELY',
  'SCALE_COARSE',
  'SCALE_OVERLOADED',
  'RATIO_ROUNDED',
  'RATIO_REVERSED',
];

/** What can spoil the grams: the pack, the ratio, the scale, and a volume that should not be poured for. */
function weighMark(
  ticket: Ticket,
  card: Outcome<FoamCard> | undefined,
  only: (...codes: string[]) => Mark,
): Mark {
  const { state } = pourNow(ticket);
  if (state === 'refused' || card?.ok === false) return 'stop';
  if (state === 'failed') return 'unknown';
  if (state !== 'answered') return 'open';

  return worstMark([only(...SPOILS), isVolumeStopped(ticket) ? 'stop' : 'open']);
}

/** The scan is so doubtful that its volume should not be poured for. */
export const isVolumeStopped = (ticket: Ticket): boolean => measureMarks(ticket).at(-1) === 'stop';
