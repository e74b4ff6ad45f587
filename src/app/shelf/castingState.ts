import { isRecord } from '../../job/json';
import type { Piece } from '../../job/piece';
import { seenCasting } from '../../job/seen';

/** How far a casting has come: only in the head, said to be ready as it stands, or written down as poured. */
export type CastingState = 'planned' | 'ready' | 'poured';

export function castingState(piece: Piece, id: string, book: unknown): CastingState {
  if (rowOf(piece, id, book) !== undefined) return 'poured';
  return seenCasting(piece, id, __APP_VERSION__)?.isReady === true ? 'ready' : 'planned';
}

/** What the Book says was mixed of it, which a plan only meant to be. */
export function mixedOf(piece: Piece, id: string, book: unknown): number | undefined {
  const mixedG = rowOf(piece, id, book)?.mixedG;
  return typeof mixedG === 'number' ? mixedG : undefined;
}

function rowOf(piece: Piece, id: string, book: unknown): Record<string, unknown> | undefined {
  const no = piece.castings[id]?.no;
  return rowsOf(book).find((row) => row.piece === piece.id && row.no === no);
}

/** Rows of past pours that a shop keeps, where it keeps any. */
const rowsOf = (book: unknown): Record<string, unknown>[] =>
  Array.isArray(book) ? book.filter(isRecord) : [];

/** "4 poured, 1 planned". */
export function castingsWords(piece: Piece, book: unknown): string {
  const states = Object.keys(piece.castings).map((id) => castingState(piece, id, book));
  return (['poured', 'ready', 'planned'] as const)
    .map((state) => [states.filter((one) => one === state).length, state] as const)
    .filter(([count]) => count > 0)
    .map(([count, state]) => `${count} ${state}`)
    .join(', ');
}
