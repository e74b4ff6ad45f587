import type { Problem } from '../../problem';
import { amount } from '../../words/sentence';
import { sayOnPage } from '../words/sayOnPage';
import { StatusMark } from './StatusMark';

/** Findings as rows; on phones each row becomes a block. Roles are written out, since a folded table loses them. */
export function FindingsTable({
  findings,
  caption,
  effect,
}: {
  findings: readonly Problem[];
  caption: string;
  effect: boolean;
}) {
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
          {effect && (
            <th role="columnheader" scope="col" className="num">
              Effect on volume
            </th>
          )}
          <th role="columnheader" scope="col">
            Status
          </th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        {findings.map((finding, i) => (
          <FindingRow key={i} no={i + 1} finding={finding} effect={effect} />
        ))}
      </tbody>
    </table>
  );
}

function FindingRow({ no, finding, effect }: { no: number; finding: Problem; effect: boolean }) {
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
      {effect && (
        <td role="cell" className="num" data-l="Effect on volume">
          {effectWords(finding)}
        </td>
      )}
      <td role="cell" data-l="Status">
        <StatusMark mark={finding.status} />
      </td>
    </tr>
  );
}

/** Holes, rounding and merged corners widen the range both ways; every other effect has a sign. */
function effectWords({ code, values: { effectCm3 } }: Problem): string {
  if (typeof effectCm3 !== 'number') return 'not told';
  if (effectCm3 === 0) return 'none';
  const size = `${amount(Math.abs(effectCm3), 3)} cm³`;
  if (code === 'NOT_CLOSED' || code === 'PRECISION' || code === 'WELDED') return `± ${size}`;
  return `${effectCm3 < 0 ? '−' : '+'} ${size}`;
}
