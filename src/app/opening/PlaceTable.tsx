import type { Bounds, Vector } from '../../geometry';
import { tapeFrom } from '../../geometry';
import { lengthText } from '../../sheet/placeCardTable';
import { SIDE_WORDS } from '../../words/placeWords';
import { usePlacePicker, usePlaceRow } from '../picture/placePicker';
import { ShowButton } from '../picture/ShowButton';

export interface PlaceRow {
  /** As on the place card; absent where the spot is not on it. */
  n?: number | undefined;
  what: string;
  where?: string | undefined;
  atMm: Vector;
  cells: readonly string[];
}

interface PlaceTableProps {
  caption: string;
  boundsMm: Bounds;
  what: string;
  /** Heads of the cells. */
  heads: readonly string[];
  rows: readonly PlaceRow[];
}

const TAPE_HEADS = [
  'Up from base, mm (in)',
  'In from nearest side, mm (in)',
  'and in from, mm (in)',
] as const;

/** Places by tape, with the numbers of the place card; on phones each row becomes a block. Nothing where there are none. */
export function PlaceTable({ caption, boundsMm, what, heads, rows }: PlaceTableProps) {
  const canShow = usePlacePicker()?.canShow === true && rows.some(({ n }) => n !== undefined);
  if (rows.length === 0) return null;
  return (
    <table className="fold spots" role="table">
      <caption>{caption}</caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">
            No.
          </th>
          <th role="columnheader" scope="col">
            {what}
          </th>
          {[...heads, ...TAPE_HEADS].map((head) => (
            <th key={head} role="columnheader" scope="col" className="num">
              {head}
            </th>
          ))}
          {canShow && (
            <th role="columnheader" scope="col">
              Picture
            </th>
          )}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map((row, i) => (
          <Row key={i} {...{ row, heads, boundsMm, canShow }} />
        ))}
      </tbody>
    </table>
  );
}

interface RowProps extends Pick<PlaceTableProps, 'heads' | 'boundsMm'> {
  row: PlaceRow;
  canShow: boolean;
}

function Row({ row, heads, boundsMm, canShow }: RowProps) {
  const { n, what, where, cells } = row;
  const { rowRef, current, onShow } = usePlaceRow(n === undefined ? undefined : String(n));
  const values = [...cells, ...tapeCells(boundsMm, row.atMm)];
  return (
    <tr role="row" ref={rowRef} {...current} {...(n === undefined ? {} : { 'data-n': n })}>
      <td role="cell" className="no">
        {n ?? 'none'}
      </td>
      <th role="rowheader" scope="row">
        <span className="pn" aria-hidden="true">
          {n === undefined ? '' : `${n}. `}
        </span>
        {what}
        {where !== undefined && <span className="where">{where}</span>}
      </th>
      {[...heads, ...TAPE_HEADS].map((head, i) => (
        <td key={head} role="cell" className="num" data-l={head}>
          {values[i]}
        </td>
      ))}
      {canShow && (
        <td role="cell" className="show" data-l="Picture">
          {onShow === undefined ? 'no mark' : <ShowButton onShow={onShow} which={`place ${n}`} />}
        </td>
      )}
    </tr>
  );
}

/** As the place card has them. */
export function tapeCells(boundsMm: Bounds, atMm: Vector): [string, string, string] {
  const tape = tapeFrom(boundsMm, atMm);
  return [
    lengthText(tape.upMm, 'both'),
    `${SIDE_WORDS[tape.side]} ${lengthText(tape.inMm, 'both')}`,
    `${SIDE_WORDS[tape.acrossSide]} ${lengthText(tape.acrossMm, 'both')}`,
  ];
}
