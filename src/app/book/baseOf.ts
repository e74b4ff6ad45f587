import type { LearnedBook, PourRow } from '../../job/book';
import type { OneChange } from '../../yield';

/** The pour that the change starts from. */
export const baseOf = ({ pours }: LearnedBook, change: OneChange | undefined): PourRow | undefined =>
  pours.find(({ no }) => no === change?.basePour)?.row;
