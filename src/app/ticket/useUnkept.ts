import { useCallback, useEffect } from 'react';
import type { Saving } from '../../store';
import { LEAVE_UNKEPT } from '../../words/storeWords';
import { useUpdateHold } from '../offline/useUpdateHold';
import type { Route } from '../route';
import { useShop } from '../shop/shopContext';
import { useGuard } from '../useRoute';
import { pieceWith } from './record';
import type { Ticket } from './state';
import { useAskBeforeLeaving } from './useAskBeforeLeaving';
import { wordsOf } from './words';

/** What is not kept yet is not lost unasked: neither by closing the page, nor by an update, nor by going elsewhere in the app; and a backup has it. */
export function useUnkept(ticket: Ticket, saving: Saving, piece: string): void {
  const { onTicket, problem } = useShop();
  const isKept = saving.state === 'kept';
  useAskBeforeLeaving(!isKept);
  useUpdateHold(!isKept);
  // What is being kept will be, also from elsewhere.
  const hasFailed = saving.state === 'failed';
  const ask = useCallback(
    (to: Route): boolean => ('piece' in to && to.piece === piece) || confirm(LEAVE_UNKEPT),
    [piece],
  );
  useGuard(hasFailed ? ask : undefined);
  const isWanted = !isKept || problem !== undefined;
  useEffect(() => {
    const { base, scan } = ticket;
    if (!isWanted || base === undefined) return;
    return onTicket.hold(() => ({ piece: pieceWith(base, wordsOf(ticket)), scan: scan?.source }));
  }, [onTicket, ticket, isWanted]);
}
