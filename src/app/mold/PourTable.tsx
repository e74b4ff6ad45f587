import { gramsText } from '../../units';
import type { Mold } from '../../plan';
import { amount } from '../../words/sentence';

/** What is mixed at one time: a coat sets before the next, a half before the other. Each mix as it is weighed. */
export function PourTable({
  silicone: { pours, smallestMixG },
  process: { fillMin },
}: Pick<Mold, 'silicone' | 'process'>) {
  const step = pours[0]?.order.stepG ?? 1;
  const grams = (massG: number): string => gramsText(massG, step);
  const largest = pours.reduce((one, other) =>
    other.order.largestMixG < one.order.largestMixG ? other : one,
  ).order;
  return (
    <table className="fold" role="table">
      <caption>
        The smallest mix that a scale with steps of {amount(step)} g can split is{' '}
        {amount(Math.ceil(smallestMixG))} g; the largest is {grams(Math.floor(largest.largestMixG))} g, set by
        the {largest.limitedBy}: {amount(largest.applyMin, 2)} min are left to brush or pour.
        {fillMin !== undefined && ` The gap fills in ${amount(fillMin, 2)} min through the funnel.`}
      </caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">
            Pour or coat
          </th>
          {['All, g', 'Mixes', 'Base a mix, g', 'Catalyst a mix, g'].map((name) => (
            <th key={name} role="columnheader" scope="col" className="num">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {pours.map(({ name, order, coat }) => (
          <tr key={name} role="row">
            <th role="rowheader" scope="row">
              {name.charAt(0).toUpperCase() + name.slice(1)}
              {coat !== undefined && (
                <span className="where">
                  {amount(coat.thicknessMm, 3)} mm; {amount(coat.outerMm, 3)} mm with it
                </span>
              )}
            </th>
            <td role="cell" className="num" data-l="All, g">
              {grams(order.totalG)}
            </td>
            <td role="cell" className="num" data-l="Mixes">
              {order.mixes.length}
            </td>
            <td role="cell" className="num" data-l="Base a mix, g">
              {grams(order.mix.baseG)}
            </td>
            <td role="cell" className="num" data-l="Catalyst a mix, g">
              {grams(order.mix.catalystG)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
