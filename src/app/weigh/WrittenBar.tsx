import { useState } from 'react';
import type { Piece } from '../../job/piece';
import { readWeigh, type Written } from '../../job/weighState';
import type { Problem } from '../../problem';
import { Complaint } from '../parts/Complaint';
import { UndoBar } from '../shelf/UndoBar';
import { useShop } from '../shop/shopContext';
import type { KeptTicket } from '../ticket/useTicket';
import { castingCode } from '../words/castingCode';
import { takeBack } from './useWriting';

/** How old a writing may be that can still be taken back: the clock of the bar starts with it. Chosen here. */
const FRESH_MS = 10_000;

/** For a while after a casting of the piece was written into the Book: that it is there, and the way back. */
export function WrittenBar({ piece, change }: { piece: Piece; change: KeptTicket['change'] }) {
  const { store } = useShop();
  const last = lastWritten(piece);
  const [over, setOver] = useState<number>();
  const [problem, setProblem] = useState<Problem>();
  const [openedAtMs] = useState(() => Date.now());
  if (problem !== undefined)
    return (
      <div role="alert">
        <Complaint problem={problem} />
      </div>
    );
  if (last === undefined || last.written.atMs === over || openedAtMs - last.written.atMs > FRESH_MS)
    return null;
  const { casting, written } = last;
  const code = castingCode(piece, casting);
  return (
    <UndoBar
      key={written.atMs}
      undo={{
        id: written.atMs,
        words:
          written.before === undefined
            ? `${code} is written in the Book.`
            : `${code} took the place of its row in the Book.`,
        undo: async () => setProblem(await takeBack(store, change, casting, written)),
        isByKey: false,
      }}
      onOver={() => setOver(written.atMs)}
    />
  );
}

/** The casting that was written last, and how. */
function lastWritten(piece: Piece): { casting: string; written: Written } | undefined {
  const all = Object.keys(piece.castings).flatMap((casting) => {
    const { written } = readWeigh(piece, casting).state;
    return written === undefined ? [] : [{ casting, written }];
  });
  return all.sort((one, other) => one.written.atMs - other.written.atMs).at(-1);
}
