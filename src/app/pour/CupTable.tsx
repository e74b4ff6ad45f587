import { gramsText } from '../../units';
import type { PourOnPage } from '../../worker/pour';

/** Each cup as it is weighed, A and B, and all together: the sums hold to the last step of the scale. */
export function CupTable({ pour: { cups, batch } }: { pour: PourOnPage }) {
  const grams = (massG: number): string => gramsText(massG, batch.stepG);
  const rows = [
    ...cups.cups.map((cup, n) => ({ name: `Cup ${n + 1}`, ...cup })),
    { name: 'All cups', partAG: cups.partAG, partBG: cups.partBG, totalG: cups.totalG },
  ];
  return (
    <table className="fold cups" role="table">
      <caption>Each cup keeps its own residue, so {cups.cups.length} cups mix more than one would.</caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">
            Cup
          </th>
          {['A, g', 'B, g', 'Together, g'].map((name) => (
            <th key={name} role="columnheader" scope="col" className="num">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map(({ name, partAG, partBG, totalG }) => (
          <tr key={name} role="row">
            <th role="rowheader" scope="row">
              {name}
            </th>
            <td role="cell" className="num" data-l="A, g">
              {grams(partAG)}
            </td>
            <td role="cell" className="num" data-l="B, g">
              {grams(partBG)}
            </td>
            <td role="cell" className="num" data-l="Together, g">
              {grams(totalG)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
