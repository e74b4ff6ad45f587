import type { Dispatch } from 'react';
import type { OpeningPlan } from '../../plan';
import type { Problem } from '../../problem';
import type { FieldName } from '../ticket/fields';
import type { Said } from '../ticket/now';
import type { Action } from '../ticket/reducer';
import type { Ticket } from '../ticket/state';

/** What the parts of the question of opening and vents are given. */
export interface OpeningProps {
  ticket: Ticket;
  dispatch: Dispatch<Action>;
  now: Said<OpeningPlan>;
  problemOf: (field: FieldName) => Problem | undefined;
}
