import { isRecord } from '../../job/json';
import type { Piece } from '../../job/piece';
import { seenCasting } from '../../job/seen';
import { castingCode } from '../words/castingCode';
import type { CardLeft } from './stockOf';

/** As many are named. */
const MOST_NAMED = 3;

/** "5 of TROLL-13, 9 of HAND-12": how often what is left makes what is planned with that foam, residue and all. */
export function enoughFor({ card, kind, parts }: CardLeft, pieces: readonly Piece[]): string | undefined {
  const a = parts.find(({ part }) => part === 'aKg')?.leftKg;
  const b = parts.find(({ part }) => part === 'bKg')?.leftKg;
  if (kind !== 'foam' || a === undefined || b === undefined) return undefined;
  const counts = pieces.flatMap((piece) => {
    const seen = seenCasting(piece, piece.hand.casting, __APP_VERSION__);
    const foam = piece.castings[piece.hand.casting]?.choices.foam;
    if (seen === undefined || !isRecord(foam) || foam.name !== card) return [];
    const times = Math.floor(Math.min((1000 * a) / seen.partAG, (1000 * b) / seen.partBG));
    return [`${times} of ${castingCode(piece)}`];
  });
  return counts.length === 0 ? undefined : counts.slice(0, MOST_NAMED).join(', ');
}
