import type { CheckedPour, PourRow } from '../../job/book';
import type { Piece } from '../../job/piece';
import { amount } from '../../words/sentence';
import { KEPT_WORDS, LEFT_OUT_WORDS } from '../words/bookPage';
import { fieldName } from '../words/bookAsk';
import { pieceOf } from './rowsById';

/** "TROLL-2": the code of its piece and the number of its casting, as far as they are known. */
export function castingName({ piece, no }: PourRow, pieces: readonly Piece[]): string {
  if (piece === undefined) return 'not said';
  const known = pieceOf(piece, pieces);
  const name = known === undefined ? piece : known.code.trim() === '' ? known.name : known.code;
  return no === undefined ? name : `${name}-${no}`;
}

/** What was noted, whether it fell short, and what became of a question about it. */
export function noteOf({ row }: CheckedPour): string {
  const { note = '', filled, voidCm3, isLeftOut, keptAsTyped = [] } = row;
  const short =
    filled === 'short' && !note.startsWith('short')
      ? voidCm3 === undefined
        ? 'fell short'
        : `fell short, ${amount(voidCm3)} cm³ missing`
      : '';
  const kept = keptAsTyped.map((field) => `${fieldName(field)} ${KEPT_WORDS}`);
  return [note, short, ...kept, isLeftOut === true ? LEFT_OUT_WORDS : ''].filter(Boolean).join('; ');
}
