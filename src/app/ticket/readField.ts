import { formatQuantity, MM_PER_FT, readQuantity, type Read } from '../../units';
import { specOf, textOf, type FieldName, type Fields, type FieldText } from './fields';

/** What a field says: nothing yet, one value, several to pick from, or why not. */
export type FieldRead = { kind: 'blank' } | Read<number>;

/** Reads a field in the inside unit of its kind. A bare number is taken in the unit chosen beside the box. */
export function readField(name: FieldName, { text, unit, picked }: FieldText): FieldRead {
  if (text.trim() === '') return { kind: 'blank' };
  const { kind, allowZero, isHeight, isSigned } = specOf(name);
  if (picked !== undefined) return { kind: 'one', value: picked, readback: formatQuantity(kind, picked) };
  const read = readQuantity(text, kind, {
    ...(unit === '' ? {} : { bareUnit: unit }),
    ...(allowZero === true ? { allowZero } : {}),
    ...(isSigned === true ? { allowNegative: true } : {}),
  });
  return isHeight === true ? asHeight(read) : read;
}

/** A mountain is no sculpt: what is hard to believe of a length is taken as it was typed, the first of its readings. */
function asHeight(read: Read<number>): Read<number> {
  const far = read.kind === 'ask' && read.why.reason === 'implausible' ? read.readings[0] : undefined;
  const mm = read.kind === 'one' ? read.value : far?.value;
  if (mm === undefined) return read;
  return {
    kind: 'one',
    value: mm,
    readback: `${Math.round(mm / 1000)} m (${Math.round(mm / MM_PER_FT)} ft)`,
  };
}

export function valueOf(name: FieldName, field: FieldText): number | undefined {
  const read = readField(name, field);
  return read.kind === 'one' ? read.value : undefined;
}

/** The value of a field of the ticket; undefined while it is blank or has no single meaning. */
export const valueIn = (fields: Fields, name: FieldName): number | undefined =>
  valueOf(name, textOf(fields, name));
