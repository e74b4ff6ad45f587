import type { Piece } from '../../job/piece';
import type { ShopCore } from '../../store';
import { newId } from '../../store';
import { saidOf } from './record';
import { shopWords } from './shopWords';

/** A piece with a first mold and a first casting, on which the shop has said what it says of every pour. */
export function newPiece({ name, today, core }: { name: string; today: string; core: ShopCore }): Piece {
  const [id, mold, casting] = [newId(), newId(), newId()];
  const words = shopWords(core);
  return {
    id,
    name,
    code: codeOf(name),
    begunOn: today,
    sculpt: saidOf(words, 'sculpt'),
    molds: { [mold]: { no: 1, ...saidOf(words, 'mold') } },
    castings: { [casting]: { no: 1, mold, ...saidOf(words, 'casting') } },
    hand: { mold, casting },
  };
}

/** A short code for a name: its first word in capital letters. Only a beginning; the user's own replaces it. */
export function codeOf(name: string): string {
  const [word = ''] = name.toUpperCase().match(/[\p{L}\p{N}]+/u) ?? [];
  return word.slice(0, LONGEST_CODE);
}

const LONGEST_CODE = 8;
