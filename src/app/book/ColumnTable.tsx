import { BOOK_COLUMNS, type ColumnMap } from '../../job/book';
import { unitsOf, type HeadIn } from './listIn';

const NONE = '';

/** Each column of the file with what it is taken for, and the unit of its bare numbers. */
export function ColumnTable({
  heads,
  onColumn,
}: {
  heads: readonly HeadIn[];
  onColumn: (head: string, to: ColumnMap[string]) => void;
}) {
  return (
    <table className="fold columns" role="table">
      <caption>What each column of the list is. A number with a unit of its own goes by that.</caption>
      <thead role="rowgroup">
        <tr role="row">
          {['Column of the list', 'Is', 'In'].map((head) => (
            <th key={head} role="columnheader" scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {heads.map(({ head, field, unit, units }, n) => (
          <tr key={`${n} ${head}`} role="row">
            <th role="rowheader" scope="row">
              {head}
            </th>
            <td role="cell" data-l="Is">
              <select
                aria-label={`Column ${head} is`}
                value={field ?? NONE}
                onChange={(e) => onColumn(head, columnTo(e.target.value, unit))}
              >
                <option value={NONE}>left out</option>
                {BOOK_COLUMNS.map((column) => (
                  <option key={column.field} value={column.field}>
                    {column.head}
                  </option>
                ))}
              </select>
            </td>
            <td role="cell" data-l="In">
              {units.length === 0 || field === undefined ? (
                <span className="quiet">{field === undefined ? 'left out' : 'no unit'}</span>
              ) : (
                <select
                  aria-label={`Unit of column ${head}`}
                  value={unit ?? NONE}
                  onChange={(e) =>
                    onColumn(head, e.target.value === NONE ? { field } : { field, unit: e.target.value })
                  }
                >
                  <option value={NONE}>each says its own</option>
                  {[...new Set([...(unit === undefined ? [] : [unit]), ...units])].map((one) => (
                    <option key={one} value={one}>
                      {one}
                    </option>
                  ))}
                </select>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** A unit that was chosen stays where the new field can be in it. */
function columnTo(value: string, unit: string | undefined): ColumnMap[string] {
  const field = BOOK_COLUMNS.find((column) => column.field === value)?.field;
  if (field === undefined) return null;
  return unit !== undefined && unitsOf(field).includes(unit) ? { field, unit } : { field };
}
