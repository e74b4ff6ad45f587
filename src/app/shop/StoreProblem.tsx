import type { Problem, StoreCode } from '../../problem';
import { STORE_WORDS } from '../../words/storeWords';
import { MarkShape } from '../parts/StatusMark';

/** What could not be kept or read, by what was pressed. */
export function StoreProblem({ problem }: { problem: Problem | undefined }) {
  if (problem === undefined) return null;
  const { text, hint } = STORE_WORDS[problem.code as StoreCode](problem.values);
  return (
    <div className="complaint" role="alert">
      <MarkShape mark="stop" />
      <p>
        <b>{text}</b> <span>{hint}</span>
      </p>
    </div>
  );
}
