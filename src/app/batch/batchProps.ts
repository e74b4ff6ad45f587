import type { Problem } from '../../problem';
import type { Outcome } from '../../problem';
import type { Piece } from '../../job/piece';
import type { FoamCard } from '../../yield';
import type { AskProps } from '../measure/askProps';
import type { FieldName } from '../ticket/fields';
import type { PourOnPage } from '../../worker/pour';
import type { Said } from '../ticket/now';
import type { Bench } from '../ticket/useEngine';

/** What the questions of Batch are given: the checked card, and the problem by each field. */
export interface BatchProps extends AskProps {
  no: number;
  pour: Said<PourOnPage>;
  card: Outcome<FoamCard> | undefined;
  bench: Bench;
  piece: Piece;
  problemOf: (field: FieldName) => Problem | undefined;
}
