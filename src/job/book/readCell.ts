import { readQuantity, type ScalarKind, type Why } from '../../units';
import { findUnit } from '../../units/unitTable';
import { isIsoDate } from '../../yield/silicone/card';
import { unguarded } from '../csvText';
import type { TakenColumn } from './columnOf';
import { ASKED_FIELDS } from './readRow';

/** Why a cell was not taken: the reason of a quantity with its readings, or what would be taken in its place. */
export type CellTrouble = { why: Why; readings: string[] } | { wanted: string };

type ReadCell = { value: string | number | boolean | number[] | string[] } | CellTrouble;

/** A cell that is not blank as the value of its column. What has several meanings is refused with each. */
export function readCell(cell: string, taken: TakenColumn): ReadCell {
  const { is, field } = taken.column;
  const whole = unguarded(cell);
  // Of a note the blanks are part; a name is the same with them and without.
  if (field === 'note') return { value: whole };
  const text = whole.trim();
  if (is === 'text') return { value: text };
  if (is === 'whole')
    return /^[1-9]\d{0,8}$/.test(text) ? { value: Number(text) } : { wanted: 'a whole number from 1 up' };
  if (is === 'day') return isIsoDate(text) ? { value: text } : { wanted: 'a day such as 2026-03-31' };
  if (is === 'kind' || is === 'opening' || is === 'filled') return oneOf(text, CHOICES[is]);
  if (is === 'yes') return text.toLowerCase() === 'yes' ? { value: true } : { wanted: '"yes", or nothing' };
  if (is === 'asked') return askedFields(text);
  return is === 'masses' ? masses(text, taken) : quantity(text, is, taken);
}

const CHOICES = {
  kind: ['pour', 'cup', 'fill'],
  opening: ['open', 'plug'],
  filled: ['full', 'short'],
} as const;

/** Names of fields, as this program writes them. */
function askedFields(text: string): ReadCell {
  const names = text.split(';').map((name) => name.trim());
  const isKnown = names.every((name) => ASKED_FIELDS.some((field) => field === name));
  return isKnown ? { value: names } : { wanted: `names out of ${ASKED_FIELDS.join('; ')}` };
}

function oneOf(text: string, choices: readonly string[]): ReadCell {
  const value = choices.find((choice) => choice === text.toLowerCase());
  return value === undefined ? { wanted: choices.map((choice) => `"${choice}"`).join(' or ') } : { value };
}

function masses(text: string, taken: TakenColumn): ReadCell {
  const values: number[] = [];
  for (const part of text.split(';')) {
    const read = quantity(part.trim(), 'mass', taken);
    if (!('value' in read)) return read;
    values.push(read.value as number);
  }
  return { value: values };
}

function quantity(text: string, kind: ScalarKind, { column, unit }: TakenColumn): ReadCell {
  if (unit !== undefined && findUnit(kind, unit) === undefined)
    return { wanted: `another unit in the head than "${unit}"` };
  const read = readQuantity(text, kind, {
    ...(unit === undefined ? {} : { bareUnit: unit }),
    ...(column.allowZero === true ? { allowZero: true } : {}),
  });
  if (read.kind === 'one') return { value: read.value };
  return { why: read.why, readings: read.kind === 'ask' ? read.readings.map((reading) => reading.text) : [] };
}
