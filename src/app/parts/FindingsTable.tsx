import type { Problem } from '../../problem';
import { sayOnPage } from '../words/sayOnPage';
import { StatusMark } from './StatusMark';

/** Findings as rows; on phones each row becomes a block. Roles are written out, since a folded table loses them. */
export function FindingsTable({ findings, caption }: { findings: readonly Problem[]; caption: string }) {
  return (
    <table className="fold" role="table">
      <caption>{caption}</caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">
            No.
          </th>
          <th role="columnheader" scope="col">
            Finding
          </th>
          <th role="columnheader" scope="col">
            Status
          </th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        {findings.map((finding, i) => (
          <FindingRow key={i} no={i + 1} finding={finding} />
        ))}
      </tbody>
    </table>
  );
}

function FindingRow({ no, finding }: { no: number; finding: Problem }) {
  const { text, hint } = sayOnPage(finding);
  return (
    <tr role="row">
      <td role="cell" className="no">
        {no}
      </td>
      <th role="rowheader" scope="row">
        <span className="pn" aria-hidden="true">
          {no}.{' '}
        </span>
        {text} <span className="where">{hint}</span>
      </th>
      <td role="cell" data-l="Status">
        <StatusMark mark={finding.status} />
      </td>
    </tr>
  );
}
