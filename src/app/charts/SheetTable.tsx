import { amount } from '../../words/sentence';
import { isNumberColumn, type Cell, type Sheet } from './sheet';

/** The data of a chart as a table. Narrow enough for a phone: it does not fold. */
export function SheetTable({ sheet, label }: { sheet: Sheet; label: string }) {
  const align = (column: number): string | undefined => (isNumberColumn(sheet, column) ? 'num' : undefined);
  return (
    <table aria-label={label}>
      <thead>
        <tr>
          {sheet.heads.map((head, column) => (
            <th key={head} scope="col" className={align(column)}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {sheet.rows.map((row, n) => (
          <tr key={n}>
            {row.map((cell, column) =>
              column === 0 ? (
                <th key={column} scope="row">
                  {text(cell)}
                </th>
              ) : (
                <td key={column} className={align(column)}>
                  {text(cell)}
                </td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const text = (cell: Cell): string => (typeof cell === 'number' ? amount(cell, 9) : cell);
