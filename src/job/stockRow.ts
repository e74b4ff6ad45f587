import { isIsoDate } from '../yield/silicone/card';

/** A lot on the shelf, of the card of that name. A and B are of a foam, base and catalyst of a silicone. */
export interface StockRow {
  card: string;
  lot?: string;
  aKg?: number;
  bKg?: number;
  baseKg?: number;
  catalystKg?: number;
  openedMonths?: number;
  /** YYYY-MM-DD; where it is known, it counts before the months. */
  openedOn?: string;
}

/** The rows with all that stood on them, or what is wrong with one. */
export function readStock(list: readonly unknown[]): StockRow[] | string {
  const rows: StockRow[] = [];
  for (const [index, json] of list.entries()) {
    const row = readRow(json, index + 1);
    if (typeof row === 'string') return row;
    rows.push(row);
  }
  return rows;
}

function readRow(json: unknown, number: number): StockRow | string {
  if (typeof json !== 'object' || json === null || Array.isArray(json))
    return `row ${number} of its stock is not an object`;
  const fields = json as Record<string, unknown>;
  const { card, lot, ...more } = fields;
  if (typeof card !== 'string' || card.trim() === '') return `row ${number} of its stock names no card`;
  if (lot !== undefined && typeof lot !== 'string') return `the lot of "${card}" in its stock is not a text`;
  for (const name of AMOUNTS) {
    const amount = fields[name];
    if (amount !== undefined && !(typeof amount === 'number' && amount >= 0 && amount < Infinity))
      return `${name} of "${card}" in its stock is not a number of 0 or more`;
  }
  const { openedOn } = fields;
  if (openedOn !== undefined && !isIsoDate(openedOn))
    return `the day "${card}" was opened on in its stock is not a day such as 2026-03-31`;
  return lot === undefined ? { ...more, card } : { ...more, card, lot };
}

const AMOUNTS = ['aKg', 'bKg', 'baseKg', 'catalystKg', 'openedMonths'] as const;
