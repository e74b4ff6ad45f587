import { useCallback, type Dispatch } from 'react';
import type { ShopStore } from '../../store';
import type { Action } from '../ticket/reducer';
import { rememberUnit } from './rememberUnit';

/** Passes on what is said, and remembers for the shop each unit that is chosen beside a box: new pieces begin with it. */
export function useUnitMemory(store: ShopStore, dispatch: Dispatch<Action>): Dispatch<Action> {
  return useCallback(
    (action) => {
      dispatch(action);
      if (action.do !== 'unit') return;
      rememberUnit(store, action.field, action.unit);
    },
    [store, dispatch],
  );
}
