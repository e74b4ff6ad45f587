import 'fake-indexeddb/auto';
import { expect, it } from 'vitest';
import { createPieceKeeper } from '../../src/app/ticket/pieceKeeper';
import { newPiece } from '../../src/app/ticket/newPiece';
import { ticketReducer, type Action } from '../../src/app/ticket/reducer';
import { newTicket } from '../../src/app/ticket/state';
import { emptyCore, newId, openStore, type Saving } from '../../src/store';

/**
 * A box goes from 6 to 6.5 and back while the first of the two is being written: what was written must not come back into the
 * box that says 6 by then. Seen when a card was put back and typed over at once.
 */
it.each([0, 1, 3, 10, 40])(
  'what is typed back to what was kept before, %d ms after it was changed, stands and is kept',
  async (waitMs) => {
    const store = openStore(newId());
    const piece = newPiece({ name: 'Troll', today: '2026-01-01', core: emptyCore() });
    await store.addPiece(piece);
    let ticket = newTicket();
    let saving: Saving | undefined;
    const dispatch = (action: Action): void => {
      ticket = ticketReducer(ticket, action);
      keeper.hear(ticket);
    };
    const keeper = createPieceKeeper({
      store,
      id: piece.id,
      dispatch: (action) => void setTimeout(() => dispatch(action), 2),
      tell: {
        piece: () => undefined,
        saving: (now) => (saving = now),
        lost: () => undefined,
        unread: () => undefined,
      },
    });
    const type = (text: string): void => dispatch({ do: 'type', field: 'freeRise', text });
    await keeper.load();
    await expect.poll(() => ticket.base).toBeDefined();
    type('6');
    await expect
      .poll(async () => Object.values((await store.piece(piece.id))!.castings)[0]!.fields.freeRise?.text)
      .toBe('6');
    await expect.poll(() => ticket.base !== piece && saving?.state).toBe('kept');
    type('6.5');
    await new Promise((resolve) => setTimeout(resolve, waitMs));
    type('6');
    await new Promise((resolve) => setTimeout(resolve, 60));
    await keeper.settled();
    expect(ticket.fields.freeRise.text).toBe('6');
    await expect
      .poll(async () => Object.values((await store.piece(piece.id))!.castings)[0]!.fields.freeRise?.text)
      .toBe('6');
    store.close();
  },
);
