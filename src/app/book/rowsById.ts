import type { BookRow } from '../../job/book';
import type { Piece } from '../../job/piece';

/**
 * Rows with the piece by its id, where a list brought in calls it by its name or its code: for what is learned. The book itself stays as it
 * was written.
 */
export const rowsById = (rows: readonly BookRow[], pieces: readonly Piece[]): BookRow[] =>
  rows.map((row) => {
    if (row.kind === 'cup' || row.piece === undefined) return row;
    const id = pieceOf(row.piece, pieces)?.id;
    return id === undefined || id === row.piece ? row : { ...row, piece: id };
  });

/** The piece that a row means: by its id, else by name or code where just one has it. */
export function pieceOf(said: string, pieces: readonly Piece[]): Piece | undefined {
  const byId = pieces.find(({ id }) => id === said);
  if (byId !== undefined) return byId;
  const plain = (text: string): string => text.trim().toLowerCase();
  const named = pieces.filter(({ name, code }) => [name, code].map(plain).includes(plain(said)));
  return named.length === 1 ? named[0] : undefined;
}

/** What a row's piece is called on the page: its own name where the shop knows it, else as it was written. */
export const pieceName = (said: string | undefined, pieces: readonly Piece[]): string | undefined =>
  said === undefined ? undefined : (pieceOf(said, pieces)?.name ?? said);
