import { useCallback, useEffect, useRef, useState } from 'react';
import { storeProblem } from '../../store';
import type { Problem } from '../../problem';
import { useShop } from '../shop/shopContext';
import { isEmptyShop } from './isEmptyShop';

/** The invented shop fills itself when it is first shown, and again when it is told to. */
export function useSample(): { isFilling: boolean; problem: Problem | undefined; afresh: () => void } {
  const { store, view, choice } = useShop();
  const [isFilling, setFilling] = useState(false);
  const [problem, setProblem] = useState<Problem>();
  const isBegun = useRef(false);
  const afresh = useCallback(() => {
    setFilling(true);
    setProblem(undefined);
    import('./fillSample')
      .then(({ fillSample }) => fillSample(store))
      .then(setProblem, (fault: unknown) => setProblem(storeProblem(fault)))
      .finally(() => setFilling(false));
  }, [store]);
  const isWaiting = choice === 'sample' && view !== undefined && isEmptyShop(view);
  useEffect(() => {
    if (!isWaiting || isBegun.current) return;
    isBegun.current = true;
    afresh();
  }, [isWaiting, afresh]);
  return { isFilling, problem, afresh };
}
