import { MOLD_TYPES } from '../../geometry';
import type { Piece } from '../../job/piece';
import { typeKey } from './nextStep';

/** "Brushed skin, 1": what a mold is and which of the piece's it is; "Mold 1" while no type was chosen. */
export function moldWords(piece: Piece, id: string): string {
  const key = typeKey(piece, id);
  const no = piece.molds[id]?.no ?? 1;
  const title = MOLD_TYPES.find((type) => type.key === key)?.title;
  return title === undefined ? `Mold ${no}` : `${title}, ${no}`;
}

/** "2 castings of it". */
export function moldNote({ castings }: Piece, id: string): string {
  const count = Object.values(castings).filter(({ mold }) => mold === id).length;
  return count === 1 ? '1 casting of it' : `${count} castings of it`;
}
