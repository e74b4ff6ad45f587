import { useCallback, useEffect, useReducer, useState, type Dispatch } from 'react';
import type { Piece } from '../../job/piece';
import type { Problem } from '../../problem';
import { storeProblem, type Saving, type ShopStore } from '../../store';
import { createPieceKeeper } from './pieceKeeper';
import { ticketReducer, type Action } from './reducer';
import { newTicket, type Ticket } from './state';

/** A piece of the shop, opened as a ticket that keeps itself. */
export interface KeptTicket {
  /** Undefined until it is read. */
  piece: Piece | undefined;
  ticket: Ticket;
  dispatch: Dispatch<Action>;
  saving: Saving;
  /** Why it cannot be read or kept, or what of it this version cannot read. */
  problems: Problem[];
  keepNow: () => void;
  settled: () => Promise<void>;
  change: (how: (piece: Piece) => Piece) => void;
}

/** Reads the piece, keeps every change as it is made, and takes up what another tab has kept. */
export function useTicket(store: ShopStore, id: string): KeptTicket {
  const [ticket, dispatch] = useReducer(ticketReducer, undefined, newTicket);
  const [piece, setPiece] = useState<Piece>();
  const [saving, setSaving] = useState<Saving>({ state: 'kept' });
  const [lost, setLost] = useState<Problem>();
  const [unread, setUnread] = useState<Problem>();
  const [keeper] = useState(() =>
    createPieceKeeper({
      store,
      id,
      dispatch,
      tell: { piece: setPiece, saving: setSaving, lost: setLost, unread: setUnread },
    }),
  );
  useEffect(() => void keeper.load(), [keeper]);
  useEffect(() => keeper.hear(ticket), [keeper, ticket]);
  useEffect(() => {
    const fault = (thrown: unknown): void => setLost(storeProblem(thrown));
    return store.watch(() => void keeper.catchUp().catch(fault), fault);
  }, [keeper, store]);
  const change = useCallback((how: (piece: Piece) => Piece) => void keeper.change(how), [keeper]);
  const failed = saving.state === 'failed' ? storeProblem(saving.fault) : undefined;
  return {
    piece,
    ticket,
    dispatch,
    saving,
    problems: [lost, unread, failed].filter((one) => one !== undefined),
    keepNow: keeper.keepNow,
    settled: keeper.settled,
    change,
  };
}
