import type { StockRow } from '../../job/stockRow';
import { lotsOf } from '../../job/stockTake';
import type { Answers, StockTaken, WeighState } from '../../job/weighState';
import { formatGrams, numberText } from '../../units';
import { BigChoices } from './BigChoices';
import type { Parts } from './pourOfWeigh';
import { stockWanted } from './stockWanted';

interface LotQuestionProps {
  stock: readonly StockRow[];
  foam: string | undefined;
  /** Of the row as it would be written. */
  lot: string | undefined;
  parts: Parts | undefined;
  stepG: number;
  state: WeighState;
  onSay: (more: Answers) => void;
}

/** Which lot it was poured from, and whether the shop's stock is to become less by it: only where it is ticked. */
export function LotQuestion({ stock, foam, lot, parts, stepG, state, onSay }: LotQuestionProps) {
  const lots = foam === undefined ? [] : lotsOf(stock, foam);
  const named = lots.flatMap((row) => (row.lot === undefined ? [] : [row.lot]));
  if (lots.length === 0) return null;
  const wanted = stockWanted(stock, foam, lot, parts);
  return (
    <>
      {named.length > 0 && (
        <BigChoices
          legend="Which lot was it?"
          name="weigh-lot"
          options={named.map((one) => ({ value: one, label: one }))}
          chosen={lot === undefined ? [] : [lot]}
          onChoose={(one) => onSay({ lot: one })}
        />
      )}
      {state.takenOff !== undefined ? (
        <p className="note quiet">
          {numberText(state.takenOff.aKg)} kg of A and {numberText(state.takenOff.bKg)} kg of B went off{' '}
          {lotWords(state.takenOff.lot)} already.
        </p>
      ) : (
        wanted !== undefined &&
        parts !== undefined && (
          <label className="tick">
            <input
              type="checkbox"
              checked={state.isTaken === true}
              onChange={(e) => onSay({ isTaken: e.target.checked })}
            />
            <span>
              Take {formatGrams(parts.aG, stepG)} of A and {formatGrams(parts.bG, stepG)} of B off{' '}
              {lotWords(wanted.lot)}
              {shortWords(
                lots.find((row) => row.lot === wanted.lot)!,
                wanted,
              )}
            </span>
          </label>
        )
      )}
    </>
  );
}

const lotWords = (lot: string | undefined): string => (lot === undefined ? 'the stock' : `lot ${lot}`);

/** More was poured than stands on the shelf. */
function shortWords({ aKg, bKg }: StockRow, wanted: StockTaken): string {
  const short = [
    ...(aKg !== undefined && aKg < wanted.aKg ? [`${numberText(aKg)} kg of A`] : []),
    ...(bKg !== undefined && bKg < wanted.bKg ? [`${numberText(bKg)} kg of B`] : []),
  ];
  return short.length === 0 ? '' : `: only ${short.join(' and ')} stand there, so nothing will be left`;
}
