import { createContext, useContext } from 'react';
import type { Piece } from '../../job/piece';
import type { Problem } from '../../problem';
import type { Persistence, ShopStore, ShopView } from '../../store';
import type { KeptSource } from '../ticket/keptSource';
import type { ShopChoice } from '../route';

/** The shop that is open, as it is kept, and what keeps it. */
export interface OpenShop {
  choice: ShopChoice;
  store: ShopStore;
  /** Undefined until the store has answered. */
  view: ShopView | undefined;
  /** Why nothing can be kept or read. */
  problem: Problem | undefined;
  /** Goes on without a store that does not answer: all is then kept by the page alone. */
  goWithout?: () => void;
  onTicket: HeldOnTicket;
  persistence: Persistence | undefined;
  /** Asks the browser to keep the data; once, with the first thing that is worth it. */
  askToPersist: () => void;
}

/** What stands on the ticket and is not kept, for a backup: the ticket gives it as long as it is so. */
export interface HeldOnTicket {
  hold(give: () => OnTicket): () => void;
  now(): OnTicket | undefined;
}

export function openHeld(): HeldOnTicket {
  let held: (() => OnTicket) | undefined;
  return {
    hold(give) {
      held = give;
      return () => {
        if (held === give) held = undefined;
      };
    },
    now: () => held?.(),
  };
}

/** A piece as it stands on its ticket, and the file of its scan where that is open. */
export interface OnTicket {
  piece: Piece;
  scan: KeptSource | undefined;
}

export const ShopContext = createContext<OpenShop | undefined>(undefined);

export function useShop(): OpenShop {
  const shop = useContext(ShopContext);
  if (shop === undefined) throw new Error('useShop: expected to be within a ShopContext');
  return shop;
}
