import { createContext, useContext } from 'react';
import type { Problem } from '../../problem';
import type { Persistence, ShopView, Store } from '../../store';
import type { ShopChoice } from '../route';

/** The shop that is open, as it is kept, and what keeps it. */
export interface OpenShop {
  choice: ShopChoice;
  store: Store;
  /** Undefined until the store has answered. */
  view: ShopView | undefined;
  /** Why nothing can be kept or read. */
  problem: Problem | undefined;
  persistence: Persistence | undefined;
  /** Asks the browser to keep the data; once, with the first thing that is worth it. */
  askToPersist: () => void;
}

export const ShopContext = createContext<OpenShop | undefined>(undefined);

export function useShop(): OpenShop {
  const shop = useContext(ShopContext);
  if (shop === undefined) throw new Error('useShop: expected to be within a ShopContext');
  return shop;
}
