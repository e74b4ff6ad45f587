import { isSame } from '../../job/json';
import type { Piece } from '../../job/piece';
import { finding, type Problem } from '../../problem';
import { createSaver, storeProblem, type Saving, type ShopStore } from '../../store';
import { pieceWith, wordsOfPiece } from './record';
import type { Action } from './reducer';
import { isSameWords, wordsOf, type Words } from './words';

/** What a page is told of its piece. */
export interface Told {
  piece: (piece: Piece) => void;
  saving: (saving: Saving) => void;
  /** Why it cannot be read or kept; undefined once it can. */
  lost: (problem: Problem | undefined) => void;
  /** What of it this version cannot read. */
  unread: (problem: Problem | undefined) => void;
}

/** Of a ticket: what is said on it, and upon what. */
type Heard = Words & { base: Piece | undefined };

/** Keeps one piece in step with the store: what is said here goes there, what another tab has kept comes here. */
export interface PieceKeeper {
  load(): Promise<void>;
  /** What stands on the ticket now, and what it was said upon. Anything new in it is kept. */
  hear(ticket: Heard): void;
  /** Takes up what another tab has kept. */
  catchUp(): Promise<void>;
  /** Tries again; a piece that was deleted elsewhere is put on the Shelf once more. */
  keepNow: () => void;
  /** Over when all is kept, or could not be. */
  settled: () => Promise<void>;
  /** Changes what is not said on the ticket: its name, the casting in hand. */
  change(how: (piece: Piece) => Piece): Promise<void>;
}

export function createPieceKeeper({
  store,
  id,
  dispatch,
  tell,
}: {
  store: Pick<ShopStore, 'piece' | 'savePiece' | 'addPiece'>;
  id: string;
  dispatch: (action: Action) => void;
  tell: Told;
}): PieceKeeper {
  /** The newest that is kept, as far as this page knows. */
  let kept: Piece | undefined;
  /** Words and the piece they were said upon always go together: the words of one on the piece of another would take back what another tab has said. */
  let heard: { words: Words; base: Piece } | undefined;
  let isGone = false;

  const saver = createSaver(write, (saving) => {
    tell.saving(saving);
    if (saving.state === 'kept') look();
  });

  async function write(): Promise<void> {
    if (heard === undefined) return;
    const { base, words } = heard;
    const mine = pieceWith(base, words);
    if (isGone) {
      await store.addPiece(mine);
      isGone = false;
      tell.lost(undefined);
      return take(mine, { base, mine });
    }
    const merged = await store.savePiece(base, mine);
    if (merged === undefined) return gone(mine.name);
    take(merged, { base, mine });
  }

  /** `wrote`: what this page had said, and upon what, where it is by its own write that the piece is so. */
  function take(piece: Piece, wrote?: { base: Piece; mine: Piece }): void {
    kept = piece;
    tell.piece(piece);
    dispatch({ do: 'adopt', piece, ...(wrote === undefined ? {} : { wrote }) });
  }

  function gone(name: string | undefined): void {
    isGone = true;
    tell.lost(finding('PIECE_GONE', 'stop', name === undefined ? {} : { name }));
  }

  /** What this page has yet to keep is merged when it is kept, and then this is asked once more. */
  async function catchUp(): Promise<void> {
    for (let before = kept; before !== undefined && !isGone; before = kept) {
      const theirs = await store.piece(id);
      if (!saver.isKept()) return;
      if (kept !== before) continue;
      if (theirs === undefined) return gone(before.name);
      if (!isSame(theirs, before)) take(theirs);
      return;
    }
  }

  const look = (): void => void catchUp().catch(fault);
  const fault = (thrown: unknown): void => tell.lost(storeProblem(thrown));

  return {
    async load() {
      try {
        const found = await store.piece(id);
        if (found === undefined) return tell.lost(finding('PIECE_GONE', 'stop', {}));
        kept = found;
        tell.piece(found);
        tell.unread(unreadProblem(wordsOfPiece(found).unread));
        dispatch({ do: 'load', piece: found });
      } catch (thrown) {
        fault(thrown);
      }
    },
    hear({ base, ...words }) {
      if (base === undefined) return;
      // Progress and answers of the engine come many times a second, and nothing of them is kept.
      if (heard?.base === base && isSameWords(heard.words, words)) return;
      heard = { base, words: wordsOf(words) };
      if (!isGone && !isSame(pieceWith(base, heard.words), base)) saver.save();
    },
    catchUp,
    keepNow: () => saver.save(),
    settled: () => saver.settled(),
    async change(how) {
      try {
        await saver.settled();
        const base = kept;
        // What could not be kept is not left behind for another casting: first that has to be kept.
        if (base === undefined || !saver.isKept()) return;
        const merged = await store.savePiece(base, how(base));
        if (merged === undefined) return gone(base.name);
        if (isSame(merged.hand, base.hand)) return take(merged);
        kept = merged;
        tell.piece(merged);
        dispatch({ do: 'load', piece: merged });
      } catch (thrown) {
        tell.saving({ state: 'failed', fault: thrown });
      }
    },
  };
}

const unreadProblem = (names: string[]): Problem | undefined =>
  names.length === 0
    ? undefined
    : finding('WORDS_UNREAD', 'look', { count: names.length, names: names.join(', ') });
