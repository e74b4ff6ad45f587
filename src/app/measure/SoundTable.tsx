import type { Dispatch } from 'react';
import { StatusMark } from '../parts/StatusMark';
import { usePlaceRow } from '../picture/placePicker';
import { ShowButton } from '../picture/ShowButton';
import type { Action } from '../ticket/reducer';
import type { SoundRow } from './soundRows';

interface SoundTableProps {
  rows: readonly SoundRow[];
  dispatch: Dispatch<Action>;
}

/** Findings with a verb each; on phones a row becomes a block. Roles are written out, since a folded table loses them. */
export function SoundTable({ rows, dispatch }: SoundTableProps) {
  return (
    <table className="fold sound" role="table">
      <caption>
        The file is kept as it was. Nothing is mended, left out or cut without a row here, and what can be
        taken either way has its verb.
      </caption>
      <thead role="rowgroup">
        <tr role="row">
          {HEADS.map(([head, kind]) => (
            <th key={head} role="columnheader" scope="col" className={kind}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map((row) => (
          <Row key={row.no} row={row} dispatch={dispatch} />
        ))}
      </tbody>
    </table>
  );
}

const HEADS = [
  ['No.', ''],
  ['Finding', ''],
  ['Effect on volume', 'num'],
  ['Status', ''],
  ['Change', ''],
] as const;

type RowProps = { row: SoundRow } & Pick<SoundTableProps, 'dispatch'>;

function Row({ row, dispatch }: RowProps) {
  const { no, text, hint, where, effect, problem } = row;
  const { rowRef, current, onShow } = usePlaceRow(row.at === undefined ? undefined : no);
  return (
    <tr role="row" ref={rowRef} {...current} data-n={no}>
      <td role="cell" className="no">
        {no}
      </td>
      <th role="rowheader" scope="row">
        <span className="pn" aria-hidden="true">
          {no}.{' '}
        </span>
        {text} {hint !== '' && <span className="where">{hint}</span>}
        {where !== undefined && <span className="where">{where}.</span>}
      </th>
      <td role="cell" className="num" data-l="Effect on volume">
        {effect}
      </td>
      <td role="cell" data-l="Status">
        <StatusMark mark={problem.status} />
      </td>
      {row.verb === undefined && onShow === undefined ? (
        <td role="cell" data-l="Change">
          nothing
        </td>
      ) : (
        <td role="cell" className="choose" data-l="Change">
          <Verbs {...{ row, dispatch }} onShow={onShow} />
        </td>
      )}
    </tr>
  );
}

function Verbs({ row: { no, verb }, dispatch, onShow }: RowProps & { onShow: (() => void) | undefined }) {
  return (
    <div className="acts">
      {verb !== undefined && (
        <button type="button" className="act" onClick={() => dispatch(verb.word)}>
          {verb.label}
          <span className="sr"> (finding {no})</span>
        </button>
      )}
      {onShow !== undefined && <ShowButton onShow={onShow} which={`finding ${no}`} />}
    </div>
  );
}
