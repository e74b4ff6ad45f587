import { asksOf } from '../../src/app/ticket/asks';
import { sizeNow } from '../../src/app/ticket/now';
import { ticketReducer, type Action } from '../../src/app/ticket/reducer';
import { newTicket, type Ticket } from '../../src/app/ticket/state';
import { read3mf } from '../../src/geometry/io/read3mf';
import type { Size } from '../../src/plan';
import { answer, type Desk } from '../../src/worker/answer';
import type { Answers } from '../../src/worker/protocol';

/** The worker's side of one page, and a ticket that is told to and asks it as the page does. */
export interface OpenTicket {
  desk: Desk;
  ticket: Ticket;
}

export const tell = (ticket: Ticket, ...actions: Action[]): Ticket => actions.reduce(ticketReducer, ticket);

/** A file brought in as a scan. */
export function openScan(name: string, bytes: Uint8Array): OpenTicket {
  const desk: Desk = { read3mf };
  const request = { kind: 'open', name, bytes: bytes.slice().buffer } as const;
  const opened = answer(desk, request, () => undefined) as Answers['open'];
  const source = { name, bytes: () => Promise.resolve(request.bytes) };
  const ticket = tell(
    newTicket(),
    { do: 'opening', source },
    { do: 'opened', source, ended: { how: 'answered', answer: opened } },
  );
  return { desk, ticket };
}

/** What stands on the ticket once it was told so and the engine has answered for size and picture. */
export function measured({ desk, ticket }: OpenTicket, ...actions: Action[]): Ticket {
  let now = tell(ticket, ...actions, { do: 'still' });
  for (let round = 0; round < 9; round++) {
    const ask = asksOf(now).find(({ job }) => job === 'size' || job === 'picture');
    if (ask === undefined) return now;
    const { job, key, request } = ask;
    const said = answer(desk, request, () => undefined) as Answers['size'];
    now = tell(
      now,
      { do: 'start', job, key },
      { do: 'ended', job, key, ended: { how: 'answered', answer: said } },
    );
  }
  throw new Error('measured: expected the asking to end, got nine rounds of it');
}

export function sizeOf(ticket: Ticket): Size {
  const now = sizeNow(ticket);
  if (now.answer === undefined) throw new Error(`sizeOf: expected a size, got ${JSON.stringify(now)}`);
  return now.answer.size;
}
