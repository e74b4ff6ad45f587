import type { Problem } from '../../problem';
import type { Mold } from '../../plan';
import type { AskProps } from '../measure/askProps';
import type { FieldName } from '../ticket/fields';
import type { Said } from '../ticket/now';
import type { Bench } from '../ticket/useEngine';

/** What the questions of Mold are given: the mold of the chosen type as it stands, and the problem by each field. */
export interface MoldProps extends AskProps {
  now: Said<Mold>;
  bench: Bench;
  problemOf: (field: FieldName | 'kits') => Problem | undefined;
}
