import type { Problem } from '../../problem';
import { sayOnPage } from '../words/sayOnPage';
import { MarkShape } from './StatusMark';

/** Why there is no answer: what, where, how far off, and what to do now. A scale nobody gave yet is no fault of the scan. */
export function Complaint({ problem, about }: { problem: Problem; about?: string }) {
  const { text, hint } = sayOnPage(problem);
  return (
    <div className="complaint">
      <MarkShape mark={problem.code === 'SCALE_UNKNOWN' ? 'unknown' : problem.status} />
      <p>
        <b>
          {about === undefined ? '' : `${about}: `}
          {text}
        </b>{' '}
        <span>{hint}</span>
      </p>
    </div>
  );
}
