import type { Piece } from '../../job/piece';

/** TROLL-13. Without a code of its own, the number alone. */
export function castingCode({ code, castings, hand }: Piece, id = hand.casting): string {
  const no = castings[id]?.no ?? 1;
  return code.trim() === '' ? `No. ${no}` : `${code}-${no}`;
}
