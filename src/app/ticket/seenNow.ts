import { isSame } from '../../job/json';
import type { Piece } from '../../job/piece';
import {
  castingKey,
  sculptKey,
  seenCasting,
  seenSculpt,
  withSeenCasting,
  withSeenSculpt,
  type Outline,
  type SeenCasting,
  type SeenSculpt,
} from '../../job/seen';
import { pourNow, sizeNow } from './now';
import { readyNow } from './ready';
import { pieceWith } from './record';
import type { Ticket } from './state';
import { wordsOf } from './words';

/** What the engine says of the ticket as it stands, to be kept with the piece for the Shelf; left out while it says nothing. */
export interface SeenNow {
  sculpt?: SeenSculpt;
  /** Of the casting of that id. */
  casting?: { id: string; seen: SeenCasting };
}

export function seenNow(
  ticket: Ticket,
  { piece, outline, version }: { piece: Piece; outline: Outline | undefined; version: string },
): SeenNow {
  const said = pieceWith(piece, wordsOf(ticket));
  const id = said.hand.casting;
  // While the outline is being drawn, the one that is kept is the same.
  const drawn = outline ?? seenSculpt(said, version)?.outline;
  const sculpt = sculptSeen(ticket, sculptKey(said, version), drawn);
  const casting = castingSeen(ticket, castingKey(said, id, version));
  const kept = seenCasting(said, id, version);
  return {
    ...(sculpt === undefined ? {} : { sculpt }),
    // Looked at on another day the same figures are as old as they are.
    ...(casting === undefined
      ? {}
      : { casting: { id, seen: isSame({ ...kept, day: casting.day }, casting) ? kept! : casting } }),
  };
}

/** The piece with it. */
export function withSeen(piece: Piece, { sculpt, casting }: SeenNow): Piece {
  const sized = sculpt === undefined ? piece : withSeenSculpt(piece, sculpt);
  return casting === undefined ? sized : withSeenCasting(sized, casting.id, casting.seen);
}

function sculptSeen(ticket: Ticket, on: string, outline: Outline | undefined): SeenSculpt | undefined {
  const size = sizeNow(ticket).answer?.size;
  if (size === undefined && outline === undefined) return undefined;
  return {
    on,
    ...(outline === undefined ? {} : { outline }),
    ...(size === undefined
      ? {}
      : { size: { extentsMm: [...size.extentsMm], volumeCm3: { ...size.volumeCm3 } } }),
  };
}

function castingSeen(ticket: Ticket, on: string): SeenCasting | undefined {
  const pour = pourNow(ticket).answer;
  if (pour === undefined) return undefined;
  const { batch, cups } = pour;
  return {
    on,
    day: ticket.today,
    packFactor: batch.packFactor,
    partAG: cups.partAG,
    partBG: cups.partBG,
    totalG: cups.totalG,
    stepG: batch.stepG,
    ...(readyNow(ticket) === 'ready' ? { isReady: true } : {}),
  };
}
