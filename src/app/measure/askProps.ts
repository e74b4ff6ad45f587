import type { Dispatch } from 'react';
import type { Mark } from '../parts/StatusMark';
import type { Action } from '../ticket/reducer';
import type { Ticket } from '../ticket/state';

/** What every question of the ticket is given. */
export interface AskProps {
  ticket: Ticket;
  dispatch: Dispatch<Action>;
  mark: Mark;
}
