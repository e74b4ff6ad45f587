import type { BookRow, PourRow } from './bookRow';

/** A pour by the number that people call it by. */
export interface NumberedPour {
  no: number;
  row: PourRow;
}

/** The pours in the order of their numbers; where one has none, or two have the same, by their places in the book, from 1. */
export function numberedPours(rows: readonly BookRow[]): NumberedPour[] {
  const pours = rows.filter((row) => row.kind === 'pour');
  const numbers = new Set(pours.map(({ no }) => no));
  if (numbers.has(undefined) || numbers.size < pours.length)
    return pours.map((row, index) => ({ no: index + 1, row }));
  return pours.map((row) => ({ no: row.no!, row })).sort((one, other) => one.no - other.no);
}
