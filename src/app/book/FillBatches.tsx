import type { ReactNode } from 'react';
import type { LearnedBook } from '../../job/book';
import type { LearnedBatch } from '../../job/book/learnFoam';
import type { Piece } from '../../job/piece';
import { fillLearnedWords } from '../../words/bookWords';
import { amount } from '../../words/sentence';
import { formatVolume } from '../../units';
import { LEARN_RULES } from '../../yield';
import { StatusMark } from '../parts/StatusMark';
import { moldWords } from '../shelf/moldWords';
import { cannotTell } from '../words/bookLearned';
import type { BookProps } from './bookProps';
import { LearnedTag } from './LearnedTag';
import { pieceName, pieceOf } from './rowsById';

interface FillBatchesProps extends Pick<BookProps, 'book'> {
  learned: LearnedBook;
  children: ReactNode;
}

/** What to mix so that each cavity fills with the wanted chance, no pack asked for. */
export function FillBatches({ learned, book: { piece, pieces }, children }: FillBatchesProps) {
  const batches = learned.foams.flatMap(({ foam, fill, batches: all }) =>
    fill === undefined
      ? []
      : all
          .filter((batch) => piece === undefined || batch.piece === piece.id)
          .map((batch) => ({ foam, fill, batch })),
  );
  if (batches.length === 0) return null;
  return (
    <div className="taught">
      {batches.map(({ foam, fill, batch }) => {
        const cavity = cavityName(batch, pieces);
        return (
          <div key={`${foam} ${cavity} ${batch.cavityCm3}`}>
            <h3>
              To fill {cavity}, {foam}
            </h3>
            <p className="ans">
              <span className="fig s">{amount(batch.mixedG, 3)} g mixed</span>
              <LearnedTag from={batch.leastMixedG.from} {...(fill.fellBack ? {} : { count: fill.pours })} />
            </p>
            <p className="note">
              {fillLearnedWords(`${cavity}, ${formatVolume(batch.cavityCm3)},`, batch)}{' '}
              {fill.fellBack
                ? `${cannotTell(fill.pours, LEARN_RULES.leastPours.value, 'pour')}; until then it goes by cup test or card.`
                : `Of ${fill.pours} pours, ${fill.exact} told it outright and ${fill.bounds} as an upper end.`}{' '}
              That just fills it: the pack for a good skin comes on top, on Batch.
            </p>
            {fill.atOdds && (
              <p className="note">
                <StatusMark mark="look" /> {foam}: the pours contradict cup and card. Ask which of them is
                wrong.
              </p>
            )}
          </div>
        );
      })}
      <div>{children}</div>
    </div>
  );
}

/** The mold as its piece calls it; an id is no name. */
function cavityName({ piece, mold }: Pick<LearnedBatch, 'piece' | 'mold'>, pieces: readonly Piece[]): string {
  const of = piece === undefined ? undefined : pieceOf(piece, pieces);
  if (mold === undefined) return pieceName(piece, pieces) ?? 'The cavity';
  return of !== undefined && Object.hasOwn(of.molds, mold) ? `${of.name}, ${moldWords(of, mold)}` : mold;
}
