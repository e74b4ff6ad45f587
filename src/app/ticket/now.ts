import { castingCavity, type Casting, type LevelFill, type OpeningPlan, type PourAsk } from '../../plan';
import type { Problem } from '../../problem';
import type { PourOnPage } from '../../worker/pour';
import type { MoldOfType, Picture, PicturePlace, Sized } from '../../worker/protocol';
import type { FieldName } from './fields';
import {
  CASTING_FIELDS,
  castingWishOf,
  isUnreadField,
  moldsAskOf,
  pourByOf,
  unreadForMold,
} from './moldWishes';
import { openingRefusal } from './openingBounds';
import { openingAskOf, searchAskOf, unreadForOpening } from './openingWishes';
import { canPour, pourAskOf } from './pourWishes';
import type { Job, Ticket } from './state';
import { sizeWishOf, unreadForSize } from './wishes';

/**
 * What holds for the ticket as it stands, to the last keystroke. An answer is one only where it was asked with what is typed
 * now; everything else is being worked out, or cannot be.
 */
export type Now<T> =
  /** Nothing can be asked yet. */
  | { state: 'open' }
  /** A box that it hangs on cannot be read. */
  | { state: 'unread'; field: FieldName | 'kits' }
  | { state: 'working' }
  | { state: 'answered'; answer: T }
  | { state: 'refused'; problem: Problem }
  | { state: 'cancelled' }
  | { state: 'failed'; message: string };

/** With every part at hand, so that a question can take the one it shows. */
export type Said<T> = Now<T> & { answer?: T; problem?: Problem; message?: string };

export function sizeNow(ticket: Ticket): Said<Sized> {
  if (ticket.scan === undefined) return { state: 'open' };
  if (ticket.reading.state === 'running') return { state: 'working' };
  const field = unreadForSize(ticket);
  return field === undefined ? saidTo(sizeKeyOf(ticket), ticket.size) : { state: 'unread', field };
}

/** The grams hang on the volume, of the sculpt or of the cavity at casting: they wait for it, and go with it. */
export function pourNow(ticket: Ticket): Said<PourOnPage> {
  const volume = pourByOf(ticket) === 'cavity' ? castingNow(ticket) : sizeNow(ticket);
  if (!canPour(ticket)) return { state: 'open' };
  if (volume.state === 'working') return { state: 'working' };
  return volume.state === 'answered' ? saidTo(pourKeyOf(ticket), ticket.pour) : { state: 'open' };
}

/** The cavity when the foam is poured, of any mold type. A few products: it is worked out here, without the engine. */
export function castingNow(ticket: Ticket): Said<Casting> {
  const size = sizeNow(ticket);
  if (size.state === 'working') return { state: 'working' };
  if (size.state !== 'answered') return { state: 'open' };
  const field = CASTING_FIELDS.find((name) => isUnreadField(ticket.fields, name));
  if (field !== undefined) return { state: 'unread', field };
  const casting = castingCavity(size.answer.size.volumeCm3, castingWishOf(ticket));
  return casting.ok
    ? { state: 'answered', answer: casting.value }
    : { state: 'refused', problem: casting.problem };
}

/** The molds of all types, each with its figures or its reason. */
export function moldNow(ticket: Ticket): Said<MoldOfType[]> {
  const size = sizeNow(ticket);
  if (size.state === 'working') return { state: 'working' };
  if (size.state !== 'answered') return { state: 'open' };
  const field = unreadForMold(ticket);
  return field === undefined ? saidTo(moldKeyOf(ticket), ticket.mold) : { state: 'unread', field };
}

/** Opening, vents, thin places and the way out; open while nobody has come to look at them. */
export function openingNow(ticket: Ticket): Said<OpeningPlan> {
  const size = sizeNow(ticket);
  if (size.state === 'working') return { state: 'working' };
  if (size.state !== 'answered') return { state: 'open' };
  const field = unreadForOpening(ticket);
  if (field !== undefined) return { state: 'unread', field };
  const problem = openingRefusal(ticket.fields);
  if (problem !== undefined) return { state: 'refused', problem };
  return ticket.venting.isWanted ? saidTo(openingKeyOf(ticket), ticket.opening) : { state: 'open' };
}

/** The best ways up, as far as they were looked for as the ticket stands; else open. */
export function bestUpNow(ticket: Ticket): Said<LevelFill[]> {
  const key = bestUpKeyOf(ticket);
  return key === undefined ? { state: 'open' } : saidTo(key, ticket.bestUp);
}

export function pictureNow(ticket: Ticket): Said<Picture> {
  if (ticket.scan === undefined) return { state: 'open' };
  const key = pictureKeyOf(ticket);
  return key === undefined ? { state: 'working' } : saidTo(key, ticket.picture);
}

function saidTo<T>(key: string | undefined, job: Job<T>): Said<T> {
  if (key === undefined || job.key !== key) return { state: 'working' };
  if (job.state === 'answered') return { state: 'answered', answer: job.answer as T };
  if (job.state === 'refused') return { state: 'refused', problem: job.problem! };
  if (job.state === 'failed') return { state: 'failed', message: job.message ?? 'it gave no reason' };
  return { state: job.state === 'cancelled' ? 'cancelled' : 'working' };
}

export function sizeKeyOf(ticket: Ticket): string | undefined {
  const wish = sizeWishOf(ticket);
  return wish === undefined ? undefined : keyOf(ticket, { wish });
}

export function moldKeyOf(ticket: Ticket): string | undefined {
  const ask = moldsAskOf(ticket);
  return ask === undefined ? undefined : onSize(ticket, ask);
}

export function openingKeyOf(ticket: Ticket): string | undefined {
  const isAsked = ticket.venting.isWanted && openingRefusal(ticket.fields) === undefined;
  const ask = isAsked ? openingAskOf(ticket) : undefined;
  return ask === undefined ? undefined : onSize(ticket, ask);
}

/** What the best way up would be looked for now. */
export function searchKeyOf(ticket: Ticket): string | undefined {
  const ask = openingRefusal(ticket.fields) === undefined ? searchAskOf(ticket) : undefined;
  return ask === undefined ? undefined : onSize(ticket, ask);
}

export function bestUpKeyOf(ticket: Ticket): string | undefined {
  if (ticket.venting.searchFor === undefined) return undefined;
  const key = searchKeyOf(ticket);
  return key === ticket.venting.searchFor ? key : undefined;
}

/** Asked once there is a size, of the same wish: it is measured on the same bench. */
function onSize(ticket: Ticket, ask: object): string | undefined {
  return sizeNow(ticket).state === 'answered' ? keyOf(ticket, { wish: sizeWishOf(ticket), ask }) : undefined;
}

/** All that is told of the pour as it stands. */
export function pourToldNow(ticket: Ticket): PourAsk | undefined {
  const size = sizeNow(ticket).answer?.size;
  const volumeCm3 = pourByOf(ticket) === 'cavity' ? castingNow(ticket).answer?.cavityCm3 : size?.volumeCm3;
  return size === undefined || volumeCm3 === undefined
    ? undefined
    : pourAskOf(ticket, { volumeCm3, castingCm2: size.areaCm2 });
}

/** What is told of the pour, and the question that the volume in it answers. */
export function pourKeyOf(ticket: Ticket): string | undefined {
  const pourAsk = pourToldNow(ticket);
  return pourAsk === undefined ? undefined : keyOf(ticket, { size: sizeKeyOf(ticket), pourAsk });
}

/** A floor lies where it was found; a typed height lies where the scale says, so its picture waits for that. */
export function pictureKeyOf(ticket: Ticket): string | undefined {
  const { up, cut, keep } = ticket;
  const size = sizeNow(ticket);
  if (ticket.reading.state === 'running' || (cut?.by === 'height' && size.state === 'working'))
    return undefined;
  const typed = size.answer?.cut;
  const atUnits = cut?.by === 'floor' ? cut.atUnits : cut?.by === 'height' ? typed?.atUnits : undefined;
  const place: PicturePlace = {
    up: up.axis,
    ...(atUnits === undefined ? {} : { cut: { atUnits, keep } }),
  };
  return keyOf(ticket, { place });
}

const keyOf = ({ scan, attempt }: Ticket, asked: object): string =>
  JSON.stringify({ scan: scan?.no, attempt, ...asked });
