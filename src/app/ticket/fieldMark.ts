import type { Mark } from '../parts/StatusMark';
import type { FieldName, FieldText } from './fields';
import { readField } from './readField';

/** A box with two meanings wants a look; one with none stops what hangs on it. */
export function fieldMark(name: FieldName, field: FieldText): Mark {
  const { kind } = readField(name, field);
  return kind === 'ask' ? 'look' : kind === 'error' ? 'stop' : 'open';
}
