import { type MouseEvent } from 'react';
import type { StockPart } from '../../job/stockTotals';
import type { StockRow } from '../../job/stockRow';
import type { ShopCore } from '../../store';
import { DayField } from '../parts/DayField';
import { typedText } from '../ticket/typedText';
import { KeptBox } from './KeptBox';
import { KeptText } from './KeptText';
import type { CardLeft } from './stockOf';

const KILOGRAMS = { kind: 'mass', units: ['kg', 'g', 'lb', 'oz'], allowZero: true } as const;

const PARTS: Readonly<Record<CardLeft['kind'], readonly (readonly [StockPart, string])[]>> = {
  foam: [
    ['aKg', 'A, the isocyanate'],
    ['bKg', 'B, the polyol'],
  ],
  silicone: [
    ['baseKg', 'Base'],
    ['catalystKg', 'Catalyst'],
  ],
  // A name that no card goes by: whatever stands there can be changed.
  unknown: [
    ['aKg', 'A'],
    ['bKg', 'B'],
    ['baseKg', 'Base'],
    ['catalystKg', 'Catalyst'],
  ],
};

interface StockFormProps {
  left: CardLeft;
  stock: readonly StockRow[];
  change: (how: (core: ShopCore) => ShopCore) => void;
  onDelete: (row: StockRow, at: number, event: MouseEvent) => void;
}

/** The lots of one card. */
export function StockForm({ left: { card, kind }, stock, change, onDelete }: StockFormProps) {
  const lots = stock.flatMap((row, at) => (row.card === card ? [{ row, at }] : []));
  return (
    <>
      {lots.map(({ row, at }, i) => (
        <fieldset key={at} className="lot">
          <legend>{lots.length === 1 ? `Lot of ${card}` : `Lot ${i + 1} of ${card}`}</legend>
          <LotFields row={row} kind={kind} change={(how) => change((core) => withRow(core, at, card, how))} />
          <button type="button" className="act" onClick={(event) => onDelete(row, at, event)}>
            Take this lot off the shelf
          </button>
        </fieldset>
      ))}
      <button
        type="button"
        className="act"
        onClick={() => change((core) => ({ ...core, stock: [...core.stock, { card }] }))}
      >
        Add a lot of {card}
      </button>
    </>
  );
}

function LotFields({
  row,
  kind,
  change,
}: {
  row: StockRow;
  kind: CardLeft['kind'];
  change: (how: (row: StockRow) => StockRow) => void;
}) {
  return (
    <div className="fields">
      <KeptText
        label="Lot, as on the label"
        text={row.lot ?? ''}
        onKeep={(lot) => change((now) => without(now, 'lot', lot === '' ? undefined : lot))}
      />
      {PARTS[kind].map(([part, name]) => (
        <KeptBox
          key={part}
          label={`${name}, left`}
          unitLabel={`Unit of ${name}`}
          spec={KILOGRAMS}
          kept={typedText(KILOGRAMS, grams(row[part]))}
          onKeep={(_, massG) =>
            change((now) => without(now, part, massG === undefined ? undefined : massG / 1000))
          }
        />
      ))}
      <DayField
        label="First opened on"
        day={row.openedOn ?? ''}
        note={
          row.openedOn === undefined && row.openedMonths !== undefined
            ? `written down as opened ${row.openedMonths} months before`
            : undefined
        }
        onDay={(day) =>
          change(({ openedMonths: _months, ...now }) =>
            without(now, 'openedOn', day === '' ? undefined : day),
          )
        }
      />
    </div>
  );
}

const grams = (kg: number | undefined): number | undefined => (kg === undefined ? undefined : 1000 * kg);

/** The row with another value, or without it. */
function without<K extends keyof StockRow>(row: StockRow, key: K, value: StockRow[K] | undefined): StockRow {
  const { [key]: _old, ...rest } = row;
  return (value === undefined ? rest : { ...rest, [key]: value }) as StockRow;
}

/** The shop with the row changed; nothing where another tab has taken it away. */
const withRow = (core: ShopCore, at: number, card: string, how: (row: StockRow) => StockRow): ShopCore => ({
  ...core,
  stock: core.stock.map((row, i) => (i === at && row.card === card ? how(row) : row)),
});
