import type { CheckedPour } from '../../job/book';
import type { Piece } from '../../job/piece';
import { amount } from '../../words/sentence';
import { PourPhoto } from '../weigh/PourPhoto';
import { NOT_SAID, NOT_WEIGHED } from '../words/bookPage';
import { castingName, noteOf } from './pourRow';

/** As many of the last pours a phone shows before it is asked for all. */
const LAST_ON_PHONE = 4;

interface PoursTableProps {
  pours: readonly CheckedPour[];
  pieces: readonly Piece[];
  /** A phone shows all of them. */
  isWhole: boolean;
}

/** Pours as rows; on phones each becomes a block. Roles are written out, since a folded table loses them. */
export function PoursTable({ pours, pieces, isWhole }: PoursTableProps) {
  return (
    <table className={isWhole ? 'pours' : 'pours last'} role="table">
      <caption>Grams unless it says otherwise. Skin 1 (ragged) to 5 (hard as cast).</caption>
      <thead role="rowgroup">
        <tr role="row">
          {HEADS.map(([head, isNumber]) => (
            <th key={head} role="columnheader" scope="col" className={isNumber ? 'num' : undefined}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {pours.map((pour, n) => (
          <PourTr key={pour.row.id} pour={pour} pieces={pieces} isOld={n < pours.length - LAST_ON_PHONE} />
        ))}
      </tbody>
    </table>
  );
}

export const countOfOld = (pours: readonly CheckedPour[]): number =>
  Math.max(0, pours.length - LAST_ON_PHONE);

const HEADS: readonly (readonly [string, boolean])[] = [
  ['No.', true],
  ['Piece', false],
  ['Foam', false],
  ['Pack', true],
  ['Room / mold °C', true],
  ['Neck', false],
  ['A', true],
  ['B', true],
  ['Mixed', true],
  ['In cup', true],
  ['Casting', true],
  ['Trim', true],
  ['Skin', true],
  ['Note', false],
];

function PourTr({ pour, pieces, isOld }: { pour: CheckedPour; pieces: readonly Piece[]; isOld: boolean }) {
  const { no, row, slips } = pour;
  const doubted = (field: string): boolean => slips.some((slip) => slip.field === field);
  const grams = (field: 'aG' | 'bG' | 'mixedG' | 'residueG' | 'castingG' | 'trimG', head: string) => (
    <td role="cell" className="num" data-k={head}>
      <Value
        blank={NOT_WEIGHED}
        text={row[field] === undefined ? undefined : amount(row[field], 6)}
        isDoubted={doubted(field)}
      />
    </td>
  );
  const classes = [isOld && 'old', row.isLeftOut === true && 'out'].filter(Boolean).join(' ');
  return (
    <tr role="row" className={classes === '' ? undefined : classes}>
      <td role="cell" className="num no">
        {no}
      </td>
      <th role="rowheader" scope="row">
        {castingName(row, pieces)}
      </th>
      <td role="cell" className="foam">
        {row.foam ?? NOT_SAID}
      </td>
      <td role="cell" className="num" data-k="pack">
        {row.pack === undefined ? <Value /> : row.pack.toFixed(2)}
      </td>
      <td role="cell" className="num wide" data-k="room / mold °C">
        <Value text={warmth(row.roomC)} isDoubted={doubted('roomC')} /> /{' '}
        <Value text={warmth(row.moldC)} isDoubted={doubted('moldC')} />
      </td>
      <td role="cell" data-k="neck">
        {row.opening ?? <Value />}
      </td>
      {grams('aG', 'A')}
      {grams('bG', 'B')}
      {grams('mixedG', 'mixed')}
      {grams('residueG', 'in cup')}
      {grams('castingG', 'casting')}
      {grams('trimG', 'trim')}
      <td role="cell" className="num sk" data-k="skin">
        {row.skin === undefined ? <Value /> : <b>{amount(row.skin)}</b>}
      </td>
      <td role="cell" className="nt">
        {noteOf(pour)}
        {row.photo !== undefined && <PourPhoto id={row.photo} alt={`Photo of pour ${no}`} />}
      </td>
    </tr>
  );
}

const warmth = (tempC: number | undefined): string | undefined =>
  tempC === undefined ? undefined : amount(tempC, 3);

/** What is asked about is underlined as anything that nobody has confirmed. */
function Value({
  text,
  isDoubted = false,
  blank = NOT_SAID,
}: {
  text?: string | undefined;
  isDoubted?: boolean;
  blank?: string;
}) {
  if (text === undefined) return <span className="quiet">{blank}</span>;
  return isDoubted ? (
    <span className="assumed">
      {text}
      <span className="sr">, asked about below</span>
    </span>
  ) : (
    <>{text}</>
  );
}
