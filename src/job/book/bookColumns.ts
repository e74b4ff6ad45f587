import type { ScalarKind } from '../../units';
import type { CupRow, FillRow, PourRow } from './bookRow';

/** Every field that a row of any kind may have. */
export type BookField = keyof PourRow | keyof CupRow | keyof FillRow;

/** A column of the list. `unit` stands in its head, and is what the number counts. */
export interface BookColumn {
  field: BookField;
  head: string;
  /** Other heads that it is known by, in lower case and without a unit. */
  also?: readonly string[];
  is: 'text' | 'whole' | 'day' | 'kind' | 'opening' | 'filled' | 'masses' | 'yes' | 'asked' | ScalarKind;
  unit?: 'g' | 'C' | 'cm3';
  /** A weight of nothing is one. */
  allowZero?: true;
}

const mass = (field: BookField, head: string, also: readonly string[]): BookColumn => ({
  field,
  head,
  also,
  is: 'mass',
  unit: 'g',
  allowZero: true,
});
const text = (field: BookField, head: string, also: readonly string[] = []): BookColumn => ({
  field,
  head,
  also,
  is: 'text',
});
const temperature = (field: BookField, head: string, also: readonly string[]): BookColumn => ({
  field,
  head,
  also,
  is: 'temperature',
  unit: 'C',
});

/** The columns of the list, in their order. */
export const BOOK_COLUMNS: readonly BookColumn[] = [
  { field: 'kind', head: 'Kind', is: 'kind' },
  text('id', 'Id'),
  { field: 'no', head: 'No', also: ['#', 'number', 'pour'], is: 'whole' },
  { field: 'day', head: 'Day', also: ['date'], is: 'day' },
  text('piece', 'Piece', ['sculpt']),
  text('mold', 'Mold name'),
  text('casting', 'Casting name'),
  text('foam', 'Foam', ['foam card']),
  text('lot', 'Lot', ['lot of a']),
  text('lotB', 'Lot of B', ['lot b']),
  { field: 'pack', head: 'Pack factor', also: ['pack'], is: 'packFactor' },
  temperature('roomC', 'Room', ['room temperature']),
  temperature('moldC', 'Mold', ['mold temperature']),
  { field: 'opening', head: 'Opening', also: ['mouth'], is: 'opening' },
  { field: 'cavityCm3', head: 'Cavity', is: 'volume', unit: 'cm3' },
  mass('aG', 'A', ['part a']),
  mass('bG', 'B', ['part b']),
  mass('colorG', 'Color in the mix', []),
  mass('mixedG', 'Mixed', ['together', 'mix']),
  mass('residueG', 'Residue', ['left in the cup']),
  mass('castingG', 'Casting', []),
  mass('trimG', 'Trim', []),
  { field: 'filled', head: 'Filled', is: 'filled' },
  { field: 'voidCm3', head: 'Void', also: ['voids'], is: 'volume', unit: 'cm3', allowZero: true },
  { field: 'skin', head: 'Skin, 1 to 5', also: ['skin'], is: 'plain' },
  mass('waterG', 'Water', []),
  temperature('waterTempC', 'Water temperature', []),
  { field: 'foamsG', head: 'Foam of each cup', is: 'masses', unit: 'g' },
  text('note', 'Note', ['notes', 'remark']),
  { field: 'isLeftOut', head: 'Left out', is: 'yes' },
  { field: 'keptAsTyped', head: 'Kept as typed', is: 'asked' },
];

/** "Mixed, g". */
export const headOf = ({ head, unit }: BookColumn): string =>
  unit === undefined ? head : `${head}, ${unit}`;
