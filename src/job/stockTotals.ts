import type { StockRow } from './stockRow';

export const STOCK_PARTS = ['aKg', 'bKg', 'baseKg', 'catalystKg'] as const;
export type StockPart = (typeof STOCK_PARTS)[number];

/** What is left of one card, part by part over all its lots. A part that no lot names is left out: nobody has counted it. */
export function stockTotals(stock: readonly StockRow[], card: string): Partial<Record<StockPart, number>> {
  const rows = stock.filter((row) => row.card === card);
  return Object.fromEntries(
    STOCK_PARTS.flatMap((part) => {
      const counted = rows.map((row) => row[part]).filter((kg) => kg !== undefined);
      return counted.length === 0 ? [] : [[part, counted.reduce((sum, kg) => sum + kg, 0)]];
    }),
  );
}
