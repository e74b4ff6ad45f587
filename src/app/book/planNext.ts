import type { PourRow } from '../../job/book';
import type { Piece } from '../../job/piece';
import type { OneChange } from '../../yield';
import { nextCasting } from '../ticket/nextCasting';
import { pieceWith, wordsOfPiece } from '../ticket/record';
import { said, type Word } from '../ticket/said';

/**
 * The piece with its next casting begun from its last, with the pack of the pour that the change starts from and the one thing changed, as
 * if typed: a mold as the temperature that is wanted, since what it has is measured on the day. All else is as for any next casting.
 */
export function planNext(piece: Piece, change: OneChange, base: PourRow | undefined): Piece {
  const last = Object.entries(piece.castings).reduce((one, other) => (other[1].no > one[1].no ? other : one));
  const next = nextCasting(piece, last[0]);
  return pieceWith(next, wordsOf(change, base).reduce(said, wordsOfPiece(next).words));
}

function wordsOf({ factor, to }: OneChange, base: PourRow | undefined): Word[] {
  const pack = factor === 'packFactor' ? to : base?.pack;
  return [
    ...(pack === undefined ? [] : [{ do: 'type', field: 'pack', text: pack.toFixed(2) } as const]),
    ...(factor === 'moldC'
      ? [
          { do: 'unit', field: 'warmTarget', unit: 'C' } as const,
          { do: 'type', field: 'warmTarget', text: String(to) } as const,
        ]
      : []),
    ...(factor === 'opening'
      ? [{ do: 'pourFact', fact: 'openingOpen', value: to === 1 ? 'no' : 'yes' } as const]
      : []),
  ];
}
