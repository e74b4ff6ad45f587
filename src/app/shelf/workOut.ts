import type { Piece } from '../../job/piece';
import { readScanAside, type ShopStore } from '../../store';
import { createEngine, type Engine } from '../../worker/engine';
import { spawnWorker } from '../ticket/spawnWorker';
import { asksOf } from '../ticket/asks';
import type { KeptSource } from '../ticket/keptSource';
import { ticketReducer, type JobName } from '../ticket/reducer';
import { seenNow, withSeen } from '../ticket/seenNow';
import { newTicket, type Ticket } from '../ticket/state';
import { outlineAside } from './outlineAside';

/** What the Shelf shows: molds and openings take much longer, and are not on it. */
const SHOWN: readonly JobName[] = ['size', 'pour', 'picture'];

/** A ticket never asks as often as this for one state of it. */
const MOST_ROUNDS = 9;

/** Works out size, outline and grams of the pieces, one after the other, as their tickets would, and keeps them. */
export async function workOut(
  store: ShopStore,
  pieces: readonly Piece[],
  signal: AbortSignal,
): Promise<void> {
  const engine = createEngine(spawnWorker, () => undefined);
  signal.addEventListener('abort', () => engine.close());
  try {
    for (const piece of pieces) {
      if (signal.aborted) return;
      const known = await workedOut(store, piece, engine);
      if (!signal.aborted) await store.savePiece(piece, known);
    }
  } finally {
    engine.close();
  }
}

async function workedOut(store: ShopStore, piece: Piece, engine: Engine): Promise<Piece> {
  const { scan: id } = piece.sculpt;
  const scan = id === undefined ? undefined : await readScanAside(store, id);
  if (id === undefined || scan === undefined) return piece;
  const { name, file } = scan;
  const source: KeptSource = { id, name, isKept: true, bytes: () => Promise.resolve(file) };
  let ticket = ticketReducer(newTicket(), { do: 'load', piece });
  ticket = ticketReducer(ticket, { do: 'reopened', source, ended: await engine.open(source) });
  if (ticket.scan === undefined) return piece;
  let known = piece;
  for (const [casting, { mold }] of Object.entries(piece.castings)) {
    const inHand = { ...known, hand: { mold, casting } };
    ticket = ticketReducer(ticket, { do: 'load', piece: inHand });
    ticket = await answered(ticket, engine);
    const { picture } = ticket;
    const outline = picture.answer === undefined ? undefined : await outlineAside(picture.answer);
    known = withSeen(known, seenNow(ticket, { piece: inHand, outline, version: __APP_VERSION__ }));
  }
  return known;
}

async function answered(ticket: Ticket, engine: Engine): Promise<Ticket> {
  let now = ticket;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const ask = asksOf(now).find(({ job }) => SHOWN.includes(job));
    if (ask === undefined) return now;
    const { job, key, request } = ask;
    now = ticketReducer(now, { do: 'start', job, key });
    now = ticketReducer(now, { do: 'ended', job, key, ended: await engine.ask(request) });
  }
  return now;
}
