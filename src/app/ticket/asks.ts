import type { BaseChoice } from '../../geometry';
import type { OpeningAsk, PourAsk } from '../../plan';
import type { CutFacesAsk, MoldsAsk, PicturePlace, Request, SizeWish } from '../../worker/protocol';
import { bestUpKeyOf, moldKeyOf, openingKeyOf, pictureKeyOf, pourKeyOf, sizeKeyOf } from './now';
import { cutFacesKeyOf, ladderKeyOf, paintKeyOf, shellsKeyOf } from './shownNow';
import type { JobName } from './reducer';
import type { Ticket } from './state';

export interface Ask {
  job: JobName;
  key: string;
  request: Extract<Request, { kind: JobName }>;
}

/** What is to be asked now, first things first: all that stands on the ticket, has stood still, and was not asked yet. Without a scan there are still grams, of a volume known otherwise. */
export function asksOf(ticket: Ticket): Ask[] {
  if (ticket.typing || ticket.reading.state === 'running') return [];
  const pour = ['pour', pourKeyOf(ticket)] as const;
  if (ticket.scan === undefined) return wanted(ticket, [pour]);
  return wanted(ticket, [
    ['size', sizeKeyOf(ticket)],
    pour,
    ['picture', pictureKeyOf(ticket)],
    ['cutFaces', cutFacesKeyOf(ticket)],
    ['mold', moldKeyOf(ticket)],
    ['shells', shellsKeyOf(ticket)],
    ['ladder', ladderKeyOf(ticket)],
    ['paint', paintKeyOf(ticket)],
    ['opening', openingKeyOf(ticket)],
    ['bestUp', bestUpKeyOf(ticket)],
  ]);
}

function wanted(ticket: Ticket, keys: readonly (readonly [JobName, string | undefined])[]): Ask[] {
  return keys.flatMap(([job, key]) =>
    key === undefined || ticket[job].key === key ? [] : [{ job, key, request: requestOf(job, key) }],
  );
}

function requestOf(job: JobName, key: string): Ask['request'] {
  const asked = JSON.parse(key) as {
    wish: SizeWish;
    pourAsk: PourAsk;
    place: PicturePlace;
    base: BaseChoice;
    ask: MoldsAsk & OpeningAsk & CutFacesAsk;
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
    case 'ladder':
      return { kind: 'ladder', wish: asked.wish, ask: asked.ask };
    case 'shells':
      return { kind: 'shells', wish: asked.wish, ask: asked.ask };
    case 'cutFaces':
      return { kind: 'cutFaces', wish: asked.wish, ask: asked.ask };
    case 'paint':
      return { kind: 'paint', wish: asked.wish, place: asked.place, base: asked.base };
  }
}
