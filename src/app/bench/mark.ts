import type { Piece } from '../../job/piece';
import type { Mark } from '../parts/StatusMark';
import { castingState } from '../shelf/castingState';

/** Done once the casting in hand stands in the Book. */
export const benchMark = (piece: Piece, book: unknown): Mark =>
  castingState(piece, piece.hand.casting, book) === 'poured' ? 'fine' : 'open';
