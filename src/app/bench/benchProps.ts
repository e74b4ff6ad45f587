import type { Dispatch } from 'react';
import type { BenchRun, PressName } from '../../job/benchState';
import type { Piece } from '../../job/piece';
import type { Action } from '../ticket/reducer';
import type { Ticket } from '../ticket/state';
import type { KeptTicket } from '../ticket/useTicket';
import type { Nav } from '../useRoute';
import type { BenchSession } from './benchSession';
import type { BenchSaid } from './useBenchState';

/** What the bench is given of the ticket. */
export interface BenchProps {
  ticket: Ticket;
  dispatch: Dispatch<Action>;
  piece: Piece;
  change: KeptTicket['change'];
  nav: Nav;
}

/** And what it needs before the clock runs. */
export interface ReadyProps extends BenchProps {
  said: BenchSaid;
  say: (part: Partial<BenchSaid>) => void;
  run: BenchRun;
  session: BenchSession;
  press: (what: PressName) => void;
  /** Weighs back what was poured without this clock. */
  onWeigh: () => void;
  /** The ticket is that of this casting. */
  isInHand: boolean;
}
