import type { BaseChoice } from '../../geometry';
import type { LadderOfType } from '../../plan';
import { bodyWish } from '../../worker/bodyWish';
import type { CutFaces, Paint, Shells, ShellsAsk } from '../../worker/protocol';
import { ladderAskOf } from './ladderWishes';
import { typeOf } from './moldState';
import { moldsAskOf } from './moldWishes';
import { keyOf, moldNow, onSize, openingNow, picturePlaceOf, saidTo, sizeNow, type Said } from './now';
import type { Ticket } from './state';
import { openingAskOf } from './openingWishes';
import { sizeWishOf } from './wishes';

/* What the molds look like, and how their silicone goes with their thickness: worked out after their figures, and only where somebody looks. */

const OPEN = { state: 'open' } as const;

const said = <T>(key: string | undefined, job: Parameters<typeof saidTo<T>>[1]): Said<T> =>
  key === undefined ? OPEN : saidTo(key, job);

/** Silicone against thickness. Another thickness within its range leaves it as it is. */
export const ladderNow = (ticket: Ticket): Said<LadderOfType[]> => said(ladderKeyOf(ticket), ticket.ladder);

export const shellsNow = (ticket: Ticket): Said<Shells> => said(shellsKeyOf(ticket), ticket.shells);

export const cutFacesNow = (ticket: Ticket): Said<CutFaces> => said(cutFacesKeyOf(ticket), ticket.cutFaces);

/** Where the mold as it stands was cut open last, also while it is shown whole. */
export function lastCutNow(ticket: Ticket): CutFaces | undefined {
  const { answer, key } = ticket.cutFaces;
  const ask = answer === undefined ? undefined : shellsAskOf(ticket);
  return ask !== undefined && key === onSize(ticket, { ...ask, plane: answer!.plane }) ? answer : undefined;
}

export const paintNow = (ticket: Ticket): Said<Paint> => said(paintKeyOf(ticket), ticket.paint);

export function ladderKeyOf(ticket: Ticket): string | undefined {
  const ask = ticket.looking.ladder ? ladderAskOf(ticket) : undefined;
  return ask === undefined ? undefined : onSize(ticket, ask);
}

export function shellsKeyOf(ticket: Ticket): string | undefined {
  const ask = ticket.looking.shells ? shellsAskOf(ticket) : undefined;
  return ask === undefined ? undefined : onSize(ticket, ask);
}

/** Cut once the shells stand: they are cut where the engine keeps them. */
export function cutFacesKeyOf(ticket: Ticket): string | undefined {
  const { plane } = ticket.looking;
  if (plane === undefined || shellsNow(ticket).state !== 'answered') return undefined;
  const ask = shellsAskOf(ticket);
  return ask === undefined ? undefined : onSize(ticket, { ...ask, plane });
}

/** Thickness is measured with the opening: it is painted once that stands. */
export function paintKeyOf(ticket: Ticket): string | undefined {
  if (!ticket.looking.thickness || openingNow(ticket).state !== 'answered') return undefined;
  const wish = sizeNow(ticket).state === 'answered' ? sizeWishOf(ticket) : undefined;
  const place = picturePlaceOf(ticket);
  if (wish === undefined || place === undefined) return undefined;
  const base: BaseChoice = openingAskOf(ticket)?.base ?? 'open';
  return keyOf(ticket, { wish: bodyWish(wish), place, base });
}

/** The chosen type as it stands, once its figures do. */
function shellsAskOf(ticket: Ticket): ShellsAsk | undefined {
  if (moldNow(ticket).state !== 'answered') return undefined;
  const { key } = typeOf(ticket.molding);
  const settings = moldsAskOf(ticket)?.settings[key];
  return settings === undefined ? undefined : { type: key, settings };
}
