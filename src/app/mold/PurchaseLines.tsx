import type { Mold } from '../../plan';
import { amount } from '../../words/sentence';
import { kitsWords } from '../../words/moldPartWords';

/** What the stock gives, the kits to buy, what is left over, and the next purchase that wastes less. */
export function PurchaseLines({ silicone: { stock, purchase } }: Pick<Mold, 'silicone'>) {
  if (stock === undefined && purchase === undefined) return null;
  return (
    <ul className="lines">
      {stock !== undefined && (
        <li>
          The stock makes {amount(stock.usableKg, 3)} kg
          {stock.scarcer === 'neither' ? '' : `, as far as its ${stock.scarcer} goes`}
          {stock.needKg === 0
            ? `. After it ${amount(stock.leftBaseKg, 3)} kg of base and ${amount(stock.leftCatalystKg, 3)} kg of catalyst are left: nothing to buy.`
            : `; ${amount(stock.needKg, 3)} kg are missing.`}
        </li>
      )}
      {purchase !== undefined && (
        <>
          <li>
            <b>To buy: {kitsWords(purchase)}</b>
            {purchase.least === 'surplus' && ', chosen for the least left over'}
          </li>
          {purchase.nextCheaperWaste !== undefined && (
            <li>With less left over: {kitsWords(purchase.nextCheaperWaste)}</li>
          )}
        </>
      )}
    </ul>
  );
}
