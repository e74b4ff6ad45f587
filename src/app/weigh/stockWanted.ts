import type { StockRow } from '../../job/stockRow';
import { lotsOf } from '../../job/stockTake';
import type { StockTaken } from '../../job/weighState';
import type { Parts } from './pourOfWeigh';

/** What a tick would take; undefined where lot or masses are not known. */
export function stockWanted(
  stock: readonly StockRow[],
  foam: string | undefined,
  lot: string | undefined,
  parts: Parts | undefined,
): StockTaken | undefined {
  if (foam === undefined || parts === undefined) return undefined;
  const row = lotsOf(stock, foam).find((one) => one.lot === lot);
  if (row === undefined) return undefined;
  return {
    card: foam,
    ...(row.lot === undefined ? {} : { lot: row.lot }),
    aKg: parts.aG / 1000,
    bKg: parts.bG / 1000,
  };
}
