import type { Outcome } from '../../problem';
import type { FoamCard } from '../../yield';
import type { Mark } from '../parts/StatusMark';
import type { Ticket } from '../ticket/state';
import { worstFinding } from '../words/statuses';

/** The marks of the questions of Batch, in their order. */
export function batchMarks({ pour }: Ticket, card: Outcome<FoamCard> | undefined): Mark[] {
  const batch = pour.answer?.batch;
  const failed: Mark = pour.problem === undefined ? 'open' : 'stop';
  if (batch === undefined)
    return [card === undefined ? 'open' : card.ok ? 'fine' : 'stop', 'open', 'open', failed, 'open'];
  const only = (codes: readonly string[]): Mark =>
    worstFinding(batch.findings.filter(({ code }) => codes.includes(code)));
  const isAssumed = (names: readonly string[]): boolean =>
    batch.assumptions.some(({ name }) => names.includes(name));
  const orLook = (mark: Mark, assumed: boolean): Mark => (mark === 'fine' && assumed ? 'look' : mark);
  return [
    only(['NO_CUP_TEST', 'MIN_FILL_BELOW_FREE_RISE']),
    orLook(only(['PACK_UNUSUAL', 'SHORT_FILL_LIKELY']), batch.packFrom === 'assumed'),
    orLook(only(['RESIDUE_LARGE']), isAssumed(['residue_g', 'vents_g', 'riser_cm3', 'scale_step_g'])),
    only(['SCALE_COARSE', 'RATIO_ROUNDED', 'SHORT_FILL_LIKELY']),
    worstFinding(batch.findings),
  ];
}
