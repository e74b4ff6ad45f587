import type { StockRow } from './stockRow';
import type { StockTaken } from './weighState';

/** Lots of one card that can become less: by their places in the stock. */
export const lotsOf = (stock: readonly StockRow[], card: string): StockRow[] =>
  stock.filter((row) => row.card === card && (row.aKg !== undefined || row.bKg !== undefined));

/**
 * The stock with so much of A and B less in the first lot of that name. Nothing falls below 0 and a part that nobody has counted stays so:
 * `taken` is what really went, in kg. Undefined where there is no such lot.
 */
export function takeOff(
  stock: readonly StockRow[],
  wanted: StockTaken,
): { stock: StockRow[]; taken: StockTaken } | undefined {
  const row = lotsOf(stock, wanted.card).find(({ lot }) => lot === wanted.lot);
  if (row === undefined) return undefined;
  const aKg = Math.min(row.aKg ?? 0, wanted.aKg);
  const bKg = Math.min(row.bKg ?? 0, wanted.bKg);
  return { stock: changed(stock, row, -aKg, -bKg), taken: { ...wanted, aKg, bKg } };
}

/** The stock with what was taken put back; as it is where the lot has gone since. */
export function giveBack(stock: readonly StockRow[], { card, lot, aKg, bKg }: StockTaken): StockRow[] {
  const row = lotsOf(stock, card).find((one) => one.lot === lot);
  return row === undefined ? [...stock] : changed(stock, row, aKg, bKg);
}

const changed = (stock: readonly StockRow[], row: StockRow, aKg: number, bKg: number): StockRow[] =>
  stock.map((one) =>
    one === row
      ? {
          ...row,
          ...(row.aKg === undefined ? {} : { aKg: toMilligram(row.aKg + aKg) }),
          ...(row.bKg === undefined ? {} : { bKg: toMilligram(row.bKg + bKg) }),
        }
      : one,
  );

/** Sums of binary fractions carry dust behind the last figure that any scale shows. */
const toMilligram = (kg: number): number => Math.round(kg * 1e6) / 1e6;
