import type { MouseEvent } from 'react';
import type { Piece } from '../../job/piece';
import type { ShopView } from '../../store';
import type { Step } from '../route';
import { useShop } from '../shop/shopContext';
import { StoreProblem } from '../shop/StoreProblem';
import { useTrying } from '../shop/useTrying';
import type { Nav } from '../useRoute';
import { PieceRow } from './PieceRow';
import type { Undos } from './useUndos';

/** The pieces, each a row of text with a small outline. */
export function Pieces({ view, nav, undos }: { view: ShopView; nav: Nav; undos: Undos }) {
  const { store } = useShop();
  const { attempt, problem } = useTrying();
  const change = async (piece: Piece, how: (piece: Piece) => Piece): Promise<void> =>
    void (await store.savePiece(piece, how(piece)));
  const verbs = {
    onChange: (piece: Piece, how: (piece: Piece) => Piece) => attempt(() => change(piece, how)),
    onTake: (piece: Piece, how: (piece: Piece) => Piece, at: Step) =>
      attempt(async () => {
        await change(piece, how);
        nav.go({ at, piece: piece.id });
      }),
    onDelete: (piece: Piece, event: MouseEvent) =>
      attempt(async () => {
        await store.deletePiece(piece.id);
        undos.add(event, `${piece.name} is deleted.`, () => store.restorePiece(piece.id));
      }),
  };
  return (
    <>
      <div className="lh" aria-hidden="true">
        <span />
        <span>Piece</span>
        <span>Mold</span>
        <span>Castings</span>
        <span>Next</span>
      </div>
      <ul className="pieces">
        {view.pieces.map((piece, i) => (
          <PieceRow
            key={piece.id}
            nav={nav}
            piece={piece}
            book={view.core.book}
            isFirst={i === 0}
            {...verbs}
          />
        ))}
      </ul>
      <StoreProblem problem={problem} />
    </>
  );
}
