import { MOLD_TYPES, type MoldKey } from '../../geometry';
import type { AskProps } from '../measure/askProps';
import { moldNow } from '../ticket/now';
import { typeOf } from '../ticket/moldState';
import { liveSilicone } from './liveSilicone';
import { typeRows, type TypeRow } from './typeRows';

/** The types as columns, a radio in each head. The rows stay while figures come and go, so that nothing below moves. */
export function TypeTable({ ticket, dispatch }: Omit<AskProps, 'mark'>) {
  const { state, answer } = moldNow(ticket);
  const chosen = typeOf(ticket.molding).key;
  const live = liveSilicone(ticket);
  const cellOf = (type: MoldKey, { cell, live: told }: TypeRow): string => {
    const mold = answer?.find((one) => one.type === type)?.mold;
    if (mold?.ok === true) return cell(mold.value);
    if (state !== 'working') return 'none';
    return type === chosen && told !== undefined && live.state === 'told' ? told(live) : '…';
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
        {typeRows(ticket).map((row, i) => (
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
