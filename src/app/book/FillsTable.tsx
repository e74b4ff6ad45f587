import type { FillRow } from '../../job/book';
import { amount } from '../../words/sentence';
import { volumeWithRange } from '../../words/volumeWayWords';
import { waterFill } from '../../yield';
import { moldWords } from '../shelf/moldWords';
import { settingC } from '../words/bookPage';
import type { BookProps } from './bookProps';
import { DeleteRow } from './DeleteRow';
import { pieceOf } from './rowsById';

/** Molds that were filled with water: the last fill of a mold wins over its scan. */
export function FillsTable({ book: { rows, piece, pieces }, undos }: Pick<BookProps, 'book' | 'undos'>) {
  const fills = rows.filter(
    (row): row is FillRow => row.kind === 'fill' && (piece === undefined || row.piece === piece.id),
  );
  if (fills.length === 0) return null;
  return (
    <table className="fold" role="table">
      <caption>Water fills. The last one of a mold counts, before any scan of it.</caption>
      <thead role="rowgroup">
        <tr role="row">
          {['Mold', 'Water', 'Cavity'].map((head, n) => (
            <th key={head} role="columnheader" scope="col" className={n > 0 ? 'num' : undefined}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {fills.map((fill) => {
          const of = fill.piece === undefined ? undefined : pieceOf(fill.piece, pieces);
          const mold =
            fill.mold === undefined
              ? ''
              : of !== undefined && Object.hasOwn(of.molds, fill.mold)
                ? moldWords(of, fill.mold)
                : fill.mold;
          const name = [of?.name ?? fill.piece ?? 'Piece not said', mold].filter(Boolean).join(', ');
          return (
            <tr key={fill.id} role="row">
              <th role="rowheader" scope="row">
                {name}
                {fill.day !== undefined && <span className="where">{fill.day}</span>}
                <DeleteRow id={fill.id} what={`The water fill of ${name}`} undos={undos} />
              </th>
              <td role="cell" className="num" data-l="Water">
                {fill.waterG === undefined ? 'not weighed' : `${amount(fill.waterG, 6)} g`}
                {fill.waterTempC !== undefined && ` at ${settingC(fill.waterTempC)}`}
              </td>
              <td role="cell" className="num cavity" data-l="Cavity">
                {cavityText(fill)}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function cavityText({ waterG, waterTempC }: FillRow): string {
  if (waterG === undefined) return 'not known';
  const filled = waterFill({ waterG, ...(waterTempC === undefined ? {} : { waterTempC }) });
  return filled.ok ? volumeWithRange(filled.value, 4, 'metric') : 'not known';
}
