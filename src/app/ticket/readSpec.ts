import { formatQuantity, MM_PER_FT, readQuantity, type Read } from '../../units';
import type { FieldSpec } from './fieldSpec';

/** What stands in a box, the unit beside it, and the meaning that was picked where the text has several. */
export interface BoxText {
  text: string;
  unit: string;
  picked?: number;
}

/** What a box says: nothing yet, one value, several to pick from, or why not. */
export type FieldRead = { kind: 'blank' } | Read<number>;

/** Reads a box in the inside unit of its kind. A bare number is taken in the unit chosen beside it. */
export function readSpec(
  { kind, allowZero, isHeight, isSigned, after }: FieldSpec,
  { text: typed, unit, picked }: BoxText,
): FieldRead {
  const text = kind === 'plain' && after !== undefined ? withoutUnit(typed, after) : typed;
  if (text.trim() === '') return { kind: 'blank' };
  if (picked !== undefined) return { kind: 'one', value: picked, readback: formatQuantity(kind, picked) };
  const read = readQuantity(text, kind, {
    ...(unit === '' ? {} : { bareUnit: unit }),
    ...(allowZero === true ? { allowZero } : {}),
    ...(isSigned === true ? { allowNegative: true } : {}),
  });
  if (text !== typed && read.kind === 'one') return { ...read, readback: `${read.readback} ${after}` };
  return isHeight === true ? asHeight(read) : read;
}

/** A number with the unit that stands behind its box says the same as without: "40 s", "264 cm2". */
function withoutUnit(typed: string, unit: string): string {
  const spelled = [unit, unit.replace('²', '2')].find((spelling) => typed.trimEnd().endsWith(spelling));
  if (spelled === undefined) return typed;
  const number = typed.trimEnd().slice(0, -spelled.length);
  return /\d\s*$/.test(number) ? number : typed;
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
