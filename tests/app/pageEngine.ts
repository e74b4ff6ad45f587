import { expect } from 'vitest';
import { asksOf } from '../../src/app/ticket/asks';
import { pourNow, sizeNow } from '../../src/app/ticket/now';
import { ticketReducer, type Action } from '../../src/app/ticket/reducer';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { newTicket, type Ticket } from '../../src/app/ticket/state';
import type { FieldName } from '../../src/app/ticket/fields';
import { answer, type Desk } from '../../src/worker/answer';
import type { Answers } from '../../src/worker/protocol';
import { box } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';

/** A box of 100 x 100 x 200 units: in millimeters 2000 cm3. */
export const source = { name: 'box.stl', bytes: () => Promise.resolve(boxFile()) };
const boxFile = (): ArrayBuffer => stlBytes(box([100, 100, 200])).slice().buffer;

export const step = (ticket: Ticket, ...actions: Action[]): Ticket => actions.reduce(ticketReducer, ticket);
export const type = (field: FieldName, text: string): Action[] => [{ do: 'type', field, text }];
export const still: Action = { do: 'still' };

export function openBox(ticket: Ticket, desk: Desk, name = 'box.stl'): Ticket {
  const opened = answer(
    desk,
    { kind: 'open', name: 'box.stl', bytes: boxFile() },
    () => undefined,
  ) as Answers['open'];
  return step(
    ticket,
    { do: 'opening', source: { ...source, name } },
    { do: 'opened', source: { ...source, name }, ended: { how: 'answered', answer: opened } },
  );
}

/** Does what the page does: asks the engine for all that is wanted until nothing is. Molds take seconds: only where a test is about them. Opening and vents are asked for only once they are wanted. */
export function settle(ticket: Ticket, desk: Desk, { withMolds = false } = {}): Ticket {
  let now = step(ticket, still);
  for (let round = 0; round < 9; round++) {
    const ask = asksOf(now).find(({ job }) => withMolds || job !== 'mold');
    if (ask === undefined) return now;
    const { job, key, request } = ask;
    now = step(now, { do: 'start', job, key });
    const said = answer(desk, request, () => undefined) as Answers['size'];
    now = step(now, { do: 'ended', job, key, ended: { how: 'answered', answer: said } });
  }
  throw new Error('settle: expected the asking to end, got nine rounds of it');
}

export function poured(): { ticket: Ticket; desk: Desk } {
  const desk: Desk = {};
  const open = step(
    openBox(newTicket(), desk),
    { do: 'up', axis: '+z' },
    { do: 'card', card: SAMPLE_SHOP.foams[0]! },
    ...type('tape', '200'),
  );
  const ticket = settle(open, desk);
  expect(sizeNow(ticket).state).toBe('answered');
  expect(pourNow(ticket).state).toBe('answered');
  return { ticket, desk };
}
