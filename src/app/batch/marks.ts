import type { Outcome } from '../../problem';
import type { FoamCard } from '../../yield';
import { measureMarks } from '../measure/marks';
import type { Mark } from '../parts/StatusMark';
import type { OwnField } from '../ticket/fields';
import { fieldMark } from '../ticket/fieldMark';
import { pourNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { worstFinding, worstMark } from '../words/statuses';
import { batchChecks, batchProblems } from './batchProblems';
import { fieldOf } from './fieldProblem';

const FOAM: readonly OwnField[] = ['freeRise', 'partsA', 'partsB', 'densityA', 'densityB'];
const PACK: readonly OwnField[] = ['pack'];
const LOSSES: readonly OwnField[] = ['riser', 'vents', 'residue', 'scaleStep'];

/** The marks of the questions of Batch, in their order: each the worst of what stands in its section. */
export function batchMarks(ticket: Ticket, card: Outcome<FoamCard> | undefined): Mark[] {
  const pour = pourNow(ticket);
  const checks = batchChecks(ticket, card);
  const only = (...codes: string[]): Mark =>
    checks === undefined ? 'open' : worstFinding(checks.filter(({ code }) => codes.includes(code)));
  const assumed = (...names: string[]): Mark =>
    pour.answer?.batch.assumptions.some(({ name }) => names.includes(name)) === true ? 'look' : 'open';
  const byFields = (names: readonly OwnField[]): Mark[] => [
    ...names.map((name) => fieldMark(name, ticket.fields[name])),
    ...batchProblems(ticket, card)
      .filter((problem) => names.some((name) => name === fieldOf(problem)))
      .map(({ status }) => status),
  ];
  return [
    worstMark([
      card?.ok === true ? 'fine' : 'open',
      only('NO_CUP_TEST', 'MIN_FILL_BELOW_FREE_RISE'),
      ...byFields(FOAM),
    ]),
    worstMark([
      only('PACK_UNUSUAL', 'SHORT_FILL_LIKELY', 'MIN_FILL_UNKNOWN'),
      assumed('pack_factor'),
      ...byFields(PACK),
    ]),
    worstMark([
      only('RESIDUE_LARGE'),
      assumed('residue_g', 'vents_g', 'riser_cm3', 'scale_step_g'),
      ...byFields(LOSSES),
    ]),
    weighMark(ticket, card, only),
    checks === undefined ? 'open' : worstFinding(checks),
  ];
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
