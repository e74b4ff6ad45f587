import { useMemo, useState } from 'react';
import { LEARN_CHANCE, type LearnWish } from '../../job/book';
import type { Piece } from '../../job/piece';
import { UndoBars } from '../shelf/UndoBars';
import { useUndos } from '../shelf/useUndos';
import { localDay } from '../ticket/localDay';
import type { Nav } from '../useRoute';
import { BookHead } from './BookHead';
import { LearnedQuestion } from './LearnedQuestion';
import { LotsQuestion } from './LotsQuestion';
import { NextQuestion } from './NextQuestion';
import { PoursQuestion } from './PoursQuestion';
import { RunQuestion } from './RunQuestion';
import { useBook, type OpenBook } from './useBook';
import { useLearned } from './useLearned';

interface BookOfProps {
  /** Whose ticket it is on; the shop's own book has none. */
  piece?: Piece | undefined;
  nav: Nav;
  /** Changes a piece and goes to it. */
  onPlan: (id: string, how: (piece: Piece) => Piece) => void;
}

/** The Book: what was poured, what that teaches, what to change next, how lots behave, and whether there is enough for more. */
export function Book({ piece, nav, onPlan }: BookOfProps) {
  const [isAll, setAll] = useState(piece === undefined);
  const book = useBook(isAll ? undefined : piece);
  if (book === undefined) return <p className="then">Loading …</p>;
  return (
    <OpenedBook
      {...{ book, nav, onPlan, piece }}
      isAll={isAll}
      onAll={piece === undefined ? undefined : () => setAll((is) => !is)}
    />
  );
}

interface OpenedBookProps extends BookOfProps {
  book: OpenBook;
  isAll: boolean;
  onAll: (() => void) | undefined;
}

function OpenedBook({ book, nav, onPlan, piece, isAll, onAll }: OpenedBookProps) {
  const undos = useUndos();
  const [chance, setChance] = useState(LEARN_CHANCE);
  const [hasVents, setVents] = useState(false);
  const [hasCup, setCup] = useState(false);
  const foam = isAll ? undefined : book.pours.at(-1)?.row.foam;
  const pieceId = isAll ? undefined : piece?.id;
  const cupToday = hasCup || isCupToday(book, foam);
  const wish = useMemo(
    (): LearnWish => ({
      ...(foam === undefined ? {} : { foam }),
      ...(pieceId === undefined ? {} : { piece: pieceId }),
      chance,
      ventsChecked: hasVents,
      cupTestedToday: cupToday,
    }),
    [foam, pieceId, chance, hasVents, cupToday],
  );
  const now = useLearned(book, wish);
  const props = { book, nav, undos };
  return (
    <>
      <BookHead {...props} now={now} isAll={isAll} onAll={onAll} />
      <UndoBars {...undos} />
      <PoursQuestion {...props} no={1} />
      <LearnedQuestion {...props} no={2} now={now} chance={chance} onChance={setChance} />
      <NextQuestion
        {...props}
        no={3}
        now={now}
        onPlan={onPlan}
        onAnswer={(ask) => (ask === 'vents' ? setVents(true) : setCup(true))}
      />
      <LotsQuestion {...props} no={4} />
      <RunQuestion {...props} no={5} />
    </>
  );
}

/** A cup of the foam, or of any where none is said, was written down today. */
const isCupToday = ({ rows }: OpenBook, foam: string | undefined): boolean =>
  rows.some(
    (row) =>
      row.kind === 'cup' && row.day === localDay(new Date()) && (foam === undefined || row.foam === foam),
  );
