import { gramsText, numberText } from '../../units';
import { RULES, type PackColumn } from '../../yield';
import { chanceWords } from '../../words/chance';
import { amount } from '../../words/sentence';
import type { BatchProps } from '../batch/batchProps';
import { Letter } from '../parts/Letter';
import { valueIn } from '../ticket/readField';
import { packsOf } from '../ticket/pourWishes';

interface Row {
  key: string;
  name: React.ReactNode;
  isBig?: boolean;
  cell: (column: PackColumn) => string;
}

const ROWS: readonly Row[] = [
  {
    key: 'A',
    name: (
      <>
        <Letter of="A" /> grams
      </>
    ),
    isBig: true,
    cell: ({ batch }) => gramsText(batch.partAG, batch.stepG),
  },
  {
    key: 'B',
    name: (
      <>
        <Letter of="B" /> grams
      </>
    ),
    isBig: true,
    cell: ({ batch }) => gramsText(batch.partBG, batch.stepG),
  },
  { key: 'mixed', name: 'Mixed, g', cell: ({ batch }) => gramsText(batch.totalG, batch.stepG) },
  {
    key: 'density',
    name: 'Density in the mold, kg/m³',
    cell: ({ batch }) => batch.moldedDensityKgM3.toFixed(1),
  },
  {
    key: 'chance',
    name: 'Chance of a short fill',
    cell: ({ batch }) => chanceWords(batch.shortFillChance),
  },
  { key: 'pressure', name: 'Pressure at most, kPa', cell: ({ pressureKPa }) => amount(pressureKPa.high, 2) },
  {
    key: 'stiffness',
    name: 'Stiffness, times that of the chosen pack',
    cell: ({ stiffnessRatio }) => stiffnessRatio.value.toFixed(2),
  },
];
const CLAMP: readonly Row[] = [
  {
    key: 'clamp',
    name: 'Clamp force, N',
    cell: ({ clamp }) => (clamp === undefined ? 'none' : amount(clamp.clampN, 2)),
  },
  {
    key: 'straps',
    name: 'Straps it takes',
    cell: ({ straps }) => (straps === undefined ? 'none' : String(straps.strapsNeeded)),
  },
];
const COST: readonly Row[] = [
  {
    key: 'cost',
    name: 'Mix costs',
    cell: ({ cost }) => (cost === undefined ? 'none' : money(cost.mixPrice)),
  },
  {
    key: 'failure',
    name: 'A failed casting, times its chance',
    cell: ({ cost }) => (cost === undefined ? 'none' : money(cost.expectedFailurePrice)),
  },
  {
    key: 'more',
    name: '5 % more pack: costs, saves',
    cell: ({ cost }) =>
      cost === undefined ? 'none' : `${money(cost.morePackPrice)}, ${money(cost.morePackSaves)}`,
  },
];

const PAST: readonly Row[] = [
  {
    key: 'past',
    name: 'Castings of before that filled',
    cell: ({ past }) =>
      past === undefined || past.poured === 0 ? 'none' : `${past.filled} of ${past.poured}`,
  },
];

/** In the shop's own money. */
const money = (price: number): string => (price > 0 && price < 0.005 ? 'under 0.01' : price.toFixed(2));

/** Packs as columns, a radio in each head. The rows stay while figures come and go, so that nothing below moves. */
export function PackTable({ ticket, dispatch, pour }: BatchProps) {
  const packs = packsOf(ticket);
  const said = valueIn(ticket.fields, 'pack');
  const assumed = said === undefined ? RULES.packFactor.value : undefined;
  const chosen = said ?? RULES.packFactor.value;
  const has = {
    clamp: ticket.fields.projected.text.trim() !== '',
    cost: hasPrices(ticket),
    past: ticket.pouring.past.trim() !== '',
  };
  const rows = [...ROWS, ...(has.clamp ? CLAMP : []), ...(has.cost ? COST : []), ...(has.past ? PAST : [])];
  const cellOf = (packFactor: number, { cell }: Row): string => {
    const column = pour.answer?.packs?.columns.find((one) => one.packFactor === packFactor);
    if (column === undefined) return pour.state === 'working' ? '…' : 'none';
    return column.refused === undefined ? cell(column) : 'none';
  };
  return (
    <table className="types packs" role="table" style={{ '--columns': packs.length } as React.CSSProperties}>
      <caption>
        Pressure and stiffness are estimates: pressure at most is twice the ideal-gas figure until a peak was
        measured, and stiffness holds only within this one foam.
        {(pour.answer?.cups.cups.length ?? 1) > 1 &&
          ' Grams are those of one cup; several cups keep a residue each and take more.'}
      </caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col" className="corner">
            Pack factor
          </th>
          {packs.map((packFactor) => (
            <th
              key={packFactor}
              role="columnheader"
              scope="col"
              className={packFactor === chosen ? 'num pick' : 'num'}
            >
              <label>
                <span>
                  <span className="sr">Pack </span>
                  <span className={packFactor === assumed ? 'assumed' : undefined}>
                    {packFactor.toFixed(2)}
                  </span>
                </span>
                <input
                  type="radio"
                  name="pack-level"
                  value={packFactor}
                  checked={packFactor === chosen}
                  onChange={() => dispatch({ do: 'type', field: 'pack', text: numberText(packFactor) })}
                />
              </label>
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map((row) => (
          <tr key={row.key} role="row">
            <th role="rowheader" scope="row">
              {row.name}
            </th>
            {packs.map((packFactor) => (
              <td
                key={packFactor}
                role="cell"
                data-pack={packFactor.toFixed(2)}
                className={`num${packFactor === chosen ? ' pick' : ''}${row.isBig === true ? ' rank' : ''}`}
              >
                {cellOf(packFactor, row)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const hasPrices = ({ fields }: BatchProps['ticket']): boolean =>
  fields.priceA.text.trim() !== '' && fields.priceB.text.trim() !== '';
