import type { AskedField, PourRow } from '../../job/book';
import type { StockTaken, WeighState } from '../../job/weighState';
import type { ShopCore } from '../../store';
import type { MassBalance } from '../../yield';
import { balanceNow } from './balanceNow';
import { pourOfWeigh, stepOf, withKept, type WeighFacts, type WeighRead } from './pourOfWeigh';
import { slipAsks, type SlipAsk } from './slipAsks';
import { stockWanted } from './stockWanted';

/** All that a weigh-back says as it stands. */
export interface WeighNow {
  read: WeighRead;
  /** In the step of the scale, g. */
  stepG: number;
  balance: MassBalance | undefined;
  asks: SlipAsk[];
  /** What would be written. */
  draft: Omit<PourRow, 'id'>;
  /** What would go off the stock: only where it is ticked, and once. */
  take: StockTaken | undefined;
}

export function weighNow(
  state: WeighState,
  facts: WeighFacts,
  { foams, stock }: Pick<ShopCore, 'foams' | 'stock'>,
): WeighNow {
  const read = pourOfWeigh(state, facts);
  const stepG = stepOf(facts);
  const asks = slipAsks(
    state,
    read,
    facts,
    foams.find(({ name }) => name === read.draft.foam),
  );
  const kept = asks.filter(({ isKept }) => isKept).map(({ slip }): AskedField => slip.field);
  const isTaken = state.isTaken === true && state.takenOff === undefined;
  const { foam, lot } = read.draft;
  return {
    read,
    stepG,
    balance: balanceNow(read, stepG),
    asks,
    draft: withKept(read.draft, [...new Set(kept)]),
    take: isTaken ? stockWanted(stock, foam, lot, read.parts) : undefined,
  };
}
