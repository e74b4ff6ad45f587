import { MarkShape } from '../parts/StatusMark';
import { backedUpWithout } from '../../words/storeWords';
import { useBackUp } from './useBackUp';

/** One press, one file among the downloads. */
export function BackUpButton({ className = 'act' }: { className?: string }) {
  const { backUp, state, missing, problem } = useBackUp();
  return (
    <>
      <button type="button" className={className} disabled={state === 'working'} onClick={backUp}>
        Back up now
      </button>
      <span className="note" role="status">
        {state === 'working' && 'The backup is being written …'}
        {state === 'saved' &&
          (missing === 0 ? 'The backup is among your downloads.' : backedUpWithout(missing))}
        {problem !== undefined && (
          <span className="err">
            <MarkShape mark="stop" />
            <span>
              {problem.text} {problem.hint}
            </span>
          </span>
        )}
      </span>
    </>
  );
}
