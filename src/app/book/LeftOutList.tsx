import type { LearnedBook } from '../../job/book';
import { finding } from '../../problem';
import { say } from '../../words/say';
import { Complaint } from '../parts/Complaint';

/** Pours that the reckoning itself could not take, each with its reason. */
export const LeftOutList = ({ learned: { leftOut } }: { learned: LearnedBook }) => (
  <>
    {leftOut.map(({ no, of, problem }) => (
      <Complaint
        key={`${no} ${of}`}
        problem={finding('BOOK_LEFT_OUT', 'look', { no, of, why: say(problem, 'both').text })}
      />
    ))}
  </>
);
