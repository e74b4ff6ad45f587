export interface FigureRow {
  name: string;
  value: string;
  /** A gray line under the name. */
  where?: string | undefined;
  /** Nobody has said what stands in the gray line. */
  isAssumed?: boolean;
}

/** Names and values; on phones each row becomes a block. Roles are written out, since a folded table loses them. */
export function FigureTable({
  rows,
  caption,
  head = ['What', 'Value'],
}: {
  rows: readonly FigureRow[];
  caption: string;
  head?: readonly [string, string];
}) {
  return (
    <table className="fold figures" role="table">
      <caption>{caption}</caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">
            {head[0]}
          </th>
          <th role="columnheader" scope="col" className="num">
            {head[1]}
          </th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map(({ name, value, where, isAssumed }) => (
          <tr key={name} role="row">
            <th role="rowheader" scope="row">
              {name}
              {where !== undefined && (
                <span className="where">
                  <span className={isAssumed === true ? 'assumed' : undefined}>{where}</span>
                </span>
              )}
            </th>
            <td role="cell" className="num">
              {value}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
