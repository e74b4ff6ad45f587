import { useMemo } from 'react';
import { formatVolume } from '../../units';
import { againstWords, scanFactorWords } from '../words/bookLearned';
import type { BookProps } from './bookProps';
import { LearnedTag } from './LearnedTag';
import { scanFactors } from './scanFactors';

/** How much larger than its scan a mold came out, by water; and what that says of the next piece. */
export function MoldAgainstScan({ book: { pieces, rows, piece } }: Pick<BookProps, 'book'>) {
  const known = useMemo(() => scanFactors(pieces, rows, __APP_VERSION__), [pieces, rows]);
  const shown = known.pieces.filter((one) => piece === undefined || one.piece.id === piece.id);
  return (
    <>
      {shown.map((one) => (
        <div key={one.piece.id}>
          <h3>Mold against scan, {one.piece.name}</h3>
          <p className="ans">
            <span className="fig s">{againstWords(one.cavityCm3 / one.scanCm3)}</span>
            <LearnedTag from="water-fill" />
          </p>
          <p className="note">
            {formatVolume(one.cavityCm3)} by water, {formatVolume(one.scanCm3)} by the scan.
          </p>
        </div>
      ))}
      {known.factor !== undefined && (
        <div>
          <h3>Mold against scan, this shop</h3>
          <p className="note">{scanFactorWords(known.factor)}</p>
        </div>
      )}
    </>
  );
}
