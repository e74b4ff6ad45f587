import { percent } from '../../words/sentence';
import { RULES } from '../../yield';
import type { Undos } from '../shelf/useUndos';
import { StatusMark } from '../parts/StatusMark';
import { DeleteRow } from './DeleteRow';
import type { LotRow } from './lotRows';

/** Cup tests and untested lots as rows; on phones each becomes a block. */
export const LotsTable = ({ lots, undos }: { lots: readonly LotRow[]; undos: Undos }) => (
  <table className="fold lots" role="table">
    <caption>
      Against the card: within {percent(RULES.uFreeRiseLabel.value)} is within the doubt of a data sheet. A
      card&rsquo;s density holds at the temperature on its sheet; a colder cup weighs more.
    </caption>
    <thead role="rowgroup">
      <tr role="row">
        {['Foam and lot', 'Room', 'Foam in the cup', 'Free rise', 'Against the card', 'Status'].map(
          (head, n) => (
            <th key={head} role="columnheader" scope="col" className={n > 0 && n < 5 ? 'num' : undefined}>
              {head}
            </th>
          ),
        )}
      </tr>
    </thead>
    <tbody role="rowgroup">
      {lots.map((lot) => (
        <tr key={lot.id} role="row">
          <th role="rowheader" scope="row">
            {lot.name}
            {lot.where !== undefined && <span className="where">{lot.where}</span>}
            {lot.words !== '' && <span className="where">{lot.words}</span>}
            {!lot.id.startsWith('stock ') && (
              <DeleteRow id={lot.id} what={`The cup test of ${lot.name}`} undos={undos} />
            )}
          </th>
          <td role="cell" className="num" data-l="Room">
            {lot.cup}
          </td>
          <td role="cell" className="num" data-l="Foam in the cup">
            {lot.foam}
          </td>
          <td role="cell" className="num" data-l="Free rise">
            {lot.freeRise}
          </td>
          <td role="cell" className="num" data-l="Against the card">
            {lot.against}
          </td>
          <td role="cell" data-l="Status">
            <StatusMark mark={lot.mark} />
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);
