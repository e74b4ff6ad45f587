import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it } from 'vitest';
import type { Piece } from '../../src/job/piece';
import type { Problem } from '../../src/problem';
import { createPieceKeeper } from '../../src/app/ticket/pieceKeeper';
import { newPiece } from '../../src/app/ticket/newPiece';
import { nextCasting } from '../../src/app/ticket/nextCasting';
import { ticketReducer, type Action } from '../../src/app/ticket/reducer';
import { newTicket } from '../../src/app/ticket/state';
import { between, lcg } from '../support/lcg';
import { emptyCore, newId, openStore, type Saving, type Store } from '../../src/store';

const stores: Store[] = [];
afterEach(() => stores.splice(0).forEach((store) => store.close()));
const open = (name: string): Store => {
  const store = openStore(name);
  stores.push(store);
  return store;
};

/** A tab: a ticket and its keeper, as the page puts them together. */
function tab(store: Store, id: string) {
  let ticket = newTicket();
  const seen: { piece?: Piece; saving?: Saving; lost?: Problem | undefined; unread?: Problem | undefined } =
    {};
  const dispatch = (action: Action): void => {
    ticket = ticketReducer(ticket, action);
    keeper.hear(ticket);
  };
  const keeper = createPieceKeeper({
    store,
    id,
    // As React has it: told now, heard of after the next turn.
    dispatch: (action) => void setTimeout(() => dispatch(action), 2),
    tell: {
      piece: (piece) => (seen.piece = piece),
      saving: (saving) => (seen.saving = saving),
      lost: (problem) => (seen.lost = problem),
      unread: (problem) => (seen.unread = problem),
    },
  });
  const load = async (): Promise<void> => {
    await keeper.load();
    await expect.poll(() => ticket.base).toBeDefined();
  };
  return { keeper, load, dispatch, seen, ticket: () => ticket };
}

async function oneOf(store: Store): Promise<Piece> {
  const piece = newPiece({ name: 'Troll', today: '2026-01-01', core: emptyCore() });
  await store.addPiece(piece);
  return piece;
}

const tape = (text: string): Action => ({ do: 'type', field: 'tape', text });
const pack = (text: string): Action => ({ do: 'type', field: 'pack', text });

describe('a ticket that keeps itself', () => {
  it('is kept with every change, and is the same in a tab opened later', async () => {
    const store = open(newId());
    const { id } = await oneOf(store);
    const one = tab(store, id);
    await one.load();
    for (const text of ['2', '29', '290']) one.dispatch(tape(text));
    await one.keeper.settled();
    expect(one.seen.saving).toEqual({ state: 'kept' });
    const later = tab(store, id);
    await later.load();
    expect(later.ticket().fields.tape.text).toBe('290');
  });

  it('is not written when nothing was said', async () => {
    const store = open(newId());
    const { id } = await oneOf(store);
    let writes = 0;
    const counted = {
      ...store,
      savePiece: (...args: Parameters<Store['savePiece']>) => (writes++, store.savePiece(...args)),
    };
    const one = tab(counted, id);
    await one.load();
    one.dispatch({ do: 'again' });
    one.dispatch({ do: 'pause' });
    await one.keeper.settled();
    expect(writes).toBe(0);
  });

  it.each([1, 2, 3, 4, 5])(
    'in two tabs that type at once loses nothing of either, and both end alike (seed %i)',
    async (seed) => {
      const name = newId();
      const [here, there] = [open(name), open(name)];
      const { id } = await oneOf(here);
      const [one, other] = [tab(here, id), tab(there, id)];
      await Promise.all([one.load(), other.load()]);
      const random = lcg(seed);
      const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, between(random, 0, 6)));
      const type = async (dispatch: (action: Action) => void, word: (i: number) => Action): Promise<void> => {
        for (let i = 1; i <= 30; i++) {
          dispatch(word(i));
          await pause();
        }
      };
      const stops = [one, other].map(({ keeper }, i) =>
        [here, there][i]!.watch(
          () => void keeper.catchUp(),
          () => undefined,
        ),
      );
      await Promise.all([
        type(one.dispatch, (i) => tape(`29${i}`)),
        type(other.dispatch, (i) => pack(`1.${i}`)),
      ]);
      for (const { ticket } of [one, other])
        await expect
          .poll(() => [ticket().fields.tape.text, ticket().fields.pack.text])
          .toEqual(['2930', '1.30']);
      await Promise.all([one.keeper.settled(), other.keeper.settled()]);
      const back = (await here.piece(id))!;
      expect(back.sculpt.fields.tape?.text).toBe('2930');
      expect(back.castings[back.hand.casting]?.fields.pack?.text).toBe('1.30');
      stops.forEach((stop) => stop());
    },
  );

  it('that was deleted elsewhere says so and keeps what is typed; it can be kept once more', async () => {
    const store = open(newId());
    const { id } = await oneOf(store);
    const one = tab(store, id);
    await one.load();
    await store.deletePiece(id);
    one.dispatch(tape('290'));
    await one.keeper.settled();
    expect(one.seen.lost).toMatchObject({ code: 'PIECE_GONE', values: { name: 'Troll' } });
    one.dispatch(tape('291'));
    expect(await store.piece(id)).toBeUndefined();
    one.keeper.keepNow();
    await one.keeper.settled();
    expect((await store.piece(id))?.sculpt.fields.tape?.text).toBe('291');
    expect(one.seen.lost).toBeUndefined();
  });

  it('says that a write failed, loses nothing, and keeps all with the next', async () => {
    const store = open(newId());
    const { id } = await oneOf(store);
    let isFull = true;
    const full = {
      ...store,
      savePiece: (...args: Parameters<Store['savePiece']>) =>
        isFull ? Promise.reject(new DOMException('no room', 'QuotaExceededError')) : store.savePiece(...args),
    };
    const one = tab(full, id);
    await one.load();
    one.dispatch(tape('290'));
    await one.keeper.settled();
    expect(one.seen.saving?.state).toBe('failed');
    expect(one.ticket().fields.tape.text).toBe('290');
    isFull = false;
    one.dispatch(pack('1.3'));
    await one.keeper.settled();
    expect(one.seen.saving?.state).toBe('kept');
    const back = await store.piece(id);
    expect(back?.sculpt.fields.tape?.text).toBe('290');
    expect(back?.castings[back.hand.casting]?.fields.pack?.text).toBe('1.3');
  });

  it('keeps what is typed with the casting it was typed for, when another is taken up at once', async () => {
    const store = open(newId());
    const piece = await oneOf(store);
    const one = tab(store, piece.id);
    await one.load();
    one.dispatch(pack('1.3'));
    await one.keeper.change((now) => nextCasting(now, now.hand.casting));
    await expect.poll(() => one.ticket().base?.hand).not.toEqual(piece.hand);
    expect(one.ticket().fields.pack.text).toBe('1.3');
    one.dispatch(pack('1.4'));
    await one.keeper.settled();
    const back = (await store.piece(piece.id))!;
    const packs = Object.values(back.castings).map(({ no, fields }) => [no, fields.pack?.text]);
    expect(packs.sort()).toEqual([
      [1, '1.3'],
      [2, '1.4'],
    ]);
    await one.keeper.change((now) => ({ ...now, hand: piece.hand }));
    await expect.poll(() => one.ticket().fields.pack.text).toBe('1.3');
  });
});
