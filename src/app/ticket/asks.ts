import type { OpeningAsk, PourAsk } from '../../plan';
import type { MoldsAsk, PicturePlace, Request, SizeWish } from '../../worker/protocol';
import { bestUpKeyOf, moldKeyOf, openingKeyOf, pictureKeyOf, pourKeyOf, sizeKeyOf } from './now';
import type { JobName } from './reducer';
import type { Ticket } from './state';

export interface Ask {
  job: JobName;
  key: string;
  request: Extract<Request, { kind: JobName }>;
}

/** What is to be asked now, first things first: all that stands on the ticket, has stood still, and was not asked yet. */
export function asksOf(ticket: Ticket): Ask[] {
  if (ticket.scan === undefined || ticket.typing || ticket.reading.state === 'running') return [];
  const keys = [
    ['size', sizeKeyOf(ticket)],
    ['pour', pourKeyOf(ticket)],
    ['picture', pictureKeyOf(ticket)],
    ['mold', moldKeyOf(ticket)],
    ['opening', openingKeyOf(ticket)],
    ['bestUp', bestUpKeyOf(ticket)],
  ] as const;
  return keys.flatMap(([job, key]) =>
    key === undefined || ticket[job].key === key ? [] : [{ job, key, request: requestOf(job, key) }],
  );
}

function requestOf(job: JobName, key: string): Ask['request'] {
  const asked = JSON.parse(key) as {
    wish: SizeWish;
    pourAsk: PourAsk;
    place: PicturePlace;
    ask: MoldsAsk & OpeningAsk;
  };
  switch (job) {
    case 'size':
      return { kind: 'size', wish: asked.wish };
    case 'mold':
      return { kind: 'mold', wish: asked.wish, ask: asked.ask };
    case 'opening':
      return { kind: 'opening', wish: asked.wish, ask: asked.ask };
    case 'bestUp':
      return { kind: 'bestUp', wish: asked.wish, ask: asked.ask };
    case 'pour':
      return { kind: 'pour', ask: asked.pourAsk };
    case 'picture':
      return { kind: 'picture', place: asked.place };
  }
}
