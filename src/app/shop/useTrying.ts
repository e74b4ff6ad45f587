import { useCallback, useState } from 'react';
import type { Problem } from '../../problem';
import { storeProblem } from '../../store';

/** Does what takes time and may fail; what went wrong last, until the next try. */
export function useTrying(): {
  attempt: (work: () => Promise<void>) => void;
  isBusy: boolean;
  problem: Problem | undefined;
} {
  const [busy, setBusy] = useState(0);
  const [problem, setProblem] = useState<Problem>();
  const attempt = useCallback((work: () => Promise<void>): void => {
    setBusy((count) => count + 1);
    setProblem(undefined);
    work()
      .catch((fault: unknown) => setProblem(storeProblem(fault)))
      .finally(() => setBusy((count) => count - 1));
  }, []);
  return { attempt, isBusy: busy > 0, problem };
}
