import { MOLD_TYPES, type MoldKey } from '../../geometry';
import type { Mold } from '../../plan';
import { amount } from '../../words/sentence';
import type { AskProps } from '../measure/askProps';
import { moldNow } from '../ticket/now';
import { typeOf } from '../ticket/moldState';
import { buyCell, lockedCell, shellCell, thicknessCell, totalKg } from '../words/moldFigures';

interface Row {
  name: string;
  cell: (mold: Mold) => string;
}

const rows = (hasStock: boolean): Row[] => [
  { name: 'Silicone, kg', cell: (mold) => totalKg(mold).value },
  { name: 'Volume of rubber, L', cell: ({ siliconeCm3 }) => amount(siliconeCm3.value / 1000, 3) },
  { name: 'Wall or skin, mm', cell: thicknessCell },
  { name: 'Locked behind undercuts, cm³', cell: lockedCell },
  { name: 'Outer shell', cell: shellCell },
  { name: hasStock ? 'To buy beyond stock' : 'To buy', cell: buyCell },
];

/** The types as columns, a radio in each head. The rows stay while figures come and go, so that nothing below moves. */
export function TypeTable({ ticket, dispatch }: Omit<AskProps, 'mark'>) {
  const { state, answer } = moldNow(ticket);
  const chosen = typeOf(ticket.molding).key;
  const hasStock = [ticket.fields.stockBase, ticket.fields.stockCatalyst].some(({ text }) => text !== '');
  const cellOf = (type: MoldKey, { cell }: Row): string => {
    const mold = answer?.find((one) => one.type === type)?.mold;
    if (mold?.ok === true) return cell(mold.value);
    return state === 'working' ? '…' : 'none';
  };
  return (
    <table className="types" role="table">
      <thead role="rowgroup">
        <tr role="row">
          <td role="cell" />
          {MOLD_TYPES.map(({ key, title }) => (
            <th key={key} role="columnheader" scope="col" className={key === chosen ? 'num pick' : 'num'}>
              <label>
                <span>{title}</span>
                <input
                  type="radio"
                  name="mold-type"
                  value={key}
                  checked={key === chosen}
                  onChange={() => dispatch({ do: 'molding', molding: { type: key } })}
                />
              </label>
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows(hasStock).map((row, i) => (
          <tr key={i} role="row">
            <th role="rowheader" scope="row">
              {row.name}
            </th>
            {MOLD_TYPES.map(({ key }) => (
              <td
                key={key}
                role="cell"
                data-type={key}
                className={`num${key === chosen ? ' pick' : ''}${i === 0 ? ' rank' : ''}`}
              >
                {cellOf(key, row)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
