import type { Piece } from '../../job/piece';
import type { ShopCore } from '../../store';
import { batchMarks } from '../batch/marks';
import { benchMark } from '../bench/mark';
import { bookMark } from '../book/mark';
import { measureMarks } from '../measure/marks';
import { chosenNow } from '../mold/chosen';
import { moldMarks } from '../mold/marks';
import type { Mark } from '../parts/StatusMark';
import type { Step } from '../route';
import { worstMark } from '../words/statuses';
import { pourNow, volumeNow } from './now';
import { readyNow } from './ready';
import type { Ticket } from './state';
import { cardOf } from './wishes';

export const STEP_NAMES: Readonly<Record<Step, string>> = {
  measure: 'Measure',
  mold: 'Mold',
  batch: 'Batch',
  bench: 'Bench',
  book: 'Book',
};

export interface StepMark {
  step: Step;
  name: string;
  mark: Mark;
}

/** The steps of the ticket and how each stands. `core`: as the shop keeps it. */
export const stepsOf = (ticket: Ticket, piece: Piece | undefined, core: ShopCore | undefined): StepMark[] => [
  {
    step: 'measure',
    name: STEP_NAMES.measure,
    mark: stepMark(volumeNow(ticket).state === 'answered', measureMarks(ticket)),
  },
  {
    step: 'mold',
    name: STEP_NAMES.mold,
    mark: stepMark(chosenNow(ticket).state === 'answered', moldMarks(ticket)),
  },
  {
    step: 'batch',
    name: STEP_NAMES.batch,
    mark: batchMark(ticket),
  },
  {
    step: 'bench',
    name: STEP_NAMES.bench,
    mark: piece === undefined ? 'open' : benchMark(piece, core?.book),
  },
  {
    step: 'book',
    name: STEP_NAMES.book,
    mark: piece === undefined || core === undefined ? 'open' : bookMark(piece, core),
  },
];

/** Ready once the user has said so of the pour as it stands; nothing to look at is not enough. */
function batchMark(ticket: Ticket): Mark {
  const mark = stepMark(
    pourNow(ticket).state === 'answered',
    Object.values(batchMarks(ticket, cardOf(ticket))),
  );
  // A Stop stays one, whatever is said.
  if (mark === 'open' || mark === 'stop') return mark;
  if (readyNow(ticket) === 'ready') return 'fine';
  return mark === 'fine' ? 'open' : mark;
}

/** A step with no answer is open, unless something stops it. */
function stepMark(answered: boolean, marks: readonly Mark[]): Mark {
  if (marks.includes('stop')) return 'stop';
  return answered ? worstMark(marks) : 'open';
}
