import { useCallback, type Dispatch } from 'react';
import type { Store } from '../../store';
import type { Action } from '../ticket/reducer';
import { rememberUnit } from './rememberUnit';

/** Passes on what is said, and remembers for the shop each unit that is chosen beside a box: new pieces begin with it. */
export function useUnitMemory(store: Store, dispatch: Dispatch<Action>): Dispatch<Action> {
  return useCallback(
    (action) => {
      dispatch(action);
      if (action.do !== 'unit') return;
      rememberUnit(store, action.field, action.unit);
    },
    [store, dispatch],
  );
}
