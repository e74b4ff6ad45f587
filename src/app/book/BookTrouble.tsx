import { Complaint } from '../parts/Complaint';
import { StoreProblem } from '../shop/StoreProblem';
import type { BookChange } from './useBookChange';

/** Why a change of the book was not kept, by what was pressed. */
export const BookTrouble = ({ problem, refused }: Pick<BookChange, 'problem' | 'refused'>) => (
  <>
    <StoreProblem problem={problem} />
    {refused !== undefined && <Complaint problem={refused} />}
  </>
);
