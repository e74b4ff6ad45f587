import {
  castingCavity,
  filledVolume,
  type Casting,
  type Filled,
  type LevelFill,
  type OpeningPlan,
  type PourAsk,
  type StandsInside,
} from '../../plan';
import type { Problem } from '../../problem';
import type { Estimate } from '../../estimate';
import { RULES } from '../../yield';
import { bodyWish } from '../../worker/bodyWish';
import type { PourOnPage } from '../../worker/pour';
import type { MoldOfType, Picture, PicturePlace, Sized } from '../../worker/protocol';
import type { FieldName } from './fields';
import {
  CASTING_FIELDS,
  castingWishOf,
  CORE_FIELDS,
  given,
  isUnreadField,
  moldsAskOf,
  pourByOf,
  unreadForMold,
} from './moldWishes';
import { valueIn } from './readField';
import { openingRefusal } from './openingBounds';
import { openingAskOf, searchAskOf, unreadForOpening } from './openingWishes';
import { canPour, pourAskOf, type Measured } from './pourWishes';
import type { SizeWay } from './sizingState';
import type { Job, Ticket } from './state';
import { displacedRead, fillRead, tapedRead, warmedFill, type WayRead } from './wayReads';
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

/** A volume, and the way that it is known by. */
export interface KnownVolume {
  by: SizeWay;
  volumeCm3: Estimate;
}

/** The volume of the sculpt by the way in that was chosen: a scan, what it pushes out, or the tape. A water fill is of the mold. */
export function sculptNow(ticket: Ticket): Said<KnownVolume> {
  const { way } = ticket.sizing;
  if (way === 'displace') return byWay(way, displacedRead(ticket));
  if (way === 'tape') return byWay(way, tapedRead(ticket));
  return heldAs(sizeNow(ticket), ({ size }) => ({ by: 'scan', volumeCm3: size.volumeCm3 }));
}

/** The same with the answer as `how` sees it. */
const heldAs = <T, U>(said: Said<T>, how: (answer: T) => U): Said<U> =>
  said.state === 'answered' ? { state: 'answered', answer: how(said.answer) } : (said as Said<never>);

/** The cavity of the mold in hand by the water that fills it. */
export const fillNow = (ticket: Ticket): Said<KnownVolume> => byWay('fill', fillRead(ticket));

/**
 * What Measure comes to. The foam fills the mold: a weighed water fill goes before whatever is known of the sculpt, until the user says otherwise. What
 * else hangs on a scan waits for it, so that nothing is asked twice while it is read.
 */
export function volumeNow(ticket: Ticket): Said<KnownVolume> {
  const fill = fillNow(ticket);
  const volume = fill.state === 'open' || ticket.filling.isAside ? sculptNow(ticket) : fill;
  const isWaiting = volume.state === 'answered' && volume.answer.by !== 'scan' && isScanComing(ticket);
  return isWaiting ? { state: 'working' } : volume;
}

const byWay = (by: SizeWay, read: WayRead): Said<KnownVolume> =>
  read.state === 'answered' ? { state: 'answered', answer: { by, volumeCm3: read.answer } } : read;

/** The scan of the ticket is being read or sized, or is about to be. */
function isScanComing(ticket: Ticket): boolean {
  const { scanId, scan, reading } = ticket;
  if (scan !== undefined) return sizeNow(ticket).state === 'working';
  return scanId !== undefined && (reading.state === 'running' || reading.source?.id !== scanId);
}

/** The grams hang on the volume, of the sculpt or of the cavity at casting: they wait for it, and go with it. */
export function pourNow(ticket: Ticket): Said<PourOnPage> {
  const volume = filledNow(ticket);
  if (!canPour(ticket)) return { state: 'open' };
  if (volume.state === 'working') return { state: 'working' };
  return volume.state === 'answered' ? saidTo(pourKeyOf(ticket), ticket.pour) : { state: 'open' };
}

/** The cavity when the foam is poured, of any mold type. A few products: it is worked out here, without the engine. */
export function castingNow(ticket: Ticket): Said<Casting> {
  const sculpt = sculptNow(ticket);
  if (sculpt.state === 'working') return { state: 'working' };
  if (sculpt.state !== 'answered') return { state: 'open' };
  const field = CASTING_FIELDS.find((name) => isUnreadField(ticket.fields, name));
  if (field !== undefined) return { state: 'unread', field };
  const casting = castingCavity(sculpt.answer.volumeCm3, castingWishOf(ticket));
  return casting.ok
    ? { state: 'answered', answer: casting.value }
    : { state: 'refused', problem: casting.problem };
}

/** What the foam fills: the mold by its water fill, else the sculpt as measured or the cavity at casting; less what stands inside. A sum: it is worked out here. */
export function filledNow(ticket: Ticket): Said<Filled> {
  const outer = outerNow(ticket);
  if (outer.state !== 'answered') return outer.state === 'working' ? { state: 'working' } : { state: 'open' };
  const field = CORE_FIELDS.find((name) => isUnreadField(ticket.fields, name));
  if (field !== undefined) return { state: 'unread', field };
  const filled = filledVolume(outer.answer, insideOf(ticket));
  return filled.ok
    ? { state: 'answered', answer: filled.value }
    : { state: 'refused', problem: filled.problem };
}

/** What the mold holds with nothing in it. What is filled with water has shrunk already; it grows as it is warmed. */
function outerNow(ticket: Ticket): Said<Estimate> {
  const volume = volumeNow(ticket);
  const by = volume.answer?.by;
  if (by !== undefined && by !== 'fill' && pourByOf(ticket) === 'cavity')
    return heldAs(castingNow(ticket), ({ cavityCm3 }) => cavityCm3);
  if (by === 'fill' && isUnreadField(ticket.fields, 'castingTemp'))
    return { state: 'unread', field: 'castingTemp' };
  return heldAs(volume, ({ volumeCm3 }) => (by === 'fill' ? warmedFill(volumeCm3, ticket) : volumeCm3));
}

const insideOf = ({ fields }: Ticket): StandsInside => ({
  ...given('coreCm3', valueIn(fields, 'coreVolume')),
  ...given('armatureCm3', valueIn(fields, 'armature')),
});

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

export function saidTo<T>(key: string | undefined, job: Job<T>): Said<T> {
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

/** Asked once there is a size, of the same body: it is measured on the same bench. */
export function onSize(ticket: Ticket, ask: object): string | undefined {
  const wish = sizeNow(ticket).state === 'answered' ? sizeWishOf(ticket) : undefined;
  return wish === undefined ? undefined : keyOf(ticket, { wish: bodyWish(wish), ask });
}

/** All that is told of the pour as it stands. The surface of the casting is known by a scan alone. */
export function pourToldNow(ticket: Ticket): PourAsk | undefined {
  const filled = filledNow(ticket).answer;
  const by = volumeNow(ticket).answer?.by;
  if (filled === undefined || by === undefined) return undefined;
  return pourAskOf(ticket, {
    volumeCm3: filled.volumeCm3,
    ...given('castingCm2', sizeNow(ticket).answer?.size.areaCm2),
    ...(by === 'displace' ? { uScanToMoldShare: SCULPT_TO_MOLD } : {}),
  });
}

/** A sculpt that was sunk is not its mold either: the same doubt stands between them as with a scan. The engine adds it to a volume that was scanned or taped. */
const SCULPT_TO_MOLD: Measured['uScanToMoldShare'] & object = {
  value: RULES.uScanToMold.value,
  from: 'assumed',
};

/** What is told of the pour, and the question that the volume in it answers. */
export function pourKeyOf(ticket: Ticket): string | undefined {
  const pourAsk = pourToldNow(ticket);
  return pourAsk === undefined ? undefined : keyOf(ticket, { size: sizeKeyOf(ticket), pourAsk });
}

/** A floor lies where it was found; a typed height lies where the scale says, so its picture waits for that. */
export function picturePlaceOf(ticket: Ticket): PicturePlace | undefined {
  const { up, cut, keep } = ticket;
  const size = sizeNow(ticket);
  if (ticket.reading.state === 'running' || (cut?.by === 'height' && size.state === 'working'))
    return undefined;
  const typed = size.answer?.cut;
  const atUnits = cut?.by === 'floor' ? cut.atUnits : cut?.by === 'height' ? typed?.atUnits : undefined;
  return { up: up.axis, ...(atUnits === undefined ? {} : { cut: { atUnits, keep } }) };
}

export function pictureKeyOf(ticket: Ticket): string | undefined {
  const place = picturePlaceOf(ticket);
  return place === undefined ? undefined : keyOf(ticket, { place });
}

export const keyOf = ({ scan, attempt }: Ticket, asked: object): string =>
  JSON.stringify({ scan: scan?.no, attempt, ...asked });
