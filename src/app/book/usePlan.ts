import { useCallback } from 'react';
import type { Piece } from '../../job/piece';
import type { Problem } from '../../problem';
import { useShop } from '../shop/shopContext';
import { useTrying } from '../shop/useTrying';
import type { Nav } from '../useRoute';

/** Changes a piece that is not on the page, and goes to its Batch once that is kept. */
export function usePlan(nav: Nav): {
  plan: (id: string, how: (piece: Piece) => Piece) => void;
  problem: Problem | undefined;
} {
  const { store } = useShop();
  const { attempt, problem } = useTrying();
  const plan = useCallback(
    (id: string, how: (piece: Piece) => Piece): void =>
      attempt(async () => {
        const base = await store.piece(id);
        if (base === undefined) return;
        await store.savePiece(base, how(base));
        nav.go({ at: 'batch', piece: id });
      }),
    [attempt, store, nav],
  );
  return { plan, problem };
}
