import { specOf, textOf, type FieldName, type Fields, type FieldText } from './fields';
import { readSpec, type FieldRead } from './readSpec';

/** What was read of each text: a ticket has some hundred boxes, read by many places at every move of a slider, and all but one are as they were. */
const READ = new WeakMap<FieldText, Map<FieldName, FieldRead>>();

/** Reads a field in the inside unit of its kind. A bare number is taken in the unit chosen beside the box. */
export function readField(name: FieldName, field: FieldText): FieldRead {
  const known = READ.get(field) ?? new Map<FieldName, FieldRead>();
  READ.set(field, known);
  const read = known.get(name) ?? readSpec(specOf(name), field);
  known.set(name, read);
  return read;
}

export function valueOf(name: FieldName, field: FieldText): number | undefined {
  const read = readField(name, field);
  return read.kind === 'one' ? read.value : undefined;
}

/** The value of a field of the ticket; undefined while it is blank or has no single meaning. */
export const valueIn = (fields: Fields, name: FieldName): number | undefined =>
  valueOf(name, textOf(fields, name));
