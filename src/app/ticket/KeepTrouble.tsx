import type { Problem } from '../../problem';
import { Complaint } from '../parts/Complaint';

/** What of the ticket is not kept, or could not be read, and the way to try again. */
export function KeepTrouble({
  problems,
  onAgain,
}: {
  problems: readonly Problem[];
  /** Undefined where there is nothing to try. */
  onAgain: (() => void) | undefined;
}) {
  return (
    <>
      {problems.map((problem) => (
        <Complaint key={problem.code} problem={problem} />
      ))}
      {onAgain !== undefined && (
        <p className="chg">
          <button type="button" className="btn line" onClick={onAgain}>
            Keep it now
          </button>
        </p>
      )}
    </>
  );
}
